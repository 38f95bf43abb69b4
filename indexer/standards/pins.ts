import { mm, type Um } from '../units/length.ts';
import { defineTable, indexBy, larger, rising, unique } from './table.ts';

/** Standard lengths of parallel, dowel, spring and taper pins, in micrometres. */
export const pinLengths: readonly Um[] = [
  2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80,
  85, 90, 95, 100, 120, 140, 160, 180, 200,
].map(mm);

/** Standard lengths of cotter pins, in micrometres (ISO 1234, from memory). */
export const cotterLengths: readonly Um[] = [
  4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 36, 40, 45, 50, 56, 63, 71, 80, 90, 100,
].map(mm);

/**
 * Pins: parallel (ISO 2338), hardened dowel (ISO 8734), slotted spring (ISO 8752, ISO 13337), split cotter (ISO 1234) and
 * taper (ISO 2339), with their limits of diameter and their standard lengths.
 *
 * Sources: ISO 2338, 8734 and 8752 from an open CAD library and suppliers' pages (one page prints 1.02 for the smallest free
 * diameter of ISO 8752 size 1; 1.2 is right); m6 limits by ISO 286. ISO 2338 pins are also made h8. Rows marked `memory` and
 * all of ISO 1234, 2339 and 13337 from memory, unverified. `diameter` is the nominal; of a spring pin and a cotter pin it is
 * the hole; of a taper pin the small end.
 */
