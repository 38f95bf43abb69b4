import type { Group } from './groups.ts';
import type { Measure } from './measures.ts';
import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/**
 * Takes out the sizes that a line leaves to choose from, since it does not say which: a range (10-12 mm, 5~8, 3 to 5 mm,
 * M3 x 8-12), a choice (8 or 10), a list (M3 x 8, 10, 16).
 *
 * @returns whether there was one
 */
export function dropRanges(tokens: readonly Token[], groups: readonly Group[]): boolean {
  if (!mayHoldRange(tokens, groups)) return false;
  const measures = groups.flatMap(g => g.measures);
  const joinedEnds = new Set(groups.filter(g => g.joined).map(g => g.last));
  const dropped = new Set<Measure>();
  measures.forEach((low, i) => {
    const high = measures[i + 1];
    if (!high || high.first - low.last > 2 || high.um <= low.um || high.um > low.um * widest) return;
    const sign = tokens[low.last + 1];
    const stated = high.unitStated || low.unitStated;
    const even = sign?.gap === tokens[high.first]!.gap;
    const open = sign?.text === '~' || (sign !== undefined && isIn(sign, rangeWords) && stated);
    const decimals = !low.whole && !high.whole && !low.fraction && sign !== undefined && sign.gap > 0;
    const dashed =
      sign?.text === '-' &&
      even &&
      !low.fraction &&
      (stated || decimals || (joinedEnds.has(low.last) && low.whole && high.whole));
    const grouped = groups.some(
      g => g.joined && g.measures.includes(low) && g.measures.includes(high) && g.measures.length > 2,
    );
    if ((open || dashed) && !grouped) dropped.add(low).add(high);
  });
  for (const { measures: list } of groups)
    if (list.length >= 3 && isSpacedSlash(tokens[list[0]!.last + 1]!) && rises(list))
      for (const size of list) dropped.add(size);
  for (const sizes of [...choicesIn(tokens, measures), ...listsIn(tokens, measures, joinedEnds)])
    for (const size of sizes) dropped.add(size);
  for (const group of groups) group.measures = group.measures.filter(m => !dropped.has(m));
  return dropped.size > 0;
}

/** What is longer than this many times the other is no range, but another size: shaft 16 - 500 mm. */
const widest = 12;

/** Two sizes with a word between them that leaves them to choose from: 8 or 10, 8mm or 5/16". */
const choicesIn = (tokens: readonly Token[], measures: readonly Measure[]): Measure[][] =>
  measures.flatMap((one, i) => {
    const other = measures[i + 1];
    return other && other.first === one.last + 2 && isIn(tokens[one.last + 1]!, choiceWords)
      ? [[one, other]]
      : [];
  });

const isSpacedSlash = ({ text, gap }: Token) => text === '/' && gap > 0;

/** Three sizes and more that rise a little: they stand for as many parts, as 3.2 / 4.3 / 5.3 of washers. */
const rises = (list: readonly Measure[]) =>
  list.every((m, i) => i === 0 || (m.um > list[i - 1]!.um && m.um < list[i - 1]!.um * 1.5));

/** Three rising sizes and more, the first of them the end of a size: M3 x 8, 10, 16. */
function listsIn(
  tokens: readonly Token[],
  measures: readonly Measure[],
  joinedEnds: ReadonlySet<number>,
): Measure[][] {
  const lists: Measure[][] = [];
  for (let at = 0; at < measures.length; at++) {
    if (!joinedEnds.has(measures[at]!.last)) continue;
    const list = [measures[at]!];
    for (let next = measures[at + 1]; next; next = measures[at + list.length]) {
      const last = list.at(-1)!;
      if (next.first !== last.last + 2 || !isIn(tokens[last.last + 1]!, listMarks) || next.um <= last.um)
        break;
      list.push(next);
    }
    if (list.length >= 3) lists.push(list);
  }
  return lists;
}

const listMarks = wordSet(', / ; & and und et y e en');

/** Words that leave two things to choose from. */
export const choiceWords = wordSet('or oder ou of o u bzw resp oppure ossia ofwel または');

/** A quick look that spares most lines the rest: a sign or word of ranges, choices or lists between a size and a figure. */
function mayHoldRange(tokens: readonly Token[], groups: readonly Group[]): boolean {
  for (const { measures } of groups)
    for (const { last } of measures) {
      if (last + 2 >= tokens.length || !isIn(tokens[last + 1]!, behindSizes)) continue;
      if (tokens[last + 2]!.kind === 'number' || tokens[last + 1]!.text === '/') return true;
    }
  return false;
}

const rangeWords = wordSet('to thru through bis a jusqu hasta fino tot …');
const behindSizes = wordSet('- ~') | rangeWords | choiceWords | listMarks;
