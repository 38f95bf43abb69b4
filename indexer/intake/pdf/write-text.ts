import { holds, identity, type Matrix, mapX, mapY, times } from './matrix.ts';
import type { Piece } from './page-content.ts';
import { faintest, type Painting } from './painting.ts';

/** A glyph as pdf.js shows it. */
export interface Glyph {
  unicode: string;
  width: number;
  /** Its code is 32, which word spacing widens; it need not be a blank. */
  isSpace: boolean;
}

/** Gaps wider than this part of the font's height are blanks, also where none is written. */
const blank = 0.18;
/** Rendering modes that leave no mark (ISO 32000-1, 9.3.6). */
const invisible = 3;
const clipOnly = 7;

/** Turns shown glyphs into pieces of text, under the text matrix of ISO 32000-1, 9.4. */
export class TextWriter {
  private readonly pieces: Piece[];
  private matrix: Matrix = identity;
  private lineX = 0;
  private lineY = 0;
  private x = 0;
  private y = 0;

  constructor(pieces: Piece[]) {
    this.pieces = pieces;
  }

  begin(): void {
    this.setMatrix(identity);
  }

  setMatrix(matrix: Matrix): void {
    this.matrix = matrix;
    this.x = this.y = this.lineX = this.lineY = 0;
  }

  move(x: number, y: number): void {
    this.x = this.lineX += x;
    this.y = this.lineY += y;
  }

  /** Writes glyphs and the shifts between them, and moves on behind them. */
  show(
    glyphs: readonly (Glyph | number)[],
    pen: Painting,
    font: Matrix,
    order: number,
    layerShown: boolean,
  ): void {
    const { fontSize, charSpacing, wordSpacing, stretch, rise, mode } = pen;
    const unit = fontSize * font[0];
    const map = times(pen.map, this.matrix);
    const sizeUp = Math.hypot(map[2], map[3]);
    const alongX = map[0] * stretch;
    const alongY = map[1] * stretch;
    const along = Math.hypot(alongX, alongY);
    const size = Math.abs(fontSize) * sizeUp;
    const seen = layerShown && mode !== invisible && mode !== clipOnly;
    const alpha = mode % 4 === 1 ? pen.strokeAlpha : pen.fillAlpha;
    const colour = mode % 4 === 1 ? pen.stroke : pen.fill;
    const shown = seen && alpha >= faintest;
    const angle = angleOf(alongX * Math.sign(unit || 1), alongY * Math.sign(unit || 1));
    const style = `${pen.font} ${size.toFixed(1)}`;
    let open: Piece | null = null;
    let shift = 0;
    const at = (x: number): [number, number] => {
      const px = this.x + x * stretch;
      const py = this.y + rise;
      return [mapX(map, px, py), mapY(map, px, py)];
    };
    const close = (blankAfter: boolean) => {
      if (open) open.blankAfter = blankAfter;
      open = null;
    };
    for (const glyph of glyphs) {
      if (typeof glyph === 'number') {
        const step = (-glyph * fontSize) / 1000;
        shift += step;
        if (Math.abs(step) * along > blank * size) close(step > 0);
        continue;
      }
      const text = glyph.unicode;
      const advance = glyph.width * unit;
      const step = advance + charSpacing + (glyph.isSpace ? wordSpacing : 0);
      if (!text.trim()) close(true);
      else {
        const [endX, endY] = at(shift + advance);
        if (open) {
          const piece = open as Piece;
          piece.text += text;
          piece.endX = endX;
          piece.endY = endY;
        } else {
          const [x, y] = at(shift);
          open = { text, x, y, endX, endY, size, angle, style, colour, order, shown, blankAfter: false };
          this.pieces.push(open);
        }
        if (shown) {
          const [midX, midY] = at(shift + advance / 2);
          const piece = open as Piece;
          // Half its height above the base line lies the middle of a letter.
          const up = (0.3 * size) / (sizeUp || 1);
          if (!holds(pen.clip, midX + up * map[2], midY + up * map[3])) piece.shown = false;
        }
        if (charSpacing * along > blank * size && step > 0) close(false);
      }
      shift += step;
    }
    this.x += shift * stretch;
  }
}

/** Degrees clockwise on the page as shown; -1 where not along an edge. */
function angleOf(x: number, y: number): number {
  const degrees = ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360;
  for (const right of [0, 90, 180, 270, 360]) if (Math.abs(degrees - right) < 2) return right % 360;
  return -1;
}
