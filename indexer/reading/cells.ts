import type { CategoryName } from './reading.ts';
import type { Token } from './tokens.ts';

/** What a table's heading says of the cells under it. */
export interface Column {
  /** qty, size, part, length, …; null where no heading is known. */
  column: string | null;
  /** The dimensions it names, in order: `OD x ID x W`, `D`. */
  labels: readonly { label: string; upper: boolean }[];
  /** The part it is named by: Screw, Vite. */
  part?: CategoryName;
}

/** One cell of a row: tokens `first` up to and including `last` (an empty cell has last < first). */
export interface Cell extends Column {
  first: number;
  last: number;
}

const noLabels: Column['labels'] = [];
const cellOf = (first: number, last: number): Cell => ({ first, last, column: null, labels: noLabels });

/** Three blanks or more were a column before the row was copied as text. */
const columnGap = 3;

/** Cuts a row into its cells: at a bar or tab, and at wide blanks. A line of prose is one cell. */
export function cutCells(tokens: readonly Token[]): Cell[] {
  const cells: Cell[] = [];
  let first = 0;
  for (let at = 0; at < tokens.length; at++) {
    const { kind, text, gap } = tokens[at]!;
    if (kind === 'mark' && text === '|') {
      if (at > 0) cells.push(cellOf(first, at - 1));
      first = at + 1;
    } else if (at > first && gap >= columnGap) {
      cells.push(cellOf(first, at - 1));
      first = at;
    }
  }
  if (first < tokens.length) cells.push(cellOf(first, tokens.length - 1));
  return cells;
}
