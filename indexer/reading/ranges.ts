import type { Group } from './groups.ts';
import type { Measure } from './measures.ts';
import type { Token } from './tokens.ts';

/**
 * Takes out the sizes that a line gives as a range, since it does not say which: 10-12 mm, 5~8, 3 to 5 mm, M3 x 8-12.
 *
 * @returns whether there was one
 */
export function dropRanges(tokens: readonly Token[], groups: readonly Group[]): boolean {
  if (!mayHoldRange(tokens, groups)) return false;
  const measures = groups.flatMap(g => g.measures).sort((a, b) => a.first - b.first);
  const joinedEnds = new Set(groups.filter(g => g.joined).map(g => g.last));
  const dropped = new Set<Measure>();
  measures.forEach((low, i) => {
    const high = measures[i + 1];
    if (!high || high.first - low.last > 2 || high.um <= low.um) return;
    const sign = tokens[low.last + 1];
    const stated = high.unitStated || low.unitStated;
    const even = sign?.gap === tokens[high.first]!.gap;
    const open = sign?.text === '~' || (rangeWords.has(sign?.text ?? '') && stated);
    const dashed =
      sign?.text === '-' &&
      even &&
      !low.fraction &&
      (stated || (joinedEnds.has(low.last) && low.whole && high.whole));
    const grouped = groups.some(
      g => g.joined && g.measures.includes(low) && g.measures.includes(high) && g.measures.length > 2,
    );
    if ((open || dashed) && !grouped) dropped.add(low).add(high);
  });
  for (const group of groups) group.measures = group.measures.filter(m => !dropped.has(m));
  return dropped.size > 0;
}

/** A quick look that spares most lines the rest: a sign or word of ranges between two sizes. */
function mayHoldRange(tokens: readonly Token[], groups: readonly Group[]): boolean {
  let sizes = 0;
  for (const { measures } of groups) sizes += measures.length;
  return sizes > 1 && tokens.some(({ text }) => text === '-' || text === '~' || rangeWords.has(text));
}

const rangeWords = new Set(['to', 'bis', 'a', 'tot']);
