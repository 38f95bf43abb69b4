import { type Box, identity, type Matrix, mapBox, meet } from './matrix.ts';

/** The state of the pen (ISO 32000-1, 8.4) as far as it decides what is seen. */
export class Painting {
  map: Matrix;
  clip: Box;
  fill: number | null = 0;
  stroke: number | null = 0;
  fillAlpha = 1;
  strokeAlpha = 1;
  blends = false;
  masked = false;
  lineWidth = 1;
  font = '';
  fontSize = 1;
  charSpacing = 0;
  wordSpacing = 0;
  stretch = 1;
  leading = 0;
  rise = 0;
  mode = 0;

  constructor(map: Matrix, clip: Box) {
    this.map = map;
    this.clip = clip;
  }

  copy(): Painting {
    const same = new Painting(this.map, this.clip);
    same.fill = this.fill;
    same.stroke = this.stroke;
    same.fillAlpha = this.fillAlpha;
    same.strokeAlpha = this.strokeAlpha;
    same.blends = this.blends;
    same.masked = this.masked;
    same.lineWidth = this.lineWidth;
    same.font = this.font;
    same.fontSize = this.fontSize;
    same.charSpacing = this.charSpacing;
    same.wordSpacing = this.wordSpacing;
    same.stretch = this.stretch;
    same.leading = this.leading;
    same.rise = this.rise;
    same.mode = this.mode;
    return same;
  }

  clipTo(left: number, top: number, right: number, bottom: number, map: Matrix = identity): void {
    const box = mapBox(map === identity ? this.map : map, left, top, right, bottom);
    this.clip = meet(this.clip, box);
  }

  /** Takes in a graphics-state dictionary. */
  set(entries: readonly [string, unknown][]): void {
    for (const [key, value] of entries) {
      if (key === 'ca') this.fillAlpha = value as number;
      else if (key === 'CA') this.strokeAlpha = value as number;
      else if (key === 'LW') this.lineWidth = value as number;
      else if (key === 'SMask') this.masked = Boolean(value);
      else if (key === 'BM') this.blends = !/^(?:normal|source-over|compatible)$/i.test(String(value));
      else if (key === 'Font') [this.font, this.fontSize] = value as [string, number];
    }
  }
}

/** A colour as pdf.js gives it, `#rrggbb`, as a number; null for a pattern. */
export const colourOf = (text: unknown): number | null =>
  typeof text === 'string' && /^#[\da-f]{6}$/i.test(text) ? Number.parseInt(text.slice(1), 16) : null;

/** How far two colours are apart, 0 to 255 in the channel that differs most. */
export const apart = (a: number, b: number): number =>
  Math.max(
    Math.abs((a >> 16) - (b >> 16)),
    Math.abs(((a >> 8) & 255) - ((b >> 8) & 255)),
    Math.abs((a & 255) - (b & 255)),
  );

export const white = 0xffffff;
/** Colours nearer than this look the same on paper. */
export const indistinct = 26;
/** What is more transparent than this is not seen. */
export const faintest = 0.08;
