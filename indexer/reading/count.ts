import type { Cell } from './cells.ts';
import type { Hit } from './dictionary.ts';
import type { Token } from './tokens.ts';

/** How many of the part one line asks for, and which tokens say so. */
export interface Quantity {
  value: number;
  first: number;
  last: number;
}

/** The whole number a token is, as quantities are written: at most four figures, no leading nought. */
export function count(token: Token | undefined): number | null {
  if (token?.kind !== 'number' || token.text.length > 4) return null;
  const { text } = token;
  let value = 0;
  for (let at = 0; at < text.length; at++) {
    const figure = text.charCodeAt(at) - 48;
    if (figure < 0 || figure > 9) return null;
    value = value * 10 + figure;
  }
  return text.length > 1 && text.charCodeAt(0) === 48 ? null : value;
}

/**
 * The whole number that a cell of quantities states: `4`, `4x`, `x4`, `~4`, `(4)`, `4 pcs`, `1 (optional)`. Null where it
 * is a range, a sum or a measure: 2-4, 2+1, 0.5, 3 m.
 */
export function countIn(
  tokens: readonly Token[],
  { first, last }: { first: number; last: number },
): { value: number; at: number } | null {
  let at = first;
  while (at < last && tokens[at]!.kind === 'mark' && inFront.has(tokens[at]!.text)) at++;
  if (tokens[at]?.kind === 'word' && at < last && tokens[at]!.text.length <= 4) at++;
  const value = at <= last ? count(tokens[at]) : null;
  if (value === null) return null;
  const next = at < last ? tokens[at + 1]! : undefined;
  if (!next) return { value, at };
  const joins = joining.has(next.text) && tokens[at + 2]?.kind === 'number';
  return joins || measured.has(next.text) || (next.gap === 0 && next.kind === 'number')
    ? null
    : { value, at };
}

const inFront = new Set(['×', '(', '~', ':', '=', '"', '≈', '-']);
const joining = new Set(['-', '+', '/', '×', '~', '.', ',']);
/** Units of what is not counted in pieces. */
const measured = new Set(
  'm mm cm ft in inch inches g kg mg ml cl l lb lbs oz % ° " meter metres m2 metre'.split(' '),
);

/** A quantity of so many at these tokens; none is no quantity. */
export const only = (value: number | null, first: number, last = first): Quantity | null =>
  value === null || value === 0 ? null : { value, first, last };

/** Whether a part is named in the cell. */
export function holdsName(cell: Cell, hits: readonly Hit[]): boolean {
  for (const { first, last, nouns } of hits)
    if (nouns.length > 0 && first >= cell.first && last <= cell.last) return true;
  return false;
}
