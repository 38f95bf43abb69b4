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

/** A quantity of so many at these tokens; none is no quantity. */
export const only = (value: number | null, first: number, last = first): Quantity | null =>
  value === null || value === 0 ? null : { value, first, last };

/** Whether a part is named in the cell. */
export function holdsName(cell: Cell, hits: readonly Hit[]): boolean {
  for (const { first, last, nouns } of hits)
    if (nouns.length > 0 && first >= cell.first && last <= cell.last) return true;
  return false;
}
