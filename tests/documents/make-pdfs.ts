import { unprintable } from './faces.ts';
import { type Line, type List, makeList, type Wish } from './make-list.ts';
import { Chance } from './random.ts';
import type { Language } from './words.ts';
import { type MadePdf, type PdfLayout, plainPdf, writePdf } from './write-pdf.ts';

/** A kind of PDF: how it is laid out, and what its list has. */
export interface PdfKind {
  name: string;
  layout?: Partial<PdfLayout>;
  wish?: Wish;
}

/** Languages whose letters the fonts that every PDF reader has can print. */
const printable: Language[] = ['en', 'de', 'fr', 'it', 'es', 'nl'];
const drawn = { balloons: 'circled', dimensions: false, notes: false, ranges: false } as const;
const narrow: PdfLayout['fields'] = ['ref', 'partNumber', 'description', 'qty'];

export const pdfKinds: readonly PdfKind[] = [
  { name: 'ruled, drawing on a page before it' },
  { name: 'ruled by rows', layout: { rules: 'rows' } },
  { name: 'ruled by columns', layout: { rules: 'columns' } },
  { name: 'banded', layout: { rules: 'zebra' } },
  { name: 'unruled', layout: { rules: 'none' } },
  {
    name: 'unruled, bare numbers, dimensions and notes',
    layout: { rules: 'none', style: { ...drawn, balloons: 'bare', dimensions: true, notes: true } },
  },
  { name: 'two lists side by side', layout: { groups: 2, fields: narrow, rowsPerPage: 25 } },
  {
    name: 'three lists side by side, unruled',
    layout: { groups: 3, fields: narrow, rowsPerPage: 18, rules: 'none' },
  },
  { name: 'four lists side by side', layout: { groups: 4, fields: narrow, rowsPerPage: 12 } },
  { name: 'beside the drawing, ruled', layout: { drawing: 'beside', rowsPerPage: 48 } },
  { name: 'beside the drawing, unruled', layout: { drawing: 'beside', rules: 'none', rowsPerPage: 48 } },
  {
    name: 'beside the drawing, in a frame with zones and a title block',
    layout: { drawing: 'beside', frame: true, rowsPerPage: 48, style: { ...drawn, dimensions: true } },
  },
  { name: 'titles at the bottom, ruled', layout: { header: 'bottom', rowsPerPage: 60 }, wish: { lines: 40 } },
  {
    name: 'titles at the bottom, unruled',
    layout: { header: 'bottom', rules: 'none', rowsPerPage: 60 },
    wish: { lines: 40 },
  },
  { name: 'titles on the first page alone', layout: { header: 'first page', rowsPerPage: 20 } },
  {
    name: 'titles on the first page alone, unruled',
    layout: { header: 'first page', rowsPerPage: 20, rules: 'none' },
  },
  { name: 'no titles, ruled', layout: { header: 'none' } },
  { name: 'no titles, unruled', layout: { header: 'none', rules: 'none' } },
  { name: 'headings, ruled', layout: { headings: true }, wish: { headings: true } },
  { name: 'headings, unruled', layout: { headings: true, rules: 'none' }, wish: { headings: true } },
  { name: 'cells in the middle of wrapped rows, unruled', layout: { middle: true, rules: 'none' } },
  { name: 'wrapped lines as far apart as rows, unruled', layout: { loose: true, rules: 'none' } },
  {
    name: 'models, number first and reference last',
    layout: { fields: ['partNumber', 'description', 'models', 'remarks', 'ref'] },
    wish: { models: 3 },
  },
  {
    name: 'prices, unruled',
    layout: { fields: ['ref', 'description', 'partNumber', 'qty', 'price'], rules: 'none' },
    wish: { prices: true },
  },
  {
    name: 'quantity before the number, unruled',
    layout: { fields: ['ref', 'qty', 'partNumber', 'description', 'remarks'], rules: 'none' },
  },
  {
    name: 'typewriter letters, two cells in one piece',
    layout: { font: 'Courier', joined: true, rules: 'none' },
  },
  { name: 'two cells in one piece', layout: { joined: true } },
  { name: 'text drawn in any order, hidden text', layout: { shuffled: true, hidden: true } },
  { name: 'hidden text, unruled', layout: { hidden: true, rules: 'none' } },
  { name: 'turned by the page, a quarter', layout: { turn: { page: 90 }, rules: 'none', shuffled: true } },
  { name: 'turned by the page, three quarters', layout: { turn: { page: 270 }, frame: true } },
  { name: 'turned by the page, upside down', layout: { turn: { page: 180 } } },
  { name: 'turned by its content, a quarter', layout: { turn: { content: 90 } } },
  {
    name: 'turned by its content, three quarters, unruled',
    layout: { turn: { content: 270 }, rules: 'none' },
  },
  { name: 'turned by both', layout: { turn: { content: 90, page: 270 } } },
  { name: 'ovals and ranges', layout: { style: { ...drawn, balloons: 'oval', ranges: true } } },
];

/** A PDF of a kind, with its truth. */
export function makePdf({ layout, wish }: PdfKind, seed: number): Promise<MadePdf> {
  const language = printable[new Chance(seed).whole(0, printable.length - 1)]!;
  const made = makeList(seed, { language, ...wish });
  const list =
    made.language === 'ja' ? made : withoutRemarks(made, ({ remarks }) => unprintable.test(remarks));
  const whole = { ...plainPdf, ...layout };
  return writePdf(whole.fields.includes('remarks') ? list : withoutRemarks(list), whole, seed);
}

/** A list says nothing of its lines where it has no column to say it in, or no letters to say it with. */
function withoutRemarks(list: List, which = (_: Line) => true): List {
  const lines = list.lines.map(line => {
    if (!which(line)) return line;
    const { supersededBy: _1, includes: _2, serial: _3, notSold: _4, option: _5, ...rest } = line;
    return { ...rest, remarks: '' };
  });
  return { ...list, lines };
}
