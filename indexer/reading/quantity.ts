import type { Cell } from './cells.ts';
import { count, only, type Quantity } from './count.ts';
import type { Hit } from './dictionary.ts';
import { byColon } from './quantity-behind.ts';
import { byCell, byColumn } from './quantity-cells.ts';
import { byLastNumber } from './quantity-column.ts';
import { byTimes, sizedBefore, timesSign } from './quantity-times.ts';
import { byCounter, byNumeral, byWord, counters } from './quantity-words.ts';
import type { Token } from './tokens.ts';
import { wordSet } from './vocabulary.ts';

/** What closes a bracket. */
export const bracket = wordSet(')');

/**
 * Finds the quantity: `Qty 4`, `4 pcs`, `2x …`, `… x2`, `(4)`, a quantity cell, or the last column of columns run together.
 *
 * @param sets the sets that the tokens' words are in
 * @param hits the dictionary's finds, by first token
 */
export function findQuantity(
  tokens: readonly Token[],
  sets: number,
  cells: readonly Cell[],
  hits: readonly Hit[],
): Quantity | null {
  const bracketed = (sets & bracket) !== 0;
  if ((bracketed || (sets & timesSign) !== 0) && severalCounts(tokens)) return null;
  return (
    byColumn(tokens, cells) ??
    byWord(tokens, hits) ??
    ((sets & counters) !== 0 ? byCounter(tokens) : null) ??
    ((sets & timesSign) !== 0 ? byTimes(tokens, cells, hits) : null) ??
    (bracketed ? byBracket(tokens, cells) : null) ??
    byDash(tokens) ??
    byColon(tokens, hits) ??
    byCell(tokens, cells, hits) ??
    byLastNumber(tokens, cells, hits) ??
    byNumeral(tokens, cells, hits)
  );
}

/** Whether a line counts several parts, each in its brackets: 0.1 (2x), 0.3 (1x). None of them is the line's quantity. */
export function severalCounts(tokens: readonly Token[]): boolean {
  let counts = 0;
  for (let at = 3; at < tokens.length; at++)
    if (tokens[at]!.text === ')' && tokens[at - 3]!.text === '(') {
      const [one, other] = [tokens[at - 2]!, tokens[at - 1]!];
      if ((one.text === '×' && count(other) !== null) || (other.text === '×' && count(one) !== null))
        counts++;
    } else if (isCountBehindSize(tokens, at)) counts++;
  // (3x; 1x for the one and 2x for the other) tells of one part.
  for (let at = 0, depth = 0; at + 2 < tokens.length; at++) {
    if (tokens[at]!.text === '(') depth++;
    else if (tokens[at]!.text === ')') depth--;
    else if (depth <= 0 && beginsPart(tokens, at)) counts++;
  }
  return counts > 1;
}

/** 8x M3x12, 4x M3 nuts: a count with its sign at the beginning or behind what parts two parts. */
const beginsPart = (tokens: readonly Token[], at: number): boolean => {
  const [number, sign, next] = [tokens[at]!, tokens[at + 1]!, tokens[at + 2]!];
  const begins = at === 0 || (number.gap > 0 && /^(?:[,;+&]|and|und|et|e|y|en)$/.test(tokens[at - 1]!.text));
  return (
    begins &&
    sign.text === '×' &&
    sign.gap === 0 &&
    next.gap > 0 &&
    next.kind === 'word' &&
    count(number) !== null
  );
};

/** M12 (10): a number alone in brackets behind a size's figure. */
const isCountBehindSize = (tokens: readonly Token[], at: number) =>
  tokens[at]!.text === ')' &&
  tokens[at - 2]!.text === '(' &&
  count(tokens[at - 1]) !== null &&
  tokens[at - 3]!.kind === 'number';

/** `4-M3x8`, as Japanese drawings count; `M3 nuts: 4`, `M3 nuts - 4` and `M3 nuts, 4` at the end. */
function byDash(tokens: readonly Token[]): Quantity | null {
  const [first, dash, letter] = tokens;
  if (
    count(first) !== null &&
    dash?.text === '-' &&
    dash.gap === 0 &&
    letter?.text === 'm' &&
    letter.gap === 0 &&
    letter.taken
  )
    return only(count(first), 0, 1);
  const last = tokens.length - 1;
  const [sign, before] = [tokens[last - 1], tokens[last - 2]];
  const off =
    sign?.text === ':' ||
    sign?.text === '=' ||
    (sign?.text === '-' && sign.gap > 0 && tokens[last]!.gap > 0) ||
    ((sign?.text === ',' || sign?.text === ';') && (sizedBefore(tokens, 0, last) || threaded(tokens)));
  return off && before?.kind === 'word' && before.text.length > 2 && !tokens[last]!.taken
    ? only(count(tokens[last]), last)
    : null;
}

/** Whether a metric thread stands in the line. */
const threaded = (tokens: readonly Token[]) => tokens.some(t => t.text === 'm' && t.taken);

/** More than this in brackets is a year, a profile or a number of the maker's. */
const mostInBrackets = 500;

/** `Gear (2)`: a number alone in brackets behind the name. In front of it it is a reference. */
function byBracket(tokens: readonly Token[], cells: readonly Cell[]): Quantity | null {
  for (const cell of cells) {
    for (let at = cell.first + 1; at + 1 <= cell.last; at++) {
      if (tokens[at - 1]?.text !== '(' || tokens[at + 1]?.text !== ')') continue;
      const value = count(tokens[at]);
      if (value !== null && value <= mostInBrackets && at - 1 > cell.first)
        return only(value, at - 1, at + 1);
    }
  }
  return null;
}
