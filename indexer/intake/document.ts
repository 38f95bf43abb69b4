import type { GivenColumns } from '../reading/column-meanings.ts';
import type { Reading } from '../reading/reading.ts';
import type { ListedDocument, ListedLine, Taught } from '../teaching/index.ts';
import type { Entry } from './entry.ts';
import { kindOf } from './kind.ts';
import { isFactOfPart } from './part-facts.ts';
import type { PdfContent } from './pdf/index.ts';
import { drawingOnly } from './pdf/tell.ts';
import { readGrid } from './read-grid.ts';
import { readTables } from './read-table.ts';
import { relate } from './relate.ts';
import type { DocumentRows, Row } from './rows.ts';
import { tieBalloons } from './tie-balloons.ts';
import { noRows } from './unreadable.ts';

/** Learns from all lines of a document how to read each; `indexer/teaching` has the one that knows the trade. */
export type Teach = (document: ListedDocument) => Taught;

/** How a document is to be read. */
export interface ReadOptions {
  /** What columns hold, where a person says so; what is found stands in `tables`. */
  columns?: GivenColumns | undefined;
  /** The most lines it may have. */
  mostRows?: number;
  /** The most pages that are read at once. */
  mostPages?: number | undefined;
  /** First and last page to read of a document that has pages, counted from 1. */
  pages?: { from: number; to: number } | undefined;
  /** Told before each page is read. */
  onPage?: ((page: number, pages: number) => void) | undefined;
  /** Asked after each page; false keeps what is read so far and leaves the rest. */
  mayGoOn?: (() => boolean) | undefined;
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
export async function openRows(
  bytes: Uint8Array,
  name: string,
  teach: Teach,
  options: ReadOptions = {},
): Promise<OpenedDocument> {
  const { mostRows = usualMostRows, mostPages, pages, onPage, mayGoOn } = options;
  if (kindOf(bytes)?.opened !== 'as a PDF')
    return openGrid({ grid: readGrid(bytes, mostRows) }, name, teach, options);
  // The library is large, and most documents are none.
  const { readPdf } = await import('./pdf/index.ts');
  return openGrid(
    await readPdf(bytes, { mostRows, mostPages, pages, onPage, mayGoOn }),
    name,
    teach,
    options,
  );
}

/** A grid, and of a document with drawings the marks on them. */
type Content = Pick<PdfContent, 'grid'> & Partial<PdfContent>;

function openGrid(
  { grid, marks = [], pageSizes, written }: Content,
  name: string,
  teach: Teach,
  { columns, pages }: ReadOptions,
): OpenedDocument {
  const { entries, tables } = readTables(grid, columns);
  const taken = entries.filter(({ row }) => row.outcome === 'taken');
  const isFurther = (pages?.from ?? 1) > 1;
  // What a person says of the columns may leave no part among the lines; they are still shown, to be put right again.
  const balloons = tieBalloons(marks, new Set(taken.map(({ row }) => row.ref).filter(Boolean)));
  if (taken.length === 0 && balloons.length > 0 && !isFurther) grid.faults.push(drawingOnly(balloons.length));
  if (taken.length === 0 && grid.faults.length === 0 && !columns && !isFurther)
    throw noRows('The document holds no line of a parts list.');
  const relations = relate(entries);
  const parents = new Map(taken.map(({ row }) => [row.ref, row.description]));
  const { language, unit, reader } = teach({
    *lines() {
      for (const one of taken) yield listed(one, parents);
    },
    ...ownWords(entries),
  });
  return {
    document: { name, pages: grid.pages, language, unit },
    tables,
    relations,
    balloons,
    ...(pageSizes && { pageSizes }),
    ...(written && { written }),
    faults: grid.faults,
    rowsTotal: taken.length,
    *rows() {
      const taughtReader = reader();
      for (const entry of entries)
        yield entry.row.outcome === 'taken'
          ? readEntry(entry, listed(entry, parents), line => taughtReader.read(line))
          : entry.row;
    },
  };
}

/** All of a document at once, a PDF excepted. */
export function readRows(
  bytes: Uint8Array,
  name: string,
  teach: Teach,
  options: ReadOptions = {},
): DocumentRows {
  const grid = readGrid(bytes, options.mostRows ?? usualMostRows);
  const { rows, rowsTotal: _, ...rest } = openGrid({ grid }, name, teach, options);
  return { ...rest, rows: [...rows()] };
}

/** What a document says besides its lines: the names of its columns, each once, and its titles, headings and notes. */
function ownWords(entries: readonly Entry[]): Pick<ListedDocument, 'headers' | 'front'> {
  const skipped = entries.filter(({ row }) => row.outcome === 'skipped').map(({ row }) => row);
  const headers = skipped.filter(row => row.reason === 'header').map(row => row.description);
  return {
    headers: [...new Set(headers)],
    front: skipped.filter(row => row.reason !== 'header').map(row => row.description),
  };
}

/** A row's words: the description, with what a size or material column and its remarks state of the part. */
function listed({ row, facts, context }: Entry, parents: ReadonlyMap<string, string>): ListedLine {
  const stated = row.remarks
    .split(/\s*;\s*/)
    .filter(remark => !facts.includes(remark) && isFactOfPart(remark));
  return {
    text: [row.description, ...facts, ...stated].filter(Boolean).join(', '),
    under: context,
    parent: (row.parent !== null && parents.get(row.parent)) || '',
  };
}

/** A row with its reading. */
function readEntry({ row, doubts }: Entry, line: ListedLine, read: (line: ListedLine) => Reading): Row {
  const reading = read(line);
  const notes = [...doubts];
  if (row.qty !== null && reading.qty !== null && row.qty !== reading.qty)
    notes.push(`the quantity column says ${row.qty}, the description ${reading.qty}`);
  return {
    ...row,
    text: line.text,
    reading: notes.length > 0 ? { ...reading, review: true, notes: [...reading.notes, ...notes] } : reading,
  };
}
