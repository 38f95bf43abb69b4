import type { Line, List } from './make-list.ts';
import type { Chance } from './random.ts';

export type Field =
  | 'ref'
  | 'partNumber'
  | 'description'
  | 'qty'
  | 'remarks'
  | 'price'
  | 'unit'
  | 'models'
  | 'blank';

/** How a list is laid out on its sheet. */
export interface Layout {
  fields: Field[];
  /** Lists side by side. */
  groups: number;
  header: 'once' | 'every page' | 'none' | 'two lines' | 'capitals';
  /** Lines of a page; the whole list where there is but one. */
  perPage: number;
  titles: boolean;
  footers: boolean;
  total: boolean;
  /** Descriptions longer than this go on in the next row. */
  wrapAt: number;
  /** A heading stands over all columns, or under the title of the descriptions. */
  headingsIn: 'whole row' | 'description';
  /** Marks instead of numbers in the columns for models, where there is one of the part. */
  marks: boolean;
  /** A blank row after so many. */
  blankEvery: number;
}

export const plainLayout: Layout = {
  fields: ['ref', 'partNumber', 'description', 'qty', 'remarks'],
  groups: 1,
  header: 'once',
  perPage: Number.POSITIVE_INFINITY,
  titles: false,
  footers: false,
  total: false,
  wrapAt: Number.POSITIVE_INFINITY,
  headingsIn: 'whole row',
  marks: false,
  blankEvery: Number.POSITIVE_INFINITY,
};

/** One printed row: cells, or one text over all columns. */
export interface Printed {
  kind: 'wide' | 'header' | 'row';
  cells: string[];
  /** Columns over which a cell is merged, first and last. */
  merged?: [from: number, to: number][];
  page: number;
}

/** A list's rows as its sheet prints them. */
export function layOut(list: List, layout: Layout, chance: Chance): Printed[] {
  const printed: Printed[] = [];
  const columns = columnsOf(list, layout, chance);
  const wide = (text: string, page: number) => printed.push({ kind: 'wide', cells: [text], page });
  if (layout.titles) {
    wide(list.maker, 1);
    wide(list.words.title, 1);
  }
  const pages = pagesOf(list.lines, layout.perPage);
  pages.forEach((lines, nth) => {
    const page = nth + 1;
    if (nth === 0 || layout.header === 'every page')
      for (const row of headerOf(columns, layout)) printed.push({ kind: 'header', ...row, page });
    bodyOf(lines, columns, layout).forEach((row, at) => {
      if (at > 0 && at % layout.blankEvery === 0) printed.push({ kind: 'row', cells: [''], page });
      printed.push({ ...row, page });
    });
    if (layout.footers) wide(`${list.maker}   ${list.words.page} ${page}`, page);
  });
  if (layout.total && layout.groups === 1 && list.models.length === 0)
    printed.push(totalOf(list, columns, pages.length));
  return printed;
}

interface Column {
  field: Field;
  title: [over: string, under: string];
  cell(line: Line): string;
}

function columnsOf(list: List, { fields, marks }: Layout, chance: Chance): Column[] {
  const { header } = list.words;
  const titled = chance.in100(50);
  const qty = chance.pick(header.qty);
  return fields.flatMap((field): Column[] => {
    if (field === 'blank') return [{ field, title: ['', ''], cell: () => '' }];
    if (field !== 'models')
      return [{ field, title: [chance.pick(header[field]), ''], cell: line => cellOf(line, field) }];
    return list.models.map((model, nth) => ({
      field,
      title: [nth === 0 ? qty : '', titled ? `${qty} ${model}` : model],
      cell: line =>
        marks && line.variants[model] === 1 ? 'X' : String(line.variants[model] || (titled ? '-' : '')),
    }));
  });
}

const cellOf = (line: Line, field: Exclude<Field, 'models' | 'blank'>): string =>
  field === 'qty' ? line.qtyText : line[field];

/** A header's lines, once for each list side by side. Models stand under the word for their quantities. */
function headerOf(columns: readonly Column[], { header, groups }: Layout): Omit<Printed, 'kind' | 'page'>[] {
  if (header === 'none') return [];
  const shout = (text: string) => (header === 'capitals' ? text.toUpperCase() : text);
  const repeat = (cells: string[]) => ({ cells: Array.from({ length: groups }, () => cells).flat() });
  if (header !== 'two lines')
    return [repeat(columns.map(({ title: [over, under] }) => shout(under || over)))];
  const lines = columns.map(({ title: [over, under] }) => (under ? [over, under] : halves(over)));
  const models = columns.flatMap(({ field }, at) => (field === 'models' ? [at] : []));
  const merged: [number, number][] = models.length > 1 ? [[models[0]!, models.at(-1)!]] : [];
  return [{ ...repeat(lines.map(([over]) => over!)), merged }, repeat(lines.map(([, under]) => under!))];
}

/** A title of two words over two lines. */
function halves(title: string): [string, string] {
  const at = title.indexOf(' ');
  return at > 0 ? [title.slice(0, at), title.slice(at + 1)] : [title, ''];
}

function pagesOf(lines: readonly Line[], perPage: number): Line[][] {
  const pages: Line[][] = [];
  for (let at = 0; at < lines.length; at += perPage)
    pages.push(lines.slice(at, at + Math.min(perPage, lines.length)));
  return pages;
}

/** The rows of a page: lists side by side are filled one after the other. */
function bodyOf(lines: readonly Line[], columns: readonly Column[], layout: Layout): Omit<Printed, 'page'>[] {
  const { groups, wrapAt } = layout;
  if (groups === 1)
    return lines.flatMap(line => [
      ...(line.heading ? [headingRow(line.heading, columns, layout)] : []),
      ...rowsOf(line, columns, wrapAt).map(cells => ({ kind: 'row' as const, cells })),
    ]);
  const lists = split(lines, groups).map(part => part.flatMap(line => rowsOf(line, columns, wrapAt)));
  const blank = columns.map(() => '');
  return Array.from({ length: Math.max(...lists.map(list => list.length)) }, (_, nth) => ({
    kind: 'row' as const,
    cells: lists.flatMap(list => list[nth] ?? blank),
  }));
}

function headingRow(
  heading: string,
  columns: readonly Column[],
  { headingsIn }: Layout,
): Omit<Printed, 'page'> {
  if (headingsIn === 'whole row') return { kind: 'wide', cells: [heading] };
  return { kind: 'row', cells: columns.map(({ field }) => (field === 'description' ? heading : '')) };
}

function split<T>(items: readonly T[], groups: number): T[][] {
  const size = Math.ceil(items.length / groups);
  return Array.from({ length: groups }, (_, nth) => items.slice(nth * size, (nth + 1) * size));
}

function rowsOf(line: Line, columns: readonly Column[], wrapAt: number): string[][] {
  const cells = columns.map(column => column.cell(line));
  const at = columns.findIndex(({ field }) => field === 'description');
  const blank = cells[at]!.length > wrapAt ? cells[at]!.lastIndexOf(' ', wrapAt) : -1;
  if (blank <= 0) return [cells];
  const rest = cells.map((cell, nth) => (nth === at ? cell.slice(blank + 1) : ''));
  return [cells.map((cell, nth) => (nth === at ? cell.slice(0, blank) : cell)), rest];
}

function totalOf(list: List, columns: readonly Column[], page: number): Printed {
  const sum = list.lines.reduce((total, { qty }) => total + (qty ?? 0), 0);
  const cells = columns.map(({ field }) =>
    field === 'description' ? list.words.total : field === 'qty' ? String(sum) : '',
  );
  return { kind: 'row', cells, page };
}
