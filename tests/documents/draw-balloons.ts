import { drawAround, drawDimension, drawNotes } from './draw-around.ts';
import { drawLeader, drawRing, type Leader, type Ring } from './draw-ring.ts';
import type { Face } from './faces.ts';
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
  /** How the program draws a circle. */
  ring?: Ring;
  leader?: Leader;
  /** Two numbers in one balloon now and then: 3,4. */
  pairs?: boolean;
  /** A line across the balloon, under it the quantity. */
  split?: boolean;
  /** Several of a part in one place now and then: 2X 37. */
  times?: boolean;
  /** Labels of sections and details, arrows of views, a table of revisions. */
  around?: boolean;
}

/** Draws parts, the balloons that name them, and what else stands on a drawing; gives where each number stands. */
export function drawBalloons(
  sheet: Sheet,
  page: number,
  area: Area,
  refs: readonly string[],
  style: DrawingStyle,
  font: Face,
  chance: Chance,
): Callout[] {
  const shown = shownTexts(refs, style, chance);
  const columns = Math.max(
    3,
    Math.round(Math.sqrt((shown.length * (area.right - area.left)) / (area.bottom - area.top))),
  );
  const rows = Math.ceil(shown.length / columns);
  const step = { x: (area.right - area.left) / columns, y: (area.bottom - area.top) / rows };
  const size = style.balloons === 'bare' ? 8 : 7;
  const found: Callout[] = [];
  shown.forEach(({ text, ref }, nth) => {
    const left = area.left + (nth % columns) * step.x;
    const top = area.top + Math.floor(nth / columns) * step.y;
    const part = { x: left + step.x * 0.62, y: top + step.y * (0.55 + 0.1 * chance.next()) };
    const number = {
      x: left + step.x * (0.2 + 0.08 * chance.next()),
      y: top + step.y * (0.25 + 0.1 * chance.next()),
    };
    drawPart(sheet, part.x, part.y, Math.min(step.x, step.y) * 0.25, chance);
    const width = font.widthOfTextAtSize(text, size);
    const split = style.split && style.balloons === 'circled';
    const radius =
      style.balloons === 'bare'
        ? Math.max(size, width) * 0.62 + 2
        : Math.max(size * (split ? 1.35 : 0.95), width * 0.5 + 2.5);
    drawLeader(sheet, number, part, radius, style.leader ?? 'straight');
    if (style.balloons === 'oval')
      sheet.circle(number.x, number.y, size * 0.85, Math.max(1.3, (width + 6) / (1.7 * size)));
    else if (style.balloons === 'circled')
      drawRing(sheet, number.x, number.y, radius, style.ring ?? 'curves');
    const middle = { x: number.x - width / 2, y: number.y + 0.36 * size, size, font };
    if (split) {
      const qty = String(chance.pick([1, 1, 2, 4, 12]));
      sheet.line(number.x - radius, number.y, number.x + radius, number.y, 0.5);
      sheet.textLater({ ...middle, y: number.y - 2, text });
      const under = { x: number.x - font.widthOfTextAtSize(qty, size) / 2, y: number.y + size, text: qty };
      sheet.textLater({ ...middle, ...under });
    } else sheet.textLater({ ...middle, text });
    found.push({ ref, page, ...sheet.shown(number.x, number.y) });
    if (style.dimensions && nth % 7 === 3)
      drawDimension(sheet, left + step.x * 0.4, top + step.y * 0.95, step.x * 0.55, font, chance);
  });
  if (style.notes) drawNotes(sheet, area, font);
  if (style.around) drawAround(sheet, area, font, chance);
  return found;
}

/** What each balloon shows, and which number it stands for. */
function shownTexts(
  refs: readonly string[],
  style: DrawingStyle,
  chance: Chance,
): { text: string; ref: string }[] {
  if (style.ranges) return inRanges(refs).map(text => ({ text, ref: text }));
  const texts: { text: string; ref: string }[] = [];
  for (let at = 0; at < refs.length; at += 1) {
    const ref = refs[at]!;
    const next = refs[at + 1];
    if (style.pairs && next && chance.in100(8)) {
      const text = `${ref}${chance.pick([',', '/'])}${next}`;
      texts.push({ text, ref: text });
      at += 1;
    } else if (style.times && chance.in100(8)) texts.push({ text: `${chance.whole(2, 4)}X ${ref}`, ref });
    else texts.push({ text: ref, ref });
  }
  return [...texts, ...refs.filter(() => chance.in100(4)).map(ref => ({ text: ref, ref }))];
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
