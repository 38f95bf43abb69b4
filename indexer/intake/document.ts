import type { LineContext, Reading } from '../reading/reading.ts';
import { readCsv } from './csv.ts';
import { decode } from './decode.ts';
import type { Entry } from './entry.ts';
import type { Grid } from './grid.ts';
import { mustBeText } from './kind.ts';
import { findLanguage } from './language.ts';
import { isFactOfPart } from './part-facts.ts';
import { readPaste } from './paste.ts';
import { readTable } from './read-table.ts';
import { relate } from './relate.ts';
import type { DocumentRows, Row } from './rows.ts';
import { findSeparator } from './separator.ts';
import { findUnit } from './unit.ts';
import { Unreadable } from './unreadable.ts';

/** Reads one line; `indexer/read.ts` has the one that knows the trade. */
export type ReadLine = (text: string, context?: LineContext) => Reading;

const usualMostRows = 200_000;

/** A document whose rows are known and whose readings are made one by one, as they are asked for. */
export interface OpenedDocument extends Omit<DocumentRows, 'rows'> {
  /** Taken rows: those that get a reading. */
  rowsTotal: number;
  /** The rows in printed order, each read as it is handed out and not kept: a long list never stands in memory whole. */
  rows(): Generator<Row>;
}

/** Bytes → grid → rows → relations, then readings; see `readDocument` of `index.ts`. `mostRows` is the limit of lines. */
export function openRows(
  bytes: Uint8Array,
  name: string,
  readLine: ReadLine,
  mostRows = usualMostRows,
): OpenedDocument {
  const grid = readGrid(bytes, mostRows);
  const entries = readTable(grid);
  const taken = entries.filter(({ row }) => row.outcome === 'taken');
  if (taken.length === 0 && grid.faults.length === 0) noRows('The document holds no line of a parts list.');
  const relations = relate(entries);
  const descriptions = taken.map(({ row }) => row.description);
  const headers = entries.filter(({ row }) => row.reason === 'header').map(({ row }) => row.description);
  const language = findLanguage([...new Set(headers)], descriptions);
  const unit = findUnit(taken.map(({ row, facts }) => [row.description, ...facts].join(' ')));
  const known = { lang: language ?? undefined, unit: unit ?? undefined };
  return {
    document: { name, pages: grid.pages, language, unit },
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
export function readRows(bytes: Uint8Array, name: string, readLine: ReadLine): DocumentRows {
  const { rows, rowsTotal: _, ...rest } = openRows(bytes, name, readLine);
  return { ...rest, rows: [...rows()] };
}

/** The grid of a document of any kind that is read so far; a further kind is a further branch here. */
function readGrid(bytes: Uint8Array, mostRows: number): Grid {
  if (bytes.length === 0) noRows('The document is empty.');
  mustBeText(bytes);
  const { text } = decode(bytes);
  if (!text.trim()) noRows('The document holds nothing but blank lines.');
  const separator = findSeparator(text);
  return separator === null ? readPaste(text, mostRows) : readCsv(text, separator, mostRows);
}

function noRows(message: string): never {
  throw new Unreadable('no-rows', {
    place: 'the document',
    message,
    remedy:
      'Send the parts list itself, one part on each line, with at least a description or a part number.',
  });
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
