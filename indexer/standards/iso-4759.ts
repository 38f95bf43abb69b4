import { inch, mm, type Um } from '../units/length.ts';
import { toleranceOf } from './iso-286.ts';
import type { Limits } from './iso-965.ts';

/**
 * How much a screw's length may lie off its nominal, and the lengths screws are made in.
 *
 * Sources: ISO 4759-1, product grade A js15, B js17, as the length limits of ISO 7045 and ISO 4762 tables show; grade C, tapping
 * screws and ISO 888 lengths from memory; inch screws from a supplier's page of commercial tolerances, number 0 to 12.
 */

/** Product grade of a metric screw: machine screws up to M24 are A. */
export type ProductGrade = 'A' | 'B' | 'C';

const halfOf: Readonly<Record<ProductGrade, (length: Um) => number | null>> = {
  A: length => half(toleranceOf(15, length)),
  B: length => half(toleranceOf(17, length)),
  C: length => toleranceOf(17, length),
};

const half = (tolerance: number | null) => (tolerance === null ? null : tolerance / 2);

/** Limits of a metric machine screw's length, in micrometres. Null above 120 mm, where the tables end. */
export function lengthLimits(length: Um, grade: ProductGrade = 'A'): Limits | null {
  const room = halfOf[grade](length);
  return room === null ? null : { min: length - room, max: length + room };
}

/** Limits of a tapping screw's length, in micrometres: 0.8 mm either way up to 25 mm, 1.3 above (ISO 4759-1, from memory). */
export function tappingLengthLimits(length: Um): Limits {
  const room = length <= mm(25) ? mm(0.8) : mm(1.3);
  return { min: length - room, max: length + room };
}

/** Limits of an inch machine screw's length, numbers 0 to 12, in micrometres; commercial. Null above an inch. */
export function inchLengthLimits(length: Um): Limits | null {
  if (length > inch(1)) return null;
  return { min: length - inch(length <= inch(0.5) ? 0.02 : 0.03), max: length };
}

/** Lengths that metric screws are made in, in micrometres, shortest first (ISO 888, 14 and 18 not preferred). */
export const screwLengths: readonly Um[] = [
  2, 2.5, 3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110,
  120,
].map(mm);
