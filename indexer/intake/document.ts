import type { LineContext, Reading } from '../reading/reading.ts';
import { readCsv } from './csv.ts';
import { decode } from './decode.ts';
import type { Grid } from './grid.ts';
import { mustBeText } from './kind.ts';
import { findLanguage } from './language.ts';
import { readPaste } from './paste.ts';
import { readTable } from './read-table.ts';
import { relate } from './relate.ts';
import { isFactOfPart } from './remark-words.ts';
import type { Entry } from './row-builder.ts';
import type { DocumentRows } from './rows.ts';
import { findSeparator } from './separator.ts';
import { findUnit } from './unit.ts';
import { Unreadable } from './unreadable.ts';

/** Reads one line; `indexer/read.ts` has the one that knows the trade. */
export type ReadLine = (text: string, context?: LineContext) => Reading;

export interface ReadOptions {
  /** Rows beyond which a document is refused. */
  mostRows?: number;
  /** Told now and then how many of the taken rows are read. */
  onProgress?: (rowsDone: number, rowsTotal: number) => void;
}

const usualMostRows = 200_000;
const progressStep = 500;

/** Bytes → grid → rows → relations → readings, in that order; see {@link readDocument} of `index.ts`. */
export function readRows(
  bytes: Uint8Array,
  name: string,
  readLine: ReadLine,
  options: ReadOptions = {},
): DocumentRows {
  const grid = readGrid(bytes, options.mostRows ?? usualMostRows);
  const entries = readTable(grid);
  const taken = entries.filter(({ row }) => row.outcome === 'taken');
  if (taken.length === 0 && grid.faults.length === 0) noRows('The document holds no line of a parts list.');
  const relations = relate(entries);
  const descriptions = taken.map(({ row }) => row.description);
  const headers = entries.filter(({ row }) => row.reason === 'header').map(({ row }) => row.description);
  const language = findLanguage([...new Set(headers)], descriptions);
  const unit = findUnit(taken.map(({ row, facts }) => [row.description, ...facts].join(' ')));
  options.onProgress?.(0, taken.length);
  taken.forEach((entry, at) => {
    readEntry(entry, readLine, { lang: language ?? undefined, unit: unit ?? undefined });
    if ((at + 1) % progressStep === 0 || at + 1 === taken.length) options.onProgress?.(at + 1, taken.length);
  });
  return {
    document: { name, pages: grid.pages, language, unit },
    rows: entries.map(({ row }) => row),
    relations,
    balloons: [],
    faults: grid.faults,
  };
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
function readEntry(entry: Entry, readLine: ReadLine, known: LineContext): void {
  const { row, facts, context, doubts } = entry;
  const stated = row.remarks
    .split(/\s*;\s*/)
    .filter(remark => !facts.includes(remark) && isFactOfPart(remark));
  const text = [row.description, ...facts, ...stated].filter(Boolean).join(', ');
  const reading = readLine(text, { ...known, context: context || undefined });
  const notes = [...doubts];
  if (row.qty !== null && reading.qty !== null && row.qty !== reading.qty)
    notes.push(`the quantity column says ${row.qty}, the description ${reading.qty}`);
  row.text = text;
  row.reading =
    notes.length > 0 ? { ...reading, review: true, notes: [...reading.notes, ...notes] } : reading;
}
