import type { Dims } from '../reading/reading.ts';
import { writeMillimetres } from '../units/length.ts';

/**
 * Sizes that are lengths alone, `5x11x4`: written and parsed by the order of their dimensions. Where both an inside and an
 * outside diameter are among them, the inside must be the smaller, or there is no such size.
 */
export function plainSize(...keys: string[]) {
  const [inside, outside] = [keys.findIndex(k => k === 'id' || k === 'bore'), keys.indexOf('od')];
  const fits = (values: readonly number[]) => inside < 0 || outside < 0 || values[inside]! < values[outside]!;
  return {
    write(dims: Dims, implied: Dims = {}): string | null {
      const values: number[] = [];
      for (const key of keys) {
        const value = dims[key] ?? implied[key];
        if (typeof value !== 'number' || !(value > 0) || !Number.isFinite(value)) return null;
        values.push(value);
      }
      return fits(values) ? values.map(writeMillimetres).join('x') : null;
    },
    parse(text: string): { dims: Dims; implied: Dims } | null {
      const parts = text.split('x');
      if (parts.length !== keys.length || !parts.every(p => /^\d+(\.\d{1,3})?$/.test(p) && Number(p) > 0))
        return null;
      if (!fits(parts.map(Number))) return null;
      return { dims: Object.fromEntries(keys.map((key, i) => [key, Number(parts[i])])), implied: {} };
    },
  };
}
