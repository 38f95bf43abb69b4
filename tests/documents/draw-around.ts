import type { Area } from './draw-balloons.ts';
import type { Face } from './faces.ts';
import type { Sheet } from './pdf-page.ts';
import type { Chance } from './random.ts';

/** Notes, each with its number before it. */
export function drawNotes(sheet: Sheet, { left, bottom }: Area, font: Face): void {
  const notes = [
    'NOTES:',
    '1. Grease before fitting.',
    '2. Torque 4 Nm.',
    '3. See page 2 for the parts list.',
  ];
  notes.forEach((text, nth) => {
    sheet.textLater({ x: left, y: bottom + 8 + nth * 8.5, text, size: 6.5, font });
  });
}

/** Labels of a section and a detail, an arrow that tells where one looks from, and what was changed when. */
export function drawAround(
  sheet: Sheet,
  { left, top, right, bottom }: Area,
  font: Face,
  chance: Chance,
): void {
  const words = (text: string, x: number, y: number, size = 7) => sheet.textLater({ x, y, text, size, font });
  words('SECTION A-A', left + 0.3 * (right - left), bottom + 4);
  words('DETAIL B', left + 0.6 * (right - left), bottom + 4);
  words('SCALE 2:1', left + 0.6 * (right - left), bottom + 12, 6);
  for (const x of [left - 8, right + 2]) {
    sheet.line(x, bottom - 14, x + 8, bottom - 14, 0.8);
    words('A', x + 2, bottom - 18, 9);
  }
  const rows = [
    ['REV', 'DATE', 'CHANGE', 'BY'],
    ...['A', 'B', 'C']
      .slice(0, chance.whole(2, 3))
      .map(letter => [letter, '12.03.2019', 'ISSUED ANEW', 'KA']),
  ];
  const widths = [20, 46, 70, 20];
  rows.forEach((cells, nth) => {
    let x = right - 156;
    const y = top - 26 + nth * 9;
    cells.forEach((text, at) => {
      sheet.box(x, y - 7, x + widths[at]!, y + 2);
      words(text, x + 2, y, 6);
      x += widths[at]!;
    });
  });
}

/** A dimension: its line with both ends on extension lines, the number above its middle. */
export function drawDimension(
  sheet: Sheet,
  x: number,
  y: number,
  length: number,
  font: Face,
  chance: Chance,
): void {
  sheet.line(x, y, x + length, y, 0.3);
  for (const end of [x, x + length]) sheet.line(end, y - 6, end, y + 2, 0.3);
  const text = chance.pick(['25', 'Ø8', '12.5', '40', 'R3', '16', 'M4']);
  sheet.textLater({ x: x + length / 2 - 4, y: y - 2, text, size: 6, font });
}

/** A frame with zone letters and numbers, and a title block in its corner. */
export function drawFrame(sheet: Sheet, font: Face, titleBlock: boolean): void {
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
