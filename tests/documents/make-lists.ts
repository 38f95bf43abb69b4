import { type Encoding, encode } from './encode.ts';
import { type Field, type Layout, layOut, type Printed, plainLayout } from './lay-out.ts';
import { type Line, type List, makeList, type Wish } from './make-list.ts';
import { Chance } from './random.ts';
import type { Language } from './words.ts';
import { writeHtml } from './write-html.ts';
import { writeOds, writeXlsx } from './write-sheets.ts';
import { writeColumns, writeRagged, writeSeparated, writeSingle, writeTabs } from './write-text.ts';

export type Format = 'csv' | 'tsv' | 'xlsx' | 'ods' | 'html' | 'text' | 'ragged' | 'single blanks';
export const formats: readonly Format[] = [
  'csv',
  'tsv',
  'xlsx',
  'ods',
  'html',
  'text',
  'ragged',
  'single blanks',
];

/** A kind of sheet: how it is laid out, and what its list has. */
export interface Kind {
  name: string;
  layout?: Partial<Layout>;
  wish?: Wish;
  /** Formats in which a person could not tell its cells apart either, or that it is not met in. */
  not?: readonly Format[];
}

const orders: Field[][] = [
  ['ref', 'partNumber', 'description', 'qty', 'remarks'],
  ['ref', 'description', 'partNumber', 'qty', 'remarks'],
  ['partNumber', 'description', 'qty', 'remarks', 'ref'],
  ['ref', 'qty', 'partNumber', 'description', 'remarks'],
];

const loose: readonly Format[] = ['ragged', 'single blanks'];

export const kinds: readonly Kind[] = [
  { name: 'a plain list' },
  {
    name: 'titles, headings, a total and a footer',
    layout: { titles: true, footers: true, total: true },
    wish: { headings: true },
    not: ['single blanks'],
  },
  { name: 'no header', layout: { header: 'none' } },
  {
    name: 'the header again on every page',
    layout: { header: 'every page', perPage: 14, footers: true },
    not: ['single blanks'],
  },
  { name: 'a header over two lines', layout: { header: 'two lines', titles: true }, not: ['single blanks'] },
  {
    name: 'a header in capitals, and prices',
    layout: { header: 'capitals', fields: ['ref', 'partNumber', 'description', 'qty', 'price', 'remarks'] },
    wish: { prices: true },
  },
  {
    name: 'two lists side by side',
    layout: { groups: 2, fields: ['ref', 'partNumber', 'description', 'qty'], titles: true },
    not: loose,
  },
  {
    name: 'three lists side by side',
    layout: { groups: 3, fields: ['ref', 'partNumber', 'description', 'qty'] },
    wish: { lines: 60 },
    not: loose,
  },
  {
    name: 'four lists side by side',
    layout: { groups: 4, fields: ['ref', 'partNumber', 'description'] },
    wish: { lines: 80 },
    not: loose,
  },
  {
    name: 'two lists side by side without header',
    layout: { groups: 2, header: 'none', fields: ['ref', 'partNumber', 'description', 'qty'] },
    not: loose,
  },
  { name: 'wrapped descriptions', layout: { wrapAt: 14 }, not: loose },
  {
    name: 'columns for models',
    layout: { fields: ['ref', 'partNumber', 'description', 'models', 'remarks'] },
    wish: { models: 3 },
    not: loose,
  },
  {
    name: 'columns for models under one title',
    layout: { header: 'two lines', fields: ['ref', 'partNumber', 'description', 'models', 'remarks'] },
    wish: { models: 4 },
    not: ['text', ...loose],
  },
  {
    name: 'columns for models with marks',
    layout: { marks: true, fields: ['ref', 'partNumber', 'description', 'models', 'remarks'] },
    wish: { models: 3 },
    not: loose,
  },
  {
    name: 'headings among the descriptions, blank rows',
    layout: { headingsIn: 'description', blankEvery: 7 },
    wish: { headings: true },
  },
  { name: 'pages of which only the first has a header', layout: { perPage: 12 }, not: ['single blanks'] },
  {
    name: 'a blank column before and within, and a unit',
    layout: { fields: ['blank', 'ref', 'partNumber', 'blank', 'description', 'unit', 'qty', 'remarks'] },
    not: loose,
  },
  {
    name: 'lists side by side with a blank column between',
    layout: { groups: 2, fields: ['ref', 'partNumber', 'description', 'qty', 'blank'] },
    not: loose,
  },
  {
    name: 'the same without header',
    layout: { groups: 2, header: 'none', fields: ['ref', 'partNumber', 'description', 'qty', 'blank'] },
    not: loose,
  },
  {
    name: 'side by side, wrapped, headed on every page',
    layout: {
      groups: 2,
      header: 'every page',
      perPage: 24,
      wrapAt: 16,
      fields: ['ref', 'partNumber', 'description', 'qty'],
    },
    not: ['text', ...loose],
  },
  {
    name: 'no references',
    layout: { fields: ['partNumber', 'description', 'qty', 'remarks'] },
    not: ['single blanks'],
  },
  {
    name: 'no references, no header',
    layout: { header: 'none', fields: ['partNumber', 'description', 'qty'] },
    not: ['single blanks'],
  },
  {
    name: 'no part numbers',
    layout: { fields: ['ref', 'description', 'qty', 'remarks'] },
    not: ['single blanks'],
  },
  {
    name: 'no part numbers, no header',
    layout: { header: 'none', fields: ['ref', 'description', 'qty'] },
    not: ['single blanks'],
  },
];

