import { PDFDocument, PDFName } from 'pdf-lib';
import { expect, test } from 'vitest';
import { refuse } from '../../../api/refusal.ts';
import { readStretches } from '../../../api/work/read-stretches.ts';
import { readInChild } from '../../../api/work/spawn-reader.ts';
import type { DocumentRows, Row } from '../../../indexer/intake/rows.ts';
import { makePdf } from '../../documents/make-pdfs.ts';

const stretch = (from: number, to: number, pages: number): DocumentRows => ({
  document: { name: 'long.pdf', pages, language: null, unit: null },
  tables: [],
  rows: Array.from({ length: to - from + 1 }, (_, nth) => ({ page: from + nth }) as Row),
  relations: [],
  balloons: [],
  faults:
    to < pages
      ? [{ page: to + 1, place: `page ${to + 1}`, code: 'pages-not-read', message: '', remedy: '' }]
      : [],
});

test('a stretch that is refused leaves its first page out and keeps what was read', async () => {
  const read = await readStretches(async pages => {
    if (!pages) return stretch(1, 2, 5);
    if (pages.from === 3) throw refuse('too-slow', { place: 'long.pdf', message: 'Too slow.', remedy: '' });
    return stretch(pages.from, 5, 5);
  }, 2);
  expect(read.rows.map(({ page }) => page)).toEqual([1, 2]);
  expect(read.faults).toMatchObject([
    { code: 'page-too-much', page: 3 },
    { code: 'pages-not-read', page: 4 },
  ]);
});

test('the pages after one that is too much can be read', { timeout: 120_000 }, async () => {
  const made = await makePdf(
    { name: '', layout: { drawing: 'none', rowsPerPage: 10 }, wish: { lines: 20 } },
    4,
  );
  const pdf = await PDFDocument.load(made.bytes);
  const slow = pdf.insertPage(1, [300, 300]);
  const strokes = pdf.context.flateStream('0 0 m 9 9 l 3 4 l 1 1 9 9 8 8 c S '.repeat(4_000_000));
  slow.node.set(PDFName.of('Contents'), pdf.context.register(strokes));
  const bytes = await pdf.save();
  const asked: unknown[] = [];
  const whole = await readStretches(pages => {
    asked.push(pages?.from);
    return readInChild(bytes, { name: 'sheet.pdf', pages, limits: { time: 8000 } });
  }, 2);
  expect(asked).toEqual([undefined, 3]);
  const numbers = whole.rows.filter(row => row.outcome === 'taken').map(row => row.partNumber);
  expect(numbers).toEqual(made.list.lines.map(({ partNumber }) => partNumber));
  expect(whole.faults).toMatchObject([{ code: 'page-too-much', page: 2 }]);
});
