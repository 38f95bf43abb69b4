import { PDFDocument, type PDFFont, StandardFonts } from 'pdf-lib';
import { type Callout, type DrawingStyle, drawBalloons, drawFrame } from './draw-balloons.ts';
import type { Field } from './lay-out.ts';
import type { Line, List } from './make-list.ts';
import { Sheet } from './pdf-page.ts';
import { Chance } from './random.ts';

/** How a list and its drawing stand on the pages of a PDF. */
export interface PdfLayout {
  fields: Exclude<Field, 'blank'>[];
  groups: number;
  rules: 'grid' | 'rows' | 'columns' | 'zebra' | 'none';
  header: 'every page' | 'first page' | 'bottom' | 'none';
  /** Where a row of several lines has its other cells. */
  middle: boolean;
  /** Blanks between wrapped lines as wide as between rows. */
  loose: boolean;
  font: keyof typeof StandardFonts;
  rowsPerPage: number;
  turn: { content?: number; page?: number };
  shuffled: boolean;
  /** Old text under white patches, unseen text, white text. */
  hidden: boolean;
  /** Reference and part number are one piece of text, a blank between. */
  joined: boolean;
  drawing: 'none' | 'own page' | 'beside';
  style: DrawingStyle;
  frame: boolean;
  headings: boolean;
}

export const plainPdf: PdfLayout = {
  fields: ['ref', 'partNumber', 'description', 'qty', 'remarks'],
  groups: 1,
  rules: 'grid',
  header: 'every page',
  middle: false,
  loose: false,
  font: 'Helvetica',
  rowsPerPage: 40,
  turn: {},
  shuffled: false,
  hidden: false,
  joined: false,
  drawing: 'own page',
  style: { balloons: 'circled', dimensions: false, notes: false, ranges: false },
  frame: false,
  headings: false,
};

export interface MadePdf {
  list: List;
  bytes: Uint8Array;
  callouts: Callout[];
}

interface Column {
  field: Exclude<Field, 'blank'>;
  title: string;
  width: number;
  align: 'left' | 'right' | 'centre';
  cell(line: Line): string;
}

const size = 7.5;
const pitch = 12;
const inner = 9;

/** Prints a list as a PDF: words of its language, columns as wide as they need, every line once. */
export async function writePdf(list: List, layout: PdfLayout, seed: number): Promise<MadePdf> {
  const chance = new Chance(seed);
  const pdf = await PDFDocument.create();
  const font = await pdf.embedFont(StandardFonts[layout.font]);
  const bold = await pdf.embedFont(
    layout.font === 'Courier' ? StandardFonts.CourierBold : StandardFonts.HelveticaBold,
  );
  const callouts: Callout[] = [];
  const refs = [...new Set(list.lines.map(({ ref }) => ref).filter(Boolean))];
  let page = 1;
  const groupWidth = layout.groups > 1 ? 250 : layout.drawing === 'beside' ? 470 : 500;
  const width =
    Math.max(595, layout.groups * (groupWidth + 14) + 70) + (layout.drawing === 'beside' ? 520 : 0);
  const height = layout.drawing === 'beside' ? 700 : 842;
  if (layout.drawing === 'own page') {
    const sheet = new Sheet(pdf, 595, 842, layout.turn);
    if (layout.frame) drawFrame(sheet, font, true);
    sheet.text({ x: 40, y: 50, text: `${list.maker} ${list.models.join(' / ')}`, size: 14, font: bold });
    callouts.push(
      ...drawBalloons(
        sheet,
        page,
        { left: 50, top: 80, right: 545, bottom: 720 },
        refs,
        layout.style,
        font,
        chance,
      ),
    );
    sheet.finish(chance, layout.shuffled);
    page += 1;
  }
  const perPage = layout.rowsPerPage * layout.groups;
  const pages = Math.ceil(list.lines.length / perPage);
  for (let nth = 0; nth < pages; nth += 1, page += 1) {
    const sheet = new Sheet(pdf, width, height, layout.turn);
    if (layout.frame) drawFrame(sheet, font, layout.drawing !== 'beside');
    sheet.text({ x: 40, y: 45, text: list.words.title, size: 13, font: bold });
    const lines = list.lines.slice(nth * perPage, (nth + 1) * perPage);
    const start = layout.drawing === 'beside' ? width - groupWidth - 40 : 40;
    const titled = layout.header !== 'none' && (layout.header !== 'first page' || nth === 0);
    for (let group = 0; group < layout.groups; group += 1)
      drawTable(sheet, lines.slice(group * layout.rowsPerPage, (group + 1) * layout.rowsPerPage), {
        list,
        layout,
        font,
        bold,
        chance,
        titled,
        left: start + group * (groupWidth + 14),
        width: groupWidth,
        top: 70,
        columns: columnsOf(list, layout, font, groupWidth, new Chance(seed)),
      });
    if (layout.drawing === 'beside' && nth === 0)
      callouts.push(
        ...drawBalloons(
          sheet,
          page,
          { left: 50, top: 80, right: start - 30, bottom: height - 90 },
          refs,
          layout.style,
          font,
          chance,
        ),
      );
    sheet.text({ x: 40, y: height - 32, text: `${list.words.page} ${nth + 1}`, size: 7, font });
    sheet.finish(chance, layout.shuffled);
  }
  return { list, bytes: await pdf.save(), callouts };
}

