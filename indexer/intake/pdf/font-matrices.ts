import type { Matrix } from './matrix.ts';

/** Where pdf.js 5.6 packs a font's flags and matrix (`obj_bin_transform_utils.js`): two bits a flag, then numbers. */
const typeThreeByte = 1;
const typeThreeBit = 0b1000;
const matrixAt = 36;

const usual: Matrix = [0.001, 0, 0, 0.001, 0, 0];

/** The glyph space of each font: a thousandth of its size, unless the font is drawn by the document (Type 3). */
export class FontMatrices {
  private readonly known = new Map<string, Matrix>();

  /** Takes in what pdf.js sends of a font: its name, the word `Font`, its data. */
  learn(message: unknown): void {
    const [name, kind, font] = message as [string, string, { buffer?: ArrayBuffer } | null];
    if (kind !== 'Font' || !font?.buffer) return;
    const view = new DataView(font.buffer);
    if ((view.getUint8(typeThreeByte) & typeThreeBit) === 0 || view.getUint8(matrixAt) === 0) return;
    const numbers = Array.from({ length: 6 }, (_, nth) => view.getFloat64(matrixAt + 1 + nth * 8, true));
    if (numbers.every(Number.isFinite)) this.known.set(name, numbers as unknown as Matrix);
  }

  of(name: string): Matrix {
    return this.known.get(name) ?? usual;
  }
}
