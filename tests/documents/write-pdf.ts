import { PDFDocument, StandardFonts } from 'pdf-lib';
import { drawFrame } from './draw-around.ts';
import { type Callout, type DrawingStyle, drawBalloons } from './draw-balloons.ts';
import { columnsOf, drawTable, type Place } from './draw-table.ts';
import { type Face, japaneseFace, type3Face } from './faces.ts';
import { type Hand, plainHand } from './hand.ts';
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
  /** Letters that are little drawings, numbered anew. */
  type3: boolean;
  hand: Hand;
  rowsPerPage: number;
  turn: { content?: number; page?: number };
  shuffled: boolean;
  /** Old text under white patches, unseen text, white text. */
  hidden: boolean;
  /** Reference and part number are one piece of text, a blank between. */
  joined: boolean;
  drawing: 'none' | 'own page' | 'last page' | 'beside' | 'own document';
  style: DrawingStyle;
  frame: boolean;
  headings: boolean;
  /** Parts of the list one under the other, each with titles of its own, the columns in another order. */
  sections: boolean;
}

export const plainPdf: PdfLayout = {
  fields: ['ref', 'partNumber', 'description', 'qty', 'remarks'],
  groups: 1,
  rules: 'grid',
  header: 'every page',
  middle: false,
  loose: false,
  font: 'Helvetica',
  type3: false,
  hand: plainHand,
  rowsPerPage: 40,
  turn: {},
  shuffled: false,
  hidden: false,
  joined: false,
  drawing: 'own page',
  style: { balloons: 'circled', dimensions: false, notes: false, ranges: false },
  frame: false,
  headings: false,
  sections: false,
};

export interface MadePdf {
  list: List;
  bytes: Uint8Array;
  callouts: Callout[];
  /** The drawing, where it is a document of its own; the numbers are on that. */
  drawing?: Uint8Array;
}

/** Prints a list as a PDF: words of its language, columns as wide as they need, every line once. */
export async function writePdf(list: List, layout: PdfLayout, seed: number): Promise<MadePdf> {
  const chance = new Chance(seed);
  const pdf = await PDFDocument.create();
  const faces = await facesOf(pdf, list, layout);
  const refs = [...new Set(list.lines.map(({ ref }) => ref).filter(Boolean))];
  const callouts: Callout[] = [];
  let drawing: Uint8Array | undefined;
  if (layout.drawing === 'own page') callouts.push(...drawingPage(pdf, 1, refs, list, layout, faces, chance));
  if (layout.drawing === 'own document') {
    const other = await PDFDocument.create();
    callouts.push(...drawingPage(other, 1, refs, list, layout, await facesOf(other, list, layout), chance));
    drawing = await other.save();
  }
  const groupWidth = layout.groups > 1 ? 250 : layout.drawing === 'beside' ? 470 : 500;
  const beside = layout.drawing === 'beside';
  const width = Math.max(595, layout.groups * (groupWidth + 14) + 70) + (beside ? 520 : 0);
  const height = beside ? 700 : 842;
  const perPage = layout.rowsPerPage * layout.groups;
  const pages = Math.ceil(list.lines.length / perPage);
  for (let nth = 0; nth < pages; nth += 1) {
    const sheet = new Sheet(pdf, width, height, layout.turn, layout.hand);
    if (layout.frame) drawFrame(sheet, faces.font, !beside);
    sheet.text({ x: 40, y: 45, text: list.words.title, size: 13, font: faces.bold });
    const lines = list.lines.slice(nth * perPage, (nth + 1) * perPage);
    const start = beside ? width - groupWidth - 40 : 40;
    const titled = layout.header !== 'none' && (layout.header !== 'first page' || nth === 0);
    for (let group = 0; group < layout.groups; group += 1)
      drawParts(sheet, lines.slice(group * layout.rowsPerPage, (group + 1) * layout.rowsPerPage), {
        list,
        layout,
        ...faces,
        chance,
        titled,
        left: start + group * (groupWidth + 14),
        width: groupWidth,
        top: 70,
        columns: columnsOf(list, layout, faces.font, groupWidth, new Chance(seed)),
      });
    if (beside && nth === 0) {
      const area = { left: 50, top: 80, right: start - 30, bottom: height - 90 };
      callouts.push(...drawBalloons(sheet, pdf.getPageCount(), area, refs, layout.style, faces.font, chance));
    }
    const footer = `${list.words.page} ${nth + 1}`;
    sheet.text({ x: 40, y: height - 32, text: footer, size: 7, font: faces.font });
    sheet.finish(chance, layout.shuffled);
  }
  if (layout.drawing === 'last page')
    callouts.push(...drawingPage(pdf, pages + 1, refs, list, layout, faces, chance));
  return { list, bytes: await pdf.save(), callouts, ...(drawing && { drawing }) };
}

interface Faces {
  font: Face;
  bold: Face;
}

async function facesOf(pdf: PDFDocument, list: List, { font, type3 }: PdfLayout): Promise<Faces> {
  if (list.language === 'ja')
    return { font: japaneseFace(pdf), bold: { ...japaneseFace(pdf), name: 'JapaneseBold' } };
  const heavy = font === 'Courier' ? StandardFonts.CourierBold : StandardFonts.HelveticaBold;
  const [plain, bold] = [await pdf.embedFont(StandardFonts[font]), await pdf.embedFont(heavy)];
  if (!type3) return { font: plain, bold };
  const text = JSON.stringify(list);
  return { font: type3Face(pdf, plain, text), bold: type3Face(pdf, bold, text) };
}

/** A page with the drawing alone. */
function drawingPage(
  pdf: PDFDocument,
  page: number,
  refs: readonly string[],
  list: List,
  layout: PdfLayout,
  { font, bold }: Faces,
  chance: Chance,
): Callout[] {
  const sheet = new Sheet(pdf, 595, 842, layout.turn, layout.hand);
  if (layout.frame) drawFrame(sheet, font, true);
  sheet.text({ x: 40, y: 50, text: `${list.maker} ${list.models.join(' / ')}`, size: 14, font: bold });
  const area = { left: 50, top: 80, right: 545, bottom: 720 };
  const found = drawBalloons(sheet, page, area, refs, layout.style, font, chance);
  sheet.finish(chance, layout.shuffled);
  return found;
}

/** A list's lines as one table, or as several one under the other, every second with its columns the other way round. */
function drawParts(sheet: Sheet, lines: readonly Line[], place: Place): void {
  if (!place.layout.sections) {
    drawTable(sheet, lines, place);
    return;
  }
  const size = Math.ceil(lines.length / 3);
  let { top } = place;
  for (let at = 0; at < lines.length; at += size) {
    const columns = (at / size) % 2 === 1 ? [...place.columns].reverse() : place.columns;
    const heading = place.chance.pick(place.list.words.headings);
    sheet.textLater({ x: place.left + 3, y: top + 9, text: heading, size: 9, font: place.bold });
    top = drawTable(sheet, lines.slice(at, at + size), { ...place, columns, top: top + 16 }) + 14;
  }
}
