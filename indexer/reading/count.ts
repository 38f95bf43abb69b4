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
export const count = (token: Token | undefined): number | null =>
  token?.kind === 'number' && /^\d{1,4}$/.test(token.text) && !/^0\d/.test(token.text)
    ? Number(token.text)
    : null;

/** A quantity of so many at these tokens; none is no quantity. */
export const only = (value: number | null, first: number, last = first): Quantity | null =>
  value === null || value === 0 ? null : { value, first, last };

/** Whether a part is named in the cell. */
export const holdsName = (cell: Cell, hits: readonly Hit[]) =>
  hits.some(
    h => h.first >= cell.first && h.last <= cell.last && h.entries.some(e => e.meaning.kind === 'noun'),
  );
