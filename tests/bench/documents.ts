import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { readPdf } from '../../indexer/intake/pdf/index.ts';
import { readTables } from '../../indexer/intake/read-table.ts';
import { tieBalloons } from '../../indexer/intake/tie-balloons.ts';
import { makePdf, pdfKinds } from '../documents/make-pdfs.ts';
import { type Measured, timesTheTime } from './measured.ts';

const folder = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));

/** What pdf.js gives of a document's text by itself: `getTextContent` of every page, as its own settings have it. */
export async function plainText(bytes: Uint8Array): Promise<number> {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const task = getDocument({
    data: new Uint8Array(bytes),
    verbosity: 0,
    isEvalSupported: false,
    standardFontDataUrl: `${join(folder, 'standard_fonts')}/`,
    cMapUrl: `${join(folder, 'cmaps')}/`,
  } as Parameters<typeof getDocument>[0]);
  const pdf = await task.promise;
  for (let page = 1; page <= pdf.numPages; page += 1) await (await pdf.getPage(page)).getTextContent();
  const pages = pdf.numPages;
  await task.destroy();
  return pages;
}

/** A document's tables as rows, and its balloons tied to them. */
export async function tablesAndBalloons(bytes: Uint8Array): Promise<number> {
  const { grid, marks, pageSizes } = await readPdf(bytes, { mostRows: 100_000 });
  const { entries } = readTables(grid);
  tieBalloons(
    marks,
    entries.map(({ row }) => row.ref),
  );
  return pageSizes.length;
}

/** Pages read a second with tables and balloons, beside `getTextContent` of the same pages, in turns in one warm process. */
export async function benchDocuments(documents?: readonly Uint8Array[]): Promise<Measured[]> {
  const made =
    documents ?? (await Promise.all(pdfKinds.map(kind => makePdf(kind, 5)))).map(({ bytes }) => bytes);
  const ours: number[] = [];
  const plain: number[] = [];
  for (let round = 0; round < 12; round += 1) {
    const [a, b] = round % 2 === 0 ? [ours, plain] : [plain, ours];
    for (const times of [a, b]) {
      const start = performance.now();
      let pages = 0;
      for (const bytes of made) pages += await (times === ours ? tablesAndBalloons(bytes) : plainText(bytes));
      // The first rounds warm the process.
      if (round >= 3) times.push(pages / ((performance.now() - start) / 1000));
    }
  }
  const [read, text] = [median(ours), median(plain)];
  return [
    {
      what: 'pages read: text, tables and balloons',
      perSecond: read,
      unit: 'pages',
      note: timesTheTime(read, text, 'getTextContent'),
    },
    { what: 'pages given to getTextContent of pdf.js', perSecond: text, unit: 'pages' },
  ];
}

const median = (numbers: number[]): number => numbers.sort((a, b) => a - b)[numbers.length >> 1] ?? 0;
