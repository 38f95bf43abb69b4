/**
 * Lengths. Inside, a length is a whole number of micrometres; at the edges it is millimetres with up to three
 * decimals. This is the one door for inches.
 */

/** A length in whole micrometres. */
export type Um = number;

export type LengthUnit = 'mm' | 'in';

/** A length as it was printed: its micrometres, and how many decimals stood behind it in its own unit. */
export interface StatedLength {
  um: Um;
  /** Printed decimals; null for a fraction such as 3/16, which is exact. */
  decimals: number | null;
  unit: LengthUnit;
}

const umPerInch = 25_400;
const umPerMillimetre = 1_000;

/** Inches to micrometres. 1 in is 25.4 mm exactly (ISO 31-1). */
export const inch = (inches: number): Um => Math.round(inches * umPerInch);

/** Millimetres to micrometres. */
export const mm = (millimetres: number): Um => Math.round(millimetres * umPerMillimetre);

/** Micrometres to millimetres, at most three decimals. */
export const toMm = (um: Um): number => um / umPerMillimetre;

/** Millimetres as text: at most three decimals, no trailing zeros. */
export const writeMillimetres = (mm: number): string =>
  String(Math.round(mm * umPerMillimetre) / umPerMillimetre);

/** Two lengths this near, in micrometres, are one: what rounding to the micrometre and unit conversion cost. */
const sameWithin: Um = 3;

/**
 * Half the interval of the last printed digit, in micrometres. One decimal, or none, meets only itself:
 * 3.2 is not 3.175.
 */
function halfDigit(stated: StatedLength): number {
  if (stated.decimals === null || stated.decimals < 2) return 0;
  const perUnit = stated.unit === 'in' ? umPerInch : umPerMillimetre;
  return (perUnit * 10 ** -stated.decimals) / 2;
}

/**
 * Whether a stated length means a published one: the published size rounds to the printed number at its two or
 * more decimals, or lies within 3 µm. So 3/16", 4.7625, 4.762 and 4.76 are one bore, and 3.18 is 1/8".
 */
export function meets(stated: StatedLength, published: Um): boolean {
  return Math.abs(stated.um - published) <= Math.max(sameWithin, halfDigit(stated) + 0.5);
}

/** The published length nearest to a stated one, and whether a second one qualifies too. Null when none does. */
export function meetNearest(
  stated: StatedLength,
  published: Iterable<Um>,
): { um: Um; doubt: boolean } | null {
  let best: Um | null = null;
  let second = false;
  for (const um of published) {
    if (um === best || !meets(stated, um)) continue;
    if (best !== null) second = true;
    if (best === null || Math.abs(um - stated.um) < Math.abs(best - stated.um)) best = um;
  }
  return best === null ? null : { um: best, doubt: second && Math.abs(best - stated.um) > 0 };
}
