import { clean } from './clean.ts';
import { hiddenCharacters, lineTooLong } from './faults.ts';
import type { Grid, GridLine } from './grid.ts';
import { Unreadable } from './unreadable.ts';

/** The longest line of a table, in characters. */
const longestLine = 65_536;
/** How much of a line that is lost is shown, in characters. */
const shownOfLost = 200;
/** The cells of all lines together: a row that says that it is repeated costs nothing to write. */
const mostCells = 4_000_000;
/** Cells of one line; no parts list is wider. */
export const mostColumns = 256;

/** Collects the lines of tables, cleaned, under the limits of one document. */
export class GridBuilder {
  readonly grid: Grid = { pages: 1, lines: [], faults: [] };
  private readonly mostRows: number;
  private cells = 0;

  constructor(mostRows: number) {
    this.mostRows = mostRows;
  }

  /**
   * Adds a line unless it is blank, and gives it.
   * @throws {Unreadable} `too-large` beyond the limits
   */
  add(printed: Omit<GridLine, 'broken' | 'faulted'>): GridLine | null {
    if (!printed.cells.some(cell => cell.trim())) return null;
    const line: GridLine = { ...printed };
    if (printed.cells.reduce((sum, cell) => sum + cell.length, 0) > longestLine) {
      line.cells = [clean(printed.cells.join(' ').slice(0, shownOfLost)).text];
      line.faulted = 'line-too-long';
      this.grid.faults.push(lineTooLong(line, longestLine));
    } else if (!this.clean(line)) return null;
    this.grid.lines.push(line);
    this.cells += line.cells.length;
    if (this.grid.lines.length > this.mostRows) tooLarge(line.place, `more than ${this.mostRows} rows`);
    if (this.cells > mostCells) tooLarge(line.place, `more than ${mostCells} cells`);
    return line;
  }

  /** Puts a line's cells into plain text; false where nothing is left. */
  private clean(line: GridLine): boolean {
    let hidden = false;
    line.cells = line.cells.map(cell => {
      const cleaned = clean(cell);
      hidden ||= cleaned.hidden;
      if (cleaned.broken) line.broken = true;
      return cleaned.text.replace(/\s*[\r\n\f]+\s*/g, ' ').replaceAll('\t', ' ');
    });
    if (hidden) this.grid.faults.push(hiddenCharacters(line));
    return line.cells.some(cell => cell.trim());
  }
}

function tooLarge(place: string, what: string): never {
  throw new Unreadable('too-large', {
    place,
    message: `The list has ${what}.`,
    remedy: 'Split it into several files and send them one by one.',
  });
}
