import type { Box } from './matrix.ts';
import type { PageContent, Piece } from './page-content.ts';

/** A word as it stands on a page that is turned so that its writing runs to the right. */
export interface Word extends Box {
  text: string;
  /** Its base line. */
  base: number;
  size: number;
  style: string;
  colour: number | null;
}

/** Letters reach so far above and below the base line, as parts of the font's height. */
const above = 0.75;
const below = 0.22;
/** Pieces nearer than this part of the font's height are one word. */
const joined = 0.18;

/** The words of one direction of writing, turned so that they run to the right; those drawn twice are taken once. */
export function wordsOf(
  pieces: readonly Piece[],
  angle: number,
  page: Pick<PageContent, 'width' | 'height'>,
): Word[] {
  const words: (Word & { open: boolean })[] = [];
  for (const piece of pieces) {
    if (piece.angle !== angle) continue;
    const [left, base] = turned(piece.x, piece.y, angle, page);
    const [right] = turned(piece.endX, piece.endY, angle, page);
    const { text, size, style, colour } = piece;
    words.push({
      text,
      left: Math.min(left, right),
      right: Math.max(left, right),
      base,
      size,
      style,
      colour,
      top: base - above * size,
      bottom: base + below * size,
      open: !piece.blankAfter,
    });
  }
  return join(once(words));
}

/** Where a point of the page lies when the page is turned back by the angle of its writing. */
export function turned(
  x: number,
  y: number,
  angle: number,
  { width, height }: { width: number; height: number },
): [number, number] {
  if (angle === 90) return [y, width - x];
  if (angle === 180) return [width - x, height - y];
  if (angle === 270) return [height - y, x];
  return [x, y];
}

/** The way back: a point of the turned page on the page as shown. */
export function turnedBack(
  x: number,
  y: number,
  angle: number,
  { width, height }: { width: number; height: number },
): [number, number] {
  if (angle === 90) return [width - y, x];
  if (angle === 180) return [width - x, height - y];
  if (angle === 270) return [y, height - x];
  return [x, y];
}

/** Bold letters are often drawn twice, a hair apart. */
function once<W extends Word>(words: readonly W[]): W[] {
  const byText = new Map<string, W[]>();
  return words.filter(word => {
    const same = byText.get(word.text);
    if (!same) byText.set(word.text, [word]);
    else {
      const near = Math.min(0.25 * word.size, 0.5 * (word.right - word.left));
      if (
        same.some(other => Math.abs(other.left - word.left) < near && Math.abs(other.base - word.base) < near)
      )
        return false;
      same.push(word);
    }
    return true;
  });
}

/** Joins pieces that touch on one line, in whatever order they were drawn. */
function join(words: (Word & { open: boolean })[]): Word[] {
  const found: Word[] = [];
  for (const line of linesOf(words)) {
    let last: (Word & { open: boolean }) | null = null;
    for (const word of line) {
      const size = Math.max(word.size, last?.size ?? 0);
      const gap = last ? word.left - last.right : Infinity;
      if (
        last?.open &&
        gap < joined * size &&
        gap > -0.4 * size &&
        Math.abs(word.base - last.base) < 0.3 * size
      ) {
        last.text += word.text;
        last.right = Math.max(last.right, word.right);
        last.top = Math.min(last.top, word.top);
        last.bottom = Math.max(last.bottom, word.bottom);
        last.open = word.open;
      } else {
        last = { ...word };
        found.push(last);
      }
    }
  }
  return found;
}

/** Words by lines, top to bottom, each from left to right: base lines nearer than a third of a letter are one. */
export function linesOf<W extends Word>(words: readonly W[]): W[][] {
  const lines: W[][] = [];
  let base = -Infinity;
  for (const word of [...words].sort((a, b) => a.base - b.base)) {
    if (word.base - base > 0.3 * word.size) lines.push([]);
    lines.at(-1)!.push(word);
    base = word.base;
  }
  for (const line of lines) line.sort((a, b) => a.left - b.left);
  return lines;
}
