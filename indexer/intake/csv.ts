import { type CsvError, parse } from 'csv-parse/sync';
import { clean } from './clean.ts';
import { lineTooLong, unclosedQuote } from './faults.ts';
import type { Grid, GridLine } from './grid.ts';
import { GridBuilder } from './grid-builder.ts';
import { escapeLoneQuotes } from './lone-quotes.ts';
import { Unreadable } from './unreadable.ts';

/** The longest record, in characters: no part's line comes near it, and an unclosed quote ends at it. */
const longestRecord = 65_536;
/** How much of a row that is lost is shown, in characters. */
const shownOfLost = 200;
/** Unclosed quotes after which a file is given up. */
const mostMended = 50;

/**
 * A CSV file as a grid. Every record is a line, `row` being its number in a spreadsheet; blank ones are left out. A
 * quote that is never closed costs its own line, not those after it; one that is a whole cell is that cell.
 * @throws {Unreadable} `too-large` beyond `mostRows` rows, `unreadable` when quotes make no sense
 */
export function readCsv(text: string, separator: string, mostRows: number): Grid {
  const builder = new GridBuilder(mostRows);
  const { grid } = builder;
  const bytes = Buffer.from(escapeLoneQuotes(text, separator));
  let start = 0;
  let row = 0;
  for (let mended = 0; start < bytes.length; mended += 1) {
    const reach = readRecords(bytes.subarray(start), row, separator, builder);
    if (reach === null) return grid;
    if (mended === mostMended)
      throw new Unreadable('unreadable', {
        place: `row ${reach.row + 1}`,
        message: `More than ${mostMended} quotation marks are opened and never closed.`,
        remedy: 'Save the file again as CSV from the spreadsheet it came from, or paste the list as text.',
      });
    start += reach.bytes;
    const end = bytes.indexOf(10, start);
    row = reach.row + 1;
    lose(grid, row, bytes.subarray(start, end < 0 ? bytes.length : end).toString('utf8', 0, longestRecord));
    if (end < 0) return grid;
    start = end + 1;
  }
  return grid;
}

/** Reads records until the end (null) or until a record that has no end: its first byte, and the rows before it. */
function readRecords(bytes: Buffer, rowsBefore: number, separator: string, builder: GridBuilder) {
  let reach = { bytes: 0, row: rowsBefore };
  try {
    parse(bytes, {
      delimiter: separator,
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: true,
      max_record_size: longestRecord,
      on_record: (cells: string[], context) => {
        const from = reach.bytes;
        reach = { bytes: context.bytes, row: rowsBefore + context.records + context.empty_lines };
        if (cells.some(cell => cell.startsWith('"') && cell.includes('\n')))
          splitUnclosed(builder, reach, bytes.subarray(from, reach.bytes).toString(), separator);
        else addLine(builder, reach.row, cells);
        return null;
      },
    });
    return null;
  } catch (error) {
    const { code } = error as CsvError;
    if (code === 'CSV_QUOTE_NOT_CLOSED' || code === 'CSV_MAX_RECORD_SIZE') return reach;
    throw error;
  }
}

const addLine = (builder: GridBuilder, row: number, cells: string[]) =>
  builder.add({ page: 1, place: `row ${row}`, cells });

/** A field that swallowed the lines after it, up to a stray quote further down: those lines are read again, unquoted. */
function splitUnclosed(builder: GridBuilder, reach: { row: number }, raw: string, separator: string): void {
  const [first, ...rest] = raw.split(/\r?\n/);
  lose(builder.grid, reach.row, first!);
  for (const text of rest) {
    if (!text.trim()) continue;
    reach.row += 1;
    addLine(
      builder,
      reach.row,
      text.split(separator).map(cell => (cell === '""""' ? '"' : cell)),
    );
  }
}

/** A row without an end: a quotation mark is open, or there is no end of line for longer than any row is. */
function lose(grid: Grid, row: number, text: string): void {
  const line: GridLine = { page: 1, place: `row ${row}`, cells: [clean(text).text.slice(0, shownOfLost)] };
  const fault = text.includes('"') ? unclosedQuote(line) : lineTooLong(line, longestRecord);
  line.faulted = fault.code;
  grid.lines.push(line);
  grid.faults.push(fault);
}
