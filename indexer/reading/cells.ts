import type { Dictionary, Hit } from './dictionary.ts';
import { markCells } from './mark-cells.ts';
import { type Token, tokenise } from './tokens.ts';

/** One cell of a row: tokens `first` up to and including `last` (an empty cell has last < first). */
export interface Cell {
  first: number;
  last: number;
  /** What the heading of its column says: qty, size, length, …; null where no heading is known. */
  column: string | null;
}

/** Three blanks or more were a column before the row was copied as text. */
const columnGap = 3;

/** Cuts a row into its cells: at a bar or tab, and at wide blanks. A line of prose is one cell. */
export function cutCells(tokens: readonly Token[]): Cell[] {
  const cells: Cell[] = [];
  let first = 0;
  for (let at = 0; at < tokens.length; at++) {
    const { text, gap } = tokens[at]!;
    if (text === '|') {
      if (at > 0) cells.push({ first, last: at - 1, column: null });
      first = at + 1;
    } else if (at > first && gap >= columnGap) {
      cells.push({ first, last: at - 1, column: null });
      first = at;
    }
  }
  if (first < tokens.length) cells.push({ first, last: tokens.length - 1, column: null });
  return cells;
}

/** The columns named by a heading row, in order; null where the words of a cell name none. */
export function columnsOf(heading: string, dictionary: Dictionary): (string | null)[] {
  const tokens = tokenise(markCells(heading).replace(/^[^|:]*:(?=[^|]*\|)/, ''));
  const hits = dictionary.find(tokens);
  return cutCells(tokens).map(cell => columnIn(cell, hits));
}

const columnIn = (cell: Cell, hits: readonly Hit[]): string | null => {
  for (const hit of hits) {
    if (hit.first < cell.first || hit.last > cell.last) continue;
    for (const { meaning } of hit.entries) if (meaning.kind === 'column') return meaning.column;
    for (const { meaning } of hit.entries) if (meaning.kind === 'label') return meaning.label;
  }
  return null;
};

/** Gives each cell the column it stands under, where heading and row have as many cells. */
export function nameCells(cells: Cell[], columns: readonly (string | null)[]): void {
  if (columns.length < 2 || columns.length !== cells.length) return;
  for (let i = 0; i < cells.length; i++) cells[i]!.column = columns[i]!;
}