const table = defineTable(
  'pins',
  'ISO 2338, 8734 and 8752 in an open CAD library and suppliers’ pages; memory where marked',
  [
    'standard: text',
    'type: text',
    'diameter: mm',
    'min: mm',
    'max: mm',
    'lengthMin: mm',
    'lengthMax: mm',
    'basis: text',
  ],
  [
    ['ISO 2338', 'dowel', 0.6, 0.602, 0.608, 2, 6, 'library'],
    ['ISO 2338', 'dowel', 0.8, 0.802, 0.808, 2, 8, 'library'],
    ['ISO 2338', 'dowel', 1, 1.002, 1.008, 4, 10, 'library'],
    ['ISO 2338', 'dowel', 1.2, 1.202, 1.208, 4, 12, 'library'],
    ['ISO 2338', 'dowel', 1.5, 1.502, 1.508, 4, 16, 'library'],
    ['ISO 2338', 'dowel', 2, 2.002, 2.008, 6, 20, 'library'],
    ['ISO 2338', 'dowel', 2.5, 2.502, 2.508, 6, 24, 'library'],
    ['ISO 2338', 'dowel', 3, 3.002, 3.008, 8, 30, 'library'],
    ['ISO 2338', 'dowel', 4, 4.004, 4.012, 8, 40, 'library'],
    ['ISO 2338', 'dowel', 5, 5.004, 5.012, 10, 50, 'library'],
    ['ISO 2338', 'dowel', 6, 6.004, 6.012, 12, 60, 'library'],
    ['ISO 2338', 'dowel', 8, 8.006, 8.015, 14, 80, 'library'],
    ['ISO 2338', 'dowel', 10, 10.006, 10.015, 18, 95, 'library'],
    ['ISO 2338', 'dowel', 12, 12.007, 12.018, 22, 140, 'library'],
    ['ISO 8734', 'dowel', 1, 1.002, 1.008, 3, 10, 'library'],
    ['ISO 8734', 'dowel', 1.5, 1.502, 1.508, 4, 16, 'library'],
    ['ISO 8734', 'dowel', 2, 2.002, 2.008, 5, 20, 'library'],
    ['ISO 8734', 'dowel', 2.5, 2.502, 2.508, 6, 24, 'library'],
    ['ISO 8734', 'dowel', 3, 3.002, 3.008, 8, 30, 'library'],
    ['ISO 8734', 'dowel', 4, 4.004, 4.012, 10, 40, 'library'],
    ['ISO 8734', 'dowel', 5, 5.004, 5.012, 12, 50, 'library'],
    ['ISO 8734', 'dowel', 6, 6.004, 6.012, 14, 60, 'library'],
    ['ISO 8734', 'dowel', 8, 8.006, 8.015, 18, 80, 'library'],
    ['ISO 8734', 'dowel', 10, 10.006, 10.015, 22, 100, 'library'],
    ['ISO 8734', 'dowel', 12, 12.007, 12.018, 26, 100, 'library'],
    ['ISO 8752', 'spring', 1, 1.2, 1.3, 4, 20, 'library'],
    ['ISO 8752', 'spring', 1.5, 1.7, 1.8, 4, 20, 'library'],
    ['ISO 8752', 'spring', 2, 2.3, 2.4, 4, 30, 'library'],
    ['ISO 8752', 'spring', 2.5, 2.8, 2.9, 4, 30, 'library'],
    ['ISO 8752', 'spring', 3, 3.3, 3.5, 4, 40, 'library'],
    ['ISO 8752', 'spring', 3.5, 3.8, 4, 4, 40, 'library'],
    ['ISO 8752', 'spring', 4, 4.4, 4.6, 4, 50, 'library'],
    ['ISO 8752', 'spring', 4.5, 4.9, 5.1, 5, 50, 'library'],
    ['ISO 8752', 'spring', 5, 5.4, 5.6, 5, 80, 'library'],
    ['ISO 8752', 'spring', 6, 6.4, 6.7, 10, 100, 'library'],
    ['ISO 8752', 'spring', 8, 8.5, 8.8, 10, 120, 'library'],
    ['ISO 8752', 'spring', 10, 10.5, 10.8, 10, 160, 'library'],
    ['ISO 8752', 'spring', 12, 12.5, 12.8, 10, 180, 'memory'],
    ['ISO 13337', 'spring', 2, 2.3, 2.4, 4, 30, 'memory'],
    ['ISO 13337', 'spring', 2.5, 2.8, 2.9, 4, 30, 'memory'],
    ['ISO 13337', 'spring', 3, 3.3, 3.5, 4, 40, 'memory'],
    ['ISO 13337', 'spring', 3.5, 3.8, 4, 4, 40, 'memory'],
    ['ISO 13337', 'spring', 4, 4.4, 4.6, 4, 50, 'memory'],
    ['ISO 13337', 'spring', 5, 5.4, 5.6, 5, 80, 'memory'],
    ['ISO 13337', 'spring', 6, 6.4, 6.7, 10, 100, 'memory'],
    ['ISO 13337', 'spring', 8, 8.5, 8.8, 10, 120, 'memory'],
    ['ISO 13337', 'spring', 10, 10.5, 10.8, 10, 160, 'memory'],
    ['ISO 1234', 'cotter', 0.6, 0.4, 0.5, 4, 12, 'memory'],
    ['ISO 1234', 'cotter', 0.8, 0.6, 0.7, 5, 16, 'memory'],
    ['ISO 1234', 'cotter', 1, 0.8, 0.9, 6, 20, 'memory'],
    ['ISO 1234', 'cotter', 1.2, 0.9, 1, 8, 25, 'memory'],
    ['ISO 1234', 'cotter', 1.6, 1.3, 1.4, 8, 32, 'memory'],
    ['ISO 1234', 'cotter', 2, 1.7, 1.8, 10, 40, 'memory'],
    ['ISO 1234', 'cotter', 2.5, 2.1, 2.3, 12, 50, 'memory'],
    ['ISO 1234', 'cotter', 3.2, 2.7, 2.9, 14, 63, 'memory'],
    ['ISO 1234', 'cotter', 4, 3.5, 3.7, 18, 80, 'memory'],
    ['ISO 1234', 'cotter', 5, 4.4, 4.6, 22, 100, 'memory'],
    ['ISO 2339', 'taper', 1, 0.96, 1, 6, 16, 'memory'],
    ['ISO 2339', 'taper', 1.2, 1.16, 1.2, 6, 20, 'memory'],
    ['ISO 2339', 'taper', 1.5, 1.46, 1.5, 8, 24, 'memory'],
    ['ISO 2339', 'taper', 2, 1.96, 2, 10, 35, 'memory'],
    ['ISO 2339', 'taper', 2.5, 2.46, 2.5, 10, 35, 'memory'],
    ['ISO 2339', 'taper', 3, 2.96, 3, 12, 45, 'memory'],
    ['ISO 2339', 'taper', 4, 3.952, 4, 14, 55, 'memory'],
    ['ISO 2339', 'taper', 5, 4.952, 5, 18, 60, 'memory'],
    ['ISO 2339', 'taper', 6, 5.952, 6, 22, 90, 'memory'],
    ['ISO 2339', 'taper', 8, 7.942, 8, 22, 120, 'memory'],
    ['ISO 2339', 'taper', 10, 9.942, 10, 26, 160, 'memory'],
  ],
  unique('standard', 'diameter'),
  rising(['diameter'], ['standard']),
  larger('max', 'min'),
  larger('lengthMax', 'lengthMin'),
  row =>
    [row.lengthMin, row.lengthMax].every(length => lengthsMade(row.type).includes(length))
      ? null
      : 'no standard length',
  row => (limitsGoWith(row) ? null : 'limits do not go with this type and diameter'),
);

