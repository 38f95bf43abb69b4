import type { Face } from './faces.ts';
import { hideText } from './hide-text.ts';
import type { Field } from './lay-out.ts';
import type { Line, List } from './make-list.ts';
import type { Sheet } from './pdf-page.ts';
import type { Chance } from './random.ts';
import type { PdfLayout } from './write-pdf.ts';

/** A column of a printed list. */
export interface Column {
  field: Exclude<Field, 'blank'>;
  title: string;
  width: number;
  align: 'left' | 'right' | 'centre';
  cell(line: Line): string;
}

const size = 7.5;
const pitch = 12;
const inner = 9;

export function columnsOf(
  list: List,
  { fields }: PdfLayout,
  font: Face,
  width: number,
  chance: Chance,
): Column[] {
  const { header } = list.words;
  const columns = fields.flatMap((field): Column[] => {
    const align =
      field === 'qty' || field === 'price'
        ? chance.pick(['right', 'centre'] as const)
        : field === 'ref'
          ? chance.pick(['left', 'right', 'centre'] as const)
          : 'left';
    if (field !== 'models')
      return [
        {
          field,
          title: chance.pick(header[field]),
          width: 0,
          align,
          cell: line => (field === 'qty' ? line.qtyText : line[field]),
        },
      ];
    return list.models.map(model => ({
      field,
      title: model,
      width: 0,
      align: 'centre',
      cell: line => String(line.variants[model] || '-'),
    }));
  });
  const needs = columns.map(
    ({ cell, title }) =>
      Math.max(...[title, ...list.lines.map(cell)].map(text => font.widthOfTextAtSize(text, size))) + 8,
  );
  const flexible = columns.map(({ field }) => field === 'description' || field === 'remarks');
  const fixed = needs.reduce((sum, need, at) => sum + (flexible[at] ? 0 : need), 0);
  const shares = columns.map<number>(({ field }, at) =>
    flexible[at] ? (field === 'description' ? 1.4 : 1) : 0,
  );
  const all = shares.reduce((sum, share) => sum + share, 0);
  columns.forEach((column, at) => {
    column.width = flexible[at] ? Math.min(needs[at]!, ((width - fixed) * shares[at]!) / all) : needs[at]!;
  });
  return columns;
}

/** A list's lines on a sheet, and where. */
export interface Place {
  list: List;
  layout: PdfLayout;
  font: Face;
  bold: Face;
  chance: Chance;
  titled: boolean;
  left: number;
  width: number;
  top: number;
  columns: Column[];
}

/** Where lists end whose titles stand under them. */
const lowest = 640;

const heightOf = (lines: readonly Line[], { columns, font, layout }: Place): number =>
  lines.reduce((sum, line) => {
    const most = Math.max(...columns.map(column => wrap(column.cell(line), column.width - 6, font).length));
    return sum + (layout.loose ? most * pitch : pitch + (most - 1) * inner);
  }, pitch + 1);

/** Draws the table of some lines; gives where it ends. */

export function drawTable(sheet: Sheet, lines: readonly Line[], place: Place): number {
  const { layout, font, bold, columns, left, top, titled, chance } = place;
  if (lines.length === 0) return top;
  const right = left + columns.reduce((sum, column) => sum + column.width, 0);
  const atBottom = layout.header === 'bottom';
  // Titles at the bottom stand on one line, however long the lists above them are.
  let y = atBottom ? Math.max(top, lowest - heightOf(lines, place)) : top;
  const levels = [y];
  const title = () => {
    if (layout.rules === 'zebra') sheet.fill(left, y, right, y + pitch, 0.8);
    writeCells(
      sheet,
      columns,
      columns.map(column => [column.title]),
      left,
      y,
      bold,
      layout,
      chance,
    );
    y += pitch + 1;
    levels.push(y);
  };
  if (titled && !atBottom) title();
  const ordered = atBottom ? [...lines].reverse() : lines;
  const spans: [number, number][] = [];
  ordered.forEach((line, nth) => {
    if (layout.headings && line.heading) {
      sheet.textLater({ x: left + 3, y: y + 9, text: line.heading, size, font: bold });
      spans.push([y, y + pitch]);
      y += pitch;
      levels.push(y);
    }
    const cells = columns.map(column => wrap(column.cell(line), column.width - 6, font));
    const most = Math.max(...cells.map(cell => cell.length));
    const rowHeight = most === 1 ? pitch : layout.loose ? most * pitch : pitch + (most - 1) * inner;
    if (layout.rules === 'zebra' && nth % 2 === 1) sheet.fill(left, y, right, y + rowHeight, 0.93);
    writeCells(sheet, columns, cells, left, y, font, layout, chance, rowHeight);
    y += rowHeight;
    levels.push(y);
  });
  if (titled && atBottom) title();
  ruleTable(sheet, layout, columns, left, right, levels, spans);
  return y;
}

