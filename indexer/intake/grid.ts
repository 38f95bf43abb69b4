import type { Area, Fault } from './rows.ts';

/** One printed line of a document, cut into cells. */
export interface GridLine {
  /** 1-based. */
  page: number;
  /** In a reader's words: `row 54`, `line 12`. */
  place: string;
  /** As printed, outer spaces kept, for an indent says what belongs to what. */
  cells: string[];
  /** Columns between the left edge and the first character, where the document tells. */
  indent?: number;
  /** Columns between the left edge and where the descriptions of its table usually begin. */
  descriptionEdge?: number;
  /** True when a character of this line could not be read. */
  broken?: boolean;
  /** The line as it stands, where its cells are still to be cut out of it; its words are cut when they are wanted. */
  text?: string;
  /** Lines of one sheet, or of one table of a page; no table reaches beyond it. */
  stretch?: number;
  /** For each cell the cell it is merged with, itself where it is not; absent where none is. */
  merged?: readonly number[];
  /** True where merged cells say that this line goes on from the row above. */
  continued?: boolean;
  /** True for a row that the sheet hides. */
  hidden?: boolean;
  /** Cells that the sheet holds as a date. */
  dates?: readonly number[];
  /** Where on the page it stands, where pages have places. */
  area?: Area;
  /** The code of the fault that keeps this line from being read; its words then stand in the first cell. */
  faulted?: string;
}

/** What every kind of document becomes before its table is looked for. */
export interface Grid {
  pages: number;
  lines: GridLine[];
  faults: Fault[];
}

/** The cells of a line without those that are blank. */
export const filled = (line: GridLine): string[] => line.cells.map(cell => cell.trim()).filter(Boolean);

/** What stands in one column, blanks left out. */
export const columnCells = (at: number, lines: readonly GridLine[]): string[] =>
  lines.map(line => line.cells[at]?.trim() ?? '').filter(Boolean);

/** The cells of a line of titles: a title stands in every column that it is merged over. */
export const titlesOf = ({ cells, merged }: GridLine): string[] =>
  merged ? cells.map((cell, at) => cell || (cells[merged[at] ?? at] ?? '')) : cells;