function columnsOf(
  list: List,
  { fields }: PdfLayout,
  font: PDFFont,
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

interface Place {
  list: List;
  layout: PdfLayout;
  font: PDFFont;
  bold: PDFFont;
  chance: Chance;
  titled: boolean;
  left: number;
  width: number;
  top: number;
  columns: Column[];
}

function drawTable(sheet: Sheet, lines: readonly Line[], place: Place): void {
  const { layout, font, bold, columns, left, top, titled, chance } = place;
  if (lines.length === 0) return;
  const right = left + columns.reduce((sum, column) => sum + column.width, 0);
  const atBottom = layout.header === 'bottom';
  let y = top;
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
  font: PDFFont,
  layout: PdfLayout,
  chance: Chance,
  height = pitch,
): void {
  let x = left;
  const most = Math.max(...cells.map(cell => cell.length));
  const step = layout.loose ? pitch : inner;
  columns.forEach((column, at) => {
    const lines = cells[at]!;
    const shift = layout.middle ? ((most - lines.length) * step) / 2 : 0;
    lines.forEach((text, nth) => {
      const joined =
        layout.joined &&
        at === 0 &&
        font.name.includes('Bold') === false &&
        cells[1]?.length === 1 &&
        lines.length === 1;
      if (layout.joined && at === 1 && cells[0]?.length === 1 && font.name.includes('Bold') === false) return;
      const width = font.widthOfTextAtSize(text, size);
      const room = column.width - 6;
      const start =
        joined || column.align === 'left'
          ? x + 3
          : column.align === 'right'
            ? x + 3 + room - width
            : x + 3 + (room - width) / 2;
      const y = top + 9 + shift + nth * step;
      if (layout.hidden && chance.in100(15)) hide(sheet, start, y, font, chance);
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

/** Something that was written and then painted over, or written in white or without a mark. */
function hide(sheet: Sheet, x: number, y: number, font: PDFFont, chance: Chance): void {
  const text = chance.pick(['99', 'XX-9999', 'OLD SCREW M9 x 99', '77']);
  const kind = chance.whole(0, 2);
  if (kind === 0) {
    sheet.text({ x, y, text, size, font });
    sheet.fill(x - 2, y - 8, x + font.widthOfTextAtSize(text, size) + 2, y + 2.5, 1);
  } else if (kind === 1) sheet.text({ x, y, text, size, font, grey: 1 });
  else sheet.invisible({ x, y, text, size, font }, font);
}

function wrap(text: string, width: number, font: PDFFont): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line ? `${line} ${word}` : word;
    if (line && font.widthOfTextAtSize(longer, size) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  lines.push(line);
  return lines;
}
