import { type Group, measuresOf } from './groups.ts';
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
  const measures = measuresOf(groups);
  const joinedEnds = new Set<number>();
  for (const { joined, last } of groups) if (joined) joinedEnds.add(last);
  const dropped = new Set<Measure>();
  for (let at = 0; at + 1 < measures.length; at++) {
    const [low, high] = [measures[at]!, measures[at + 1]!];
    if (high.first - low.last > 2 || high.um <= low.um || high.um > low.um * widest) continue;
    if (isRange(tokens, groups, joinedEnds, low, high)) dropped.add(low).add(high);
  }
  for (const { measures: list } of groups)
    if (list.length >= 3 && isSpacedSlash(tokens[list[0]!.last + 1]!) && rises(list))
      for (const size of list) dropped.add(size);
  dropChoices(tokens, measures, dropped);
  dropLists(tokens, measures, joinedEnds, dropped);
  if (dropped.size > 0)
    for (const group of groups) group.measures = group.measures.filter(m => !dropped.has(m));
  return dropped.size > 0;
}

/** Whether what stands between two sizes makes them the ends of a range, unless they are two of a larger size. */
function isRange(
  tokens: readonly Token[],
  groups: readonly Group[],
  joinedEnds: ReadonlySet<number>,
  low: Measure,
  high: Measure,
): boolean {
  const sign = tokens[low.last + 1];
  if (!sign || !isIn(sign, rangeSigns)) return false;
  const wholes = low.whole && high.whole && joinedEnds.has(low.last);
  const even = sign.gap === tokens[high.first]!.gap;
  const stated = high.unitStated || low.unitStated;
  const open = sign.text === '~' || (isIn(sign, rangeWords) && stated);
  const decimals = !low.whole && !high.whole && !low.fraction && sign.gap > 0;
  const dashed = sign.text === '-' && even && !low.fraction && (stated || decimals || wholes);
  // M4 x 12/16
  const slashed = sign.text === '/' && sign.gap === 0 && even && wholes;
  if (!open && !dashed && !slashed) return false;
  return !groups.some(
    g => g.joined && g.measures.length > 2 && g.measures.includes(low) && g.measures.includes(high),
  );
}

/** What is longer than this many times the other is no range, but another size: shaft 16 - 500 mm. */
const widest = 12;

/** Two sizes with a word between them that leaves them to choose from: 8 or 10, 8mm or 5/16". */
function dropChoices(tokens: readonly Token[], measures: readonly Measure[], dropped: Set<Measure>): void {
  for (let at = 0; at + 1 < measures.length; at++) {
    const [one, other] = [measures[at]!, measures[at + 1]!];
    if (other.first === one.last + 2 && isIn(tokens[one.last + 1]!, choiceWords)) dropped.add(one).add(other);
  }
}

const isSpacedSlash = ({ text, gap }: Token) => text === '/' && gap > 0;

/** Three sizes and more that rise a little: they stand for as many parts, as 3.2 / 4.3 / 5.3 of washers. */
const rises = (list: readonly Measure[]) =>
  list.every((m, i) => i === 0 || (m.um > list[i - 1]!.um && m.um < list[i - 1]!.um * 1.5));

/** Three rising sizes and more, the first of them the end of a size: M3 x 8, 10, 16. */
function dropLists(
  tokens: readonly Token[],
  measures: readonly Measure[],
  joinedEnds: ReadonlySet<number>,
  dropped: Set<Measure>,
): void {
  let first = 0;
  for (let at = 1; at <= measures.length; at++) {
    if (at < measures.length && follows(tokens, measures[at - 1]!, measures[at]!)) continue;
    while (first < at && !joinedEnds.has(measures[first]!.last)) first++;
    if (at - first > 2) for (let one = first; one < at; one++) dropped.add(measures[one]!);
    first = at;
  }
}

/** Whether a size stands behind the mark of a list, and is larger than the one in front of it. */
const follows = (tokens: readonly Token[], one: Measure, next: Measure) =>
  next.first === one.last + 2 && isIn(tokens[one.last + 1]!, listMarks) && next.um > one.um;

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
const rangeSigns = wordSet('- ~ /') | rangeWords;
const behindSizes = rangeSigns | choiceWords | listMarks;
