import type { PDFFont } from 'pdf-lib';
import type { Sheet } from './pdf-page.ts';
import type { Chance } from './random.ts';

export interface Area {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** A number on the drawing and where its middle is, as fractions of the page as shown. */
export interface Callout {
  ref: string;
  page: number;
  x: number;
  y: number;
}

export interface DrawingStyle {
  balloons: 'circled' | 'bare' | 'oval';
  dimensions: boolean;
  notes: boolean;
  /** One balloon for each run of three numbers. */
  ranges: boolean;
}

/** Draws parts, the balloons that name them, and what else stands on a drawing; gives where each number stands. */
export function drawBalloons(
  sheet: Sheet,
  page: number,
  area: Area,
  refs: readonly string[],
  style: DrawingStyle,
  font: PDFFont,
  chance: Chance,
): Callout[] {
  const shown = style.ranges ? inRanges(refs) : [...refs, ...refs.filter(() => chance.in100(4))];
  const columns = Math.max(
    3,
    Math.round(Math.sqrt((shown.length * (area.right - area.left)) / (area.bottom - area.top))),
  );
  const rows = Math.ceil(shown.length / columns);
  const step = { x: (area.right - area.left) / columns, y: (area.bottom - area.top) / rows };
  const size = style.balloons === 'bare' ? 8 : 7;
  const found: Callout[] = [];
  shown.forEach((ref, nth) => {
    const left = area.left + (nth % columns) * step.x;
    const top = area.top + Math.floor(nth / columns) * step.y;
    const part = { x: left + step.x * 0.62, y: top + step.y * (0.55 + 0.1 * chance.next()) };
    const number = {
      x: left + step.x * (0.2 + 0.08 * chance.next()),
      y: top + step.y * (0.25 + 0.1 * chance.next()),
    };
    drawPart(sheet, part.x, part.y, Math.min(step.x, step.y) * 0.25, chance);
    const width = font.widthOfTextAtSize(ref, size);
    const radius =
      style.balloons === 'bare' ? Math.max(size, width) * 0.62 + 2 : Math.max(size * 0.95, width * 0.5 + 2.5);
    const far = Math.hypot(part.x - number.x, part.y - number.y);
    sheet.line(
      number.x + ((part.x - number.x) * radius) / far,
      number.y + ((part.y - number.y) * radius) / far,
      part.x,
      part.y,
      0.5,
    );
    if (style.balloons !== 'bare')
      sheet.circle(
        number.x,
        number.y,
        style.balloons === 'oval' ? size * 0.85 : radius,
        style.balloons === 'oval' ? Math.max(1.3, (width + 6) / (1.7 * size)) : 1,
      );
    sheet.textLater({ x: number.x - width / 2, y: number.y + 0.36 * size, text: ref, size, font });
    found.push({ ref, page, ...sheet.shown(number.x, number.y) });
    if (style.dimensions && nth % 7 === 3)
      drawDimension(sheet, left + step.x * 0.4, top + step.y * 0.95, step.x * 0.55, font, chance);
  });
  if (style.notes) {
    sheet.textLater({
      x: area.left,
      y: area.bottom + 12,
      text: 'NOTES: 1. Grease before fitting. 2. Torque 4 Nm.',
      size: 7,
      font,
    });
  }
  return found;
}

/** Three numbers that follow each other as one: 12-14. */
function inRanges(refs: readonly string[]): string[] {
  const found: string[] = [];
  for (let at = 0; at < refs.length; at += 1) {
    const [first, last] = [Number(refs[at]), Number(refs[at + 2])];
    if (at % 5 === 0 && last === first + 2 && refs[at + 1] === String(first + 1)) {
      found.push(`${first}-${last}`);
      at += 2;
    } else found.push(refs[at]!);
  }
  return found;
}

function drawPart(sheet: Sheet, x: number, y: number, size: number, chance: Chance): void {
  const kind = chance.whole(0, 2);
  if (kind === 0) sheet.circle(x, y, size * 0.8, 0.6 + 0.3 * chance.next());
  else if (kind === 1) sheet.box(x - size, y - size * 0.5, x + size, y + size * 0.5);
  else
    for (let nth = 0; nth < 5; nth += 1)
      sheet.line(x - size + nth * 2, y - size * 0.4, x - size + nth * 2 + size * 0.4, y + size * 0.4, 0.4);
}

/** A dimension: its line with both ends on extension lines, the number above its middle. */
function drawDimension(
  sheet: Sheet,
  x: number,
  y: number,
  length: number,
  font: PDFFont,
  chance: Chance,
): void {
  sheet.line(x, y, x + length, y, 0.3);
  for (const end of [x, x + length]) sheet.line(end, y - 6, end, y + 2, 0.3);
  const text = chance.pick(['25', 'Ø8', '12.5', '40', 'R3', '16', 'M4']);
  sheet.textLater({ x: x + length / 2 - 4, y: y - 2, text, size: 6, font });
}

/** A frame with zone letters and numbers, and a title block in its corner. */
export function drawFrame(sheet: Sheet, font: PDFFont, titleBlock: boolean): void {
  const { width, height } = sheet;
  sheet.box(12, 12, width - 12, height - 12);
  sheet.box(24, 24, width - 24, height - 24);
  for (let nth = 0; nth < 8; nth += 1) {
    const x = 24 + ((nth + 0.5) * (width - 48)) / 8;
    for (const y of [20.5, height - 15.5]) sheet.text({ x: x - 2, y, text: String(8 - nth), size: 7, font });
    if (nth > 0)
      for (const y of [12, height - 24])
        sheet.line(24 + (nth * (width - 48)) / 8, y, 24 + (nth * (width - 48)) / 8, y + 12);
  }
  for (let nth = 0; nth < 4; nth += 1) {
    const y = 24 + ((nth + 0.5) * (height - 48)) / 4;
    for (const x of [15.5, width - 20.5]) sheet.text({ x, y, text: 'DCBA'[nth]!, size: 7, font });
  }
  if (!titleBlock) return;
  const [left, top] = [width - 224, height - 74];
  const words = [
    ['DRAWN', 'K. Ames', 'SCALE', '1:2'],
    ['CHECKED', 'T. Orr', 'SHEET', '1 OF 2'],
    ['TITLE', 'EXPLODED VIEW', 'REV', 'B'],
  ];
  words.forEach((row, nth) => {
    sheet.box(left, top + nth * 16, width - 24, top + (nth + 1) * 16);
    row.forEach((text, at) => {
      sheet.text({ x: left + 4 + at * 50, y: top + nth * 16 + 11, text, size: 6.5, font });
      if (at > 0) sheet.line(left + at * 50, top + nth * 16, left + at * 50, top + (nth + 1) * 16);
    });
  });
}
