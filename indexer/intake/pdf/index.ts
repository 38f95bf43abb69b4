import type { Grid } from '../grid.ts';
import { GridBuilder } from '../grid-builder.ts';
import type { PageSize, Written } from '../rows.ts';
import { addTable } from './add-table.ts';
import type { ListShape } from './build-table.ts';
import { findTables } from './find-tables.ts';
import { shownPieces } from './hidden.ts';
import { layersOf } from './layers.ts';
import { type OpenedPdf, openPdf } from './library.ts';
import { findMarks, type Mark } from './marks.ts';
import type { PageContent } from './page-content.ts';
import { readPage } from './read-page.ts';
import { sheetsOf } from './sheet.ts';
import { emptyPdf, pageBroken, pagesWithoutText, restUnread, unreadablePdf } from './tell.ts';
import type { Word } from './words.ts';
import { writtenOn } from './written.ts';

/** What is read of a PDF before its rows are sorted. */
export interface PdfContent {
  grid: Grid;
  marks: Mark[];
  pageSizes: PageSize[];
  written: Written[];
}

/** How far a PDF is read, and who hears of it. */
export interface PdfOptions {
  mostRows: number;
  /** The most pages that are read at once. */
  mostPages?: number | undefined;
  /** First and last page to read, counted from 1. */
  pages?: { from: number; to: number } | undefined;
  onPage?: ((page: number, pages: number) => void) | undefined;
  /** Asked after each page: false where memory is short, so that what is read so far is kept. */
  mayGoOn?: (() => boolean) | undefined;
}

const usualMostPages = 500;
/** How long all pages may take, in milliseconds. */
const longest = 570_000;

/**
 * Reads the parts lists and the marks on the drawings of a PDF, page by page. Pages beyond a limit are told in a fault.
 * @throws {Unreadable} `unreadable` for what can't be opened, `no-rows` where nothing on it can be used
 */
export async function readPdf(bytes: Uint8Array, options: PdfOptions): Promise<PdfContent> {
  const opened = await openPdf(new Uint8Array(bytes)).catch(error => {
    throw unreadablePdf(error as Error);
  });
  try {
    return await readPages(opened, options);
  } finally {
    void opened.pdf.destroy();
  }
}

async function readPages(
  opened: OpenedPdf,
  { mostRows, mostPages = usualMostPages, pages, onPage, mayGoOn }: PdfOptions,
): Promise<PdfContent> {
  const { pdf } = opened;
  const builder = new GridBuilder(mostRows);
  const { grid } = builder;
  grid.pages = pdf.numPages;
  const layerShown = await layersOf(pdf);
  const marks: Mark[] = [];
  const pageSizes: PageSize[] = [];
  const written: Written[] = [];
  let before: ListShape[] = [];
  const textless: { page: number; picture: boolean; blank: boolean }[] = [];
  const started = Date.now();
  const from = Math.max(1, pages?.from ?? 1);
  const last = Math.min(pdf.numPages, pages?.to ?? Infinity, from + mostPages - 1);
  let next = from;
  for (; next <= last; next += 1) {
    const now = next;
    if (Date.now() - started > longest || (now > from && mayGoOn?.() === false)) break;
    onPage?.(now, pdf.numPages);
    try {
      const page = await pdf.getPage(now);
      const content = await readPage(page, opened, layerShown);
      pageSizes.push({ page: now, width: content.width, height: content.height, rotation: page.rotate });
      const found = readContent(now, content, builder, before);
      before = found.shapes.length > 0 ? found.shapes : before;
      marks.push(...found.marks);
      written.push(...found.written);
      if (found.words === 0) textless.push({ page: now, ...look(content) });
      page.cleanup();
    } catch (error) {
      if ((error as Error).name === 'Unreadable') throw error;
      grid.faults.push(pageBroken(now));
    }
  }
  if (next <= pdf.numPages) grid.faults.push(restUnread(next, pdf.numPages));
  // A further stretch may be empty: the list stands in the one before.
  if (grid.lines.length === 0 && marks.length === 0 && from === 1) {
    const empty = emptyPdf(textless, { read: pageSizes.length, pages: pdf.numPages }, grid.faults);
    if (empty) throw empty;
  }
  grid.faults.push(...pagesWithoutText(textless.filter(({ blank }) => !blank)));
  return { grid, marks, pageSizes, written };
}

/** Puts the lists of one page into the grid, and gives the marks on its drawings, how many words it shows and the columns of its lists. */
function readContent(page: number, content: PageContent, builder: GridBuilder, before: readonly ListShape[]) {
  const sheets = sheetsOf(content, shownPieces(content));
  const used = new Set<Word>();
  const shapes: ListShape[] = [];
  let rows = 0;
  for (const sheet of sheets) {
    const found = findTables(sheet, before);
    shapes.push(...found.tables.map(({ shape }) => shape));
    for (const word of found.used) used.add(word);
    for (const table of found.tables) rows = addTable(table, { page, sheet, content, rows }, builder);
  }
  return {
    marks: findMarks(page, content, sheets, used),
    shapes,
    written: writtenOn(page, sheets, content),
    words: sheets.reduce((sum, { words }) => sum + words.length, 0),
  };
}

const look = ({ covers, strokes, pieces }: PageContent) => ({
  picture: covers.some(({ picture }) => picture),
  blank: covers.length === 0 && strokes.length === 0 && pieces.length === 0,
});
