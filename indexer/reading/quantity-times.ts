import type { Cell } from './cells.ts';
import { count, only, type Quantity } from './count.ts';
import type { Hit } from './dictionary.ts';
import { isClosed, namesBall, namesFlat } from './quantity-by-part.ts';
import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** The times sign, which joins sizes or counts. */
export const timesSign = wordSet('×');

/** `2x M4x10`, `(x2)`, `608ZZ x 4`, `2 x 5x11x4`: the sign stands off, or has no size on one side. */
export function byTimes(
  tokens: readonly Token[],
  cells: readonly Cell[],
  hits: readonly Hit[],
): Quantity | null {
  for (const cell of cells) {
    const open = tokens[cell.first]?.text === '(' ? cell.first + 1 : cell.first;
    const sign = tokens[open + 1];
    const leading = count(tokens[open]);
    if (leading !== null && sign?.text === '×' && !tokens[open]!.taken) {
      const next = tokens[open + 2];
      if (!next || open + 1 === cell.last || next.kind !== 'number') {
        const sizes = next?.text === 'ø' && open + 1 < cell.last && (sign.gap > 0 || next.gap === 0);
        if (!sizes) return only(leading, open, open + 1);
      } else if (
        (next.gap === 0 && isClosed(tokens, open + 2)) ||
        (namesBall(hits) && sign.gap === next.gap && !timesBehind(tokens, open + 3))
      )
        return only(leading, open, open + 1);
      else if (
        next.gap > 0 &&
        (glueFollows(tokens, open + 2, cell.last) ||
          numbersName(tokens, open + 2, hits) ||
          isCode(tokens, open))
      )
        return only(leading, open, open + 1);
    }
    for (let at = cell.first; at <= cell.last; at++) {
      if (!isIn(tokens[at]!, timesSign)) continue;
      const after = count(tokens[at + 1]);
      const before = tokens[at - 1];
      const beforeCount = count(before);
      // (2x), and 1x; behind a name
      if (
        beforeCount !== null &&
        before!.gap + Number(tokens[at - 2]?.text === '(') > 0 &&
        /^[);,|]$/.test(tokens[at + 1]?.text ?? ')')
      )
        return only(beforeCount, at - 1, at);
      if (after === null || !endsThere(tokens, at + 1, cell.last)) continue;
      if (at === cell.first || before!.text === '(' || before!.text === '|') return only(after, at, at + 1);
      // M5 washer x 4, ナット M3 ×4
      const alone = before!.kind === 'word' || tokens[at + 1]!.gap === 0;
      if (tokens[at]!.gap > 0 && alone && namesFlat(hits) && isThreaded(tokens, cell.first, at))
        return only(after, at, at + 1);
      // 10 mm long x 4
      if (isIn(tokens[at]!, timesSign) && lengthWords.has(before!.text) && tokens[at - 2]?.kind !== 'mark')
        return only(after, at, at + 1);
      const word = before!.kind === 'word' || /^[)"]$/.test(before!.text);
      if (word && tokens[at]!.gap > 0 && (tokens[at + 1]!.gap === 0 || sizedBefore(tokens, cell.first, at)))
        return only(after, at, at + 1);
      // M3x8 x4: glued signs join sizes, the one that stands off counts
      if (
        tokens[at]!.gap > 0 &&
        at >= 3 &&
        tokens[at - 2]!.text === '×' &&
        tokens[at - 2]!.gap === 0 &&
        tokens[at + 1]!.gap === 0
      )
        return only(after, at, at + 1);
    }
  }
  return null;
}

/** Behind the words of a length no other size follows by a times sign. */
const lengthWords = new Set('long length lg lang lange longueur lungo largo lengte'.split(' '));

const timesBehind = (tokens: readonly Token[], from: number) =>
  tokens.some((t, at) => at >= from && t.text === '×');

/** Whether a metric thread stands in front, and no size with a times sign. */
const isThreaded = (tokens: readonly Token[], first: number, end: number) =>
  !sizedBefore(tokens, first, end) &&
  tokens.some((t, at) => at >= first && at < end && t.text === 'm' && t.taken);

/** A bearing's number, or another of three figures and more in front of a name in the plural: 2 x 608 bearings. */
const numbersName = (tokens: readonly Token[], at: number, hits: readonly Hit[]): boolean =>
  /^\d{3,5}$/.test(tokens[at]!.text) &&
  hits.some(h => h.first === at + 1 && h.nouns.length > 0 && tokens[h.last]!.text.endsWith('s'));

/** Whether a whole size stands before: M3x8 SHCS x 4. */
export function sizedBefore(tokens: readonly Token[], first: number, end: number): boolean {
  for (let at = first + 1; at < end - 1; at++)
    if (tokens[at]!.text === '×' && tokens[at - 1]!.kind === 'number' && tokens[at + 1]!.kind === 'number')
      return true;
  return false;
}

/** Glued behind the number stand a code's letters or a glued times sign: 4x 608ZZ, 2 x 5x11x4 */
function glueFollows(tokens: readonly Token[], at: number, last: number): boolean {
  const next = tokens[at + 1];
  return (
    at < last &&
    next?.gap === 0 &&
    (next.text === '×' || (next.kind === 'word' && next.text !== 'mm') || next.text === '-')
  );
}

/** 2x 6806 bearings, 2x 1/4-20: a times sign glued to its count alone, a code of four figures or a fraction behind it. */
function isCode(tokens: readonly Token[], at: number): boolean {
  const [sign, number, next] = [tokens[at + 1]!, tokens[at + 2]!, tokens[at + 3]];
  if (sign.gap > 0 || !next) return false;
  const fraction = next.text === '/' && next.gap === 0 && tokens[at + 4]?.gap === 0;
  return fraction || (/^\d{3,5}$/.test(number.text) && next.kind === 'word' && next.text !== 'mm');
}

const endsThere = (tokens: readonly Token[], at: number, last: number) =>
  at >= last || /^[),;|]$/.test(tokens[at + 1]!.text);