function ruleTable(
  sheet: Sheet,
  { rules }: PdfLayout,
  columns: readonly Column[],
  left: number,
  right: number,
  levels: readonly number[],
  spans: readonly [number, number][],
): void {
  const [top, bottom] = [levels[0]!, levels.at(-1)!];
  if (rules === 'grid' || rules === 'rows') for (const y of levels) sheet.line(left, y, right, y);
  if (rules !== 'grid' && rules !== 'columns') return;
  if (rules === 'columns') for (const y of [top, levels[1]!, bottom]) sheet.line(left, y, right, y);
  sheet.line(left, top, left, bottom);
  let x = left;
  for (const { width } of columns) {
    x += width;
    if (x > right - 1) sheet.line(right, top, right, bottom);
    else
      for (let at = 0, from = top; at <= spans.length; at += 1) {
        const [start, end] = spans[at] ?? [bottom, bottom];
        sheet.line(x, from, x, start);
        from = end;
      }
  }
}

function writeCells(
  sheet: Sheet,
  columns: readonly Column[],
  cells: readonly string[][],
  left: number,
  top: number,
  font: Face,
  layout: PdfLayout,
  chance: Chance,
  height = pitch,
): void {
  let x = left;
  const most = Math.max(...cells.map(cell => cell.length));
  const step = layout.loose ? pitch : inner;
  const isTitle = font.name.includes('Bold');
  columns.forEach((column, at) => {
    const lines = cells[at]!;
    const shift = layout.middle ? ((most - lines.length) * step) / 2 : 0;
    lines.forEach((text, nth) => {
      const joined = layout.joined && at === 0 && !isTitle && cells[1]?.length === 1 && lines.length === 1;
      if (layout.joined && at === 1 && cells[0]?.length === 1 && !isTitle) return;
      const width = font.widthOfTextAtSize(text, size);
      const room = column.width - 6;
      const start =
        joined || column.align === 'left'
          ? x + 3
          : column.align === 'right'
            ? x + 3 + room - width
            : x + 3 + (room - width) / 2;
      const y = top + 9 + shift + nth * step;
      if (layout.hidden && !isTitle && chance.in100(15)) hideText(sheet, start, y, font, size, chance);
      if (joined && text) {
        // One piece with as many blanks as bring the number to its column.
        const gap = x + column.width + 3 - (start + width);
        const blanks = Math.max(1, Math.round(gap / font.widthOfTextAtSize(' ', size)));
        sheet.textLater({ x: start, y, text: `${text}${' '.repeat(blanks)}${cells[1]![0]}`, size, font });
      } else sheet.textLater({ x: start, y, text, size, font });
    });
    x += column.width;
  });
  void height;
}

/** Breaks a text where it is too wide, at blanks, and between the letters of a writing that has none. */
function wrap(text: string, width: number, font: Face): string[] {
  const lines: string[] = [];
  let line = '';
  for (const [, blank, piece] of text.matchAll(
    /(\s*)([\u3000-\u9fff\uff00-\uffef]|[^\s\u3000-\u9fff\uff00-\uffef]+)/g,
  )) {
    const longer = line ? `${line}${blank}${piece}` : piece!;
    if (line && font.widthOfTextAtSize(longer, size) > width) {
      lines.push(line);
      line = piece!;
    } else line = longer;
  }
  lines.push(line);
  return lines;
}