/** Standard lengths of a type of pin. */
function lengthsMade(type: string): readonly Um[] {
  return type === 'cotter' ? cotterLengths : pinLengths;
}

/** A dowel is over its nominal by m6, a spring pin over its hole when free, a cotter under its hole, a taper pin h10. */
function limitsGoWith({
  type,
  diameter,
  min,
  max,
}: {
  type: string;
  diameter: Um;
  min: Um;
  max: Um;
}): boolean {
  if (type === 'dowel') return min - diameter >= 2 && max - diameter <= 18;
  if (type === 'spring') return min - diameter >= 200 && max - diameter <= 800;
  if (type === 'cotter') return max < diameter && diameter - min <= 600;
  return max === diameter && diameter - min <= 58;
}

/** A pin's diameter and lengths, in micrometres. */
export interface Pin {
  readonly standard: string;
  readonly type: 'dowel' | 'spring' | 'cotter' | 'taper';
  readonly diameter: Um;
  /** Least and greatest diameter as made: of a spring pin free, of a cotter pin folded, of a taper pin at its small end. */
  readonly min: Um;
  readonly max: Um;
  readonly lengthMin: Um;
  readonly lengthMax: Um;
  readonly basis: string;
}

/** All pins, by standard and diameter. */
export const pins: readonly Pin[] = table.rows.map(row => ({ ...row, type: row.type as Pin['type'] }));

/** Older numbers of the same pins. ISO 2338 is DIN 7 with m6; DIN 6325 is a hardened m6 dowel. */
const sameAs: Readonly<Record<string, string>> = {
  'DIN 7': 'ISO 2338',
  'DIN 6325': 'ISO 8734',
  'DIN 1481': 'ISO 8752',
  'DIN 7346': 'ISO 13337',
  'DIN 94': 'ISO 1234',
  'DIN 1': 'ISO 2339',
};

const bySize = indexBy(pins, pin => `${pin.standard} ${pin.diameter}`);

/** The pin of a standard, DIN or ISO, and nominal diameter in micrometres. */
export const pinOf = (standard: string, diameter: Um): Pin | undefined =>
  bySize.get(`${sameAs[standard] ?? standard} ${diameter}`);

/** The lengths a pin is made in, in micrometres, shortest first. */
export const lengthsOf = (pin: Pin): Um[] =>
  lengthsMade(pin.type).filter(length => pin.lengthMin <= length && length <= pin.lengthMax);