export interface Made {
  list: List;
  rows: Printed[];
  bytes: Uint8Array;
}

/** A list of a kind in a format, made by chance from a seed: the same one each time. */
export function makeDocument(kind: Kind, format: Format, seed: number): Made {
  const chance = new Chance(seed * 7919 + 1);
  const list = makeList(seed, kind.wish);
  const order = kind.layout?.fields ? {} : { fields: chance.pick(orders) };
  const layout = { ...plainLayout, ...order, ...kind.layout };
  const rows = layOut(list, layout, chance);
  return { list: asPrinted(list, layout), rows, bytes: write(rows, format, chance, list.language) };
}

/** What a sheet without a column for them does not say of its lines. */
function asPrinted(list: List, { fields }: Layout): List {
  const lines = list.lines.map(line => {
    const { supersededBy: _, includes: __, serial: ___, notSold: ____, option: _____, ...bare } = line;
    const printed: Line = fields.includes('remarks') ? { ...line } : { ...bare, remarks: '' };
    if (!fields.includes('ref')) delete printed.includes;
    if (!fields.includes('partNumber')) delete printed.supersededBy;
    return {
      ...printed,
      ...(fields.includes('qty') ? {} : { qty: null }),
      ...(fields.includes('ref') ? {} : { ref: '' }),
      ...(fields.includes('partNumber') ? {} : { partNumber: '' }),
    };
  });
  return { ...list, lines };
}

function write(rows: readonly Printed[], format: Format, chance: Chance, language: Language): Uint8Array {
  if (format === 'xlsx') return writeXlsx(rows);
  if (format === 'ods') return writeOds(rows);
  if (format === 'html') return Buffer.from(writeHtml(rows, chance));
  const encoding = chance.pick<Encoding>([
    'utf-8',
    'utf-8 with mark',
    'utf-16le',
    'utf-16be',
    ...(language === 'ja' ? (['shift_jis', 'euc-jp'] as const) : (['windows-1252'] as const)),
  ]);
  if (format === 'tsv') return encode(writeTabs(rows), encoding);
  if (format === 'ragged') return encode(writeRagged(rows, chance), encoding);
  if (format === 'single blanks') return encode(writeSingle(rows), encoding);
  if (format === 'text') return encode(writeColumns(rows, chance.whole(2, 4)), encoding);
  return encode(writeSeparated(rows, chance.pick([';', ',', '|']), chance.pick(['\n', '\r\n'])), encoding);
}
