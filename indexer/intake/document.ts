import type { LineContext, Reading } from '../reading/reading.ts';
import type { GivenColumns } from './column-meanings.ts';
import type { Entry } from './entry.ts';
import { findLanguage } from './language.ts';
import { isFactOfPart } from './part-facts.ts';
import { readGrid } from './read-grid.ts';
import { readTables } from './read-table.ts';
import { relate } from './relate.ts';
import type { DocumentRows, Row } from './rows.ts';
import { findUnit } from './unit.ts';
import { noRows } from './unreadable.ts';

/** Reads one line; `indexer/read.ts` has the one that knows the trade. */
export type ReadLine = (text: string, context?: LineContext) => Reading;

/** How a document is to be read. */
export interface ReadOptions {
  /** What columns hold, where a person says so; what is found stands in `tables`. */
  columns?: GivenColumns | undefined;
  /** The most lines it may have. */
  mostRows?: number;
}

const usualMostRows = 200_000;

/** A document whose rows are known and whose readings are made one by one, as they are asked for. */
export interface OpenedDocument extends Omit<DocumentRows, 'rows'> {
  /** Taken rows: those that get a reading. */
  rowsTotal: number;
  /** The rows in printed order, each read as it is handed out and not kept: a long list never stands in memory whole. */
  rows(): Generator<Row>;
}

/** Bytes → grid → rows → relations, then readings; see `readDocument` of `index.ts`. */
export function openRows(
  bytes: Uint8Array,
  name: string,
  readLine: ReadLine,
  { columns, mostRows = usualMostRows }: ReadOptions = {},
): OpenedDocument {
  const grid = readGrid(bytes, mostRows);
  const { entries, tables } = readTables(grid, columns);
  const taken = entries.filter(({ row }) => row.outcome === 'taken');
  // What a person says of the columns may leave no part among the lines; they are still shown, to be put right again.
  if (taken.length === 0 && grid.faults.length === 0 && !columns)
    throw noRows('The document holds no line of a parts list.');
  const relations = relate(entries);
  const descriptions = taken.map(({ row }) => row.description);
  const headers = entries.filter(({ row }) => row.reason === 'header').map(({ row }) => row.description);
  const language = findLanguage([...new Set(headers)], descriptions);
  const unit = findUnit(taken.map(({ row, facts }) => [row.description, ...facts].join(' ')));
  const known = { lang: language ?? undefined, unit: unit ?? undefined };
  return {
    document: { name, pages: grid.pages, language, unit },
    tables,
    relations,
    balloons: [],
    faults: grid.faults,
    rowsTotal: taken.length,
    *rows() {
      for (const entry of entries)
        yield entry.row.outcome === 'taken' ? readEntry(entry, readLine, known) : entry.row;
    },
  };
}

/** All of a document at once. */
export function readRows(
  bytes: Uint8Array,
  name: string,
  readLine: ReadLine,
  options?: ReadOptions,
): DocumentRows {
  const { rows, rowsTotal: _, ...rest } = openRows(bytes, name, readLine, options);
  return { ...rest, rows: [...rows()] };
}

/** Reads a row's words: the description, with what a size or material column and its remarks state of the part. */
function readEntry(entry: Entry, readLine: ReadLine, known: LineContext): Row {
  const { row, facts, context, doubts } = entry;
  const stated = row.remarks
    .split(/\s*;\s*/)
    .filter(remark => !facts.includes(remark) && isFactOfPart(remark));
  const text = [row.description, ...facts, ...stated].filter(Boolean).join(', ');
  const reading = readLine(text, { ...known, context: context || undefined });
  const notes = [...doubts];
  if (row.qty !== null && reading.qty !== null && row.qty !== reading.qty)
    notes.push(`the quantity column says ${row.qty}, the description ${reading.qty}`);
  return {
    ...row,
    text,
    reading: notes.length > 0 ? { ...reading, review: true, notes: [...reading.notes, ...notes] } : reading,
  };
}
