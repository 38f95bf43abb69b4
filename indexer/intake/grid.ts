import type { Role } from './column-words.ts';
import type { Fault } from './rows.ts';

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
  /** What each cell is, where the cells could only be cut by knowing the columns. */
  roles?: readonly Role[];
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
