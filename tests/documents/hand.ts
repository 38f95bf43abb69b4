import {
  beginText,
  concatTransformationMatrix,
  endText,
  type PDFName,
  type PDFOperator,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  setFillingRgbColor,
  setFontAndSize,
  setTextMatrix,
  setTextRenderingMode,
  showText,
} from 'pdf-lib';
import type { Face } from './faces.ts';

/** How a program puts text on a page. */
export interface Hand {
  /** What it writes in one stroke. */
  pieces: 'whole' | 'words' | 'letters';
  /** Its own units to the point, by a matrix around each text. */
  scale: number;
}

export const plainHand: Hand = { pieces: 'whole', scale: 1 };

/** Text at a place of the file, running at an angle in radians. */
export interface Placed {
  x: number;
  y: number;
  angle: number;
  text: string;
  size: number;
  font: Face;
  grey: number;
  /** Rendering mode (ISO 32000-1, 9.3.6); 3 leaves no mark. */
  mode?: number;
}

/** Writes a text as the hand does: whole, word by word or letter by letter. */
export function write(
  page: PDFPage,
  { x, y, angle, text, size, font, grey, mode }: Placed,
  hand: Hand,
): void {
  const { scale } = hand;
  const name = nameOn(page, font);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const operators: PDFOperator[] = [pushGraphicsState()];
  if (scale !== 1) operators.push(concatTransformationMatrix(1 / scale, 0, 0, 1 / scale, 0, 0));
  operators.push(beginText(), setFillingRgbColor(grey, grey, grey), setFontAndSize(name, size * scale));
  if (mode !== undefined) operators.push(setTextRenderingMode(mode));
  for (const [piece, shift] of piecesOf(text, hand, word => font.widthOfTextAtSize(word, size)))
    operators.push(
      setTextMatrix(cos, sin, -sin, cos, (x + shift * cos) * scale, (y + shift * sin) * scale),
      showText(font.encodeText(piece)),
    );
  page.pushOperators(...operators, endText(), popGraphicsState());
}

/** A font has one name on a page, however often it is written with. */
function nameOn(page: PDFPage, { name, ref }: Face): PDFName {
  const names = named.get(page) ?? new Map<string, PDFName>();
  named.set(page, names);
  const known = names.get(ref.tag) ?? page.node.newFontDictionary(name.replace(/\W/g, ''), ref);
  names.set(ref.tag, known);
  return known;
}
const named = new WeakMap<PDFPage, Map<string, PDFName>>();

/** The pieces of a text, and how far along each begins. */
function piecesOf(text: string, { pieces }: Hand, width: (text: string) => number): [string, number][] {
  if (pieces === 'whole') return [[text, 0]];
  const upTo = (index: number) => [...text.slice(0, index)].reduce((sum, letter) => sum + width(letter), 0);
  const found: [string, number][] = [];
  for (const { 0: piece, index } of text.matchAll(pieces === 'words' ? /\S+/g : /\S/gu))
    found.push([piece, upTo(index)]);
  return found;
}
