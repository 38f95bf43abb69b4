import { mm, type Um } from '../units/length.ts';
import { defineTable, indexBy, larger, rising, unique } from './table.ts';

/** Standard lengths of parallel, dowel, spring and taper pins, in micrometres. */
const pinLengths: readonly Um[] = [
  2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80,
  85, 90, 95, 100, 120, 140, 160, 180, 200,
].map(mm);

/** Standard lengths of cotter pins, in micrometres (ISO 1234). */
const cotterLengths: readonly Um[] = [
  4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 32, 36, 40, 45, 50, 56, 63, 71, 80, 90, 100, 112, 125, 140,
  160, 180, 200, 224, 250, 280,
].map(mm);

/**
 * Pins: parallel (ISO 2338), hardened dowel (ISO 8734), slotted spring, heavy (ISO 8752) and light (ISO 13337), split cotter
 * (ISO 1234), taper (ISO 2339), clevis without and with a head (ISO 2340, 2341), with their limits of diameter and standard lengths.
 *
 * Sources: diameters and lengths of rows marked `library` from an open CAD library, ISO 2338, 8734 and 8752 from suppliers' pages
 * too (one page prints 1.02 for the smallest free diameter of ISO 8752 size 1; 1.2 is right). Limits are m6, h10 and h11 of ISO 286;
 * the library gives the middle of the limits of spring and cotter pins, the limits themselves are from memory and meet at it.
 * ISO 8752 from 12 up from memory: a light pin of the same size, in the library, has the same free diameter. ISO 2338 pins are also
 * made h8. `diameter` is the nominal; of a spring pin and a cotter pin it is the hole; of a taper pin the small end.
 */
const table = defineTable(
  'pins',
  'an open CAD library and suppliers’ pages; memory where marked',
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
    ['ISO 2338', 'dowel', 16, 16.007, 16.018, 26, 180, 'library'],
    ['ISO 2338', 'dowel', 20, 20.008, 20.021, 35, 200, 'library'],
    ['ISO 2338', 'dowel', 25, 25.008, 25.021, 50, 200, 'library'],
    ['ISO 2338', 'dowel', 30, 30.008, 30.021, 60, 200, 'library'],
    ['ISO 2338', 'dowel', 40, 40.009, 40.025, 80, 200, 'library'],
    ['ISO 2338', 'dowel', 50, 50.009, 50.025, 95, 200, 'library'],
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
    ['ISO 8734', 'dowel', 16, 16.007, 16.018, 40, 100, 'library'],
    ['ISO 8734', 'dowel', 20, 20.008, 20.021, 50, 100, 'library'],
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
    ['ISO 8752', 'spring', 13, 13.5, 13.8, 10, 180, 'memory'],
    ['ISO 8752', 'spring', 14, 14.5, 14.8, 10, 200, 'memory'],
    ['ISO 8752', 'spring', 16, 16.5, 16.8, 10, 200, 'memory'],
    ['ISO 8752', 'spring', 18, 18.5, 18.9, 10, 200, 'memory'],
    ['ISO 8752', 'spring', 20, 20.5, 20.9, 10, 200, 'memory'],
    ['ISO 8752', 'spring', 21, 21.5, 21.9, 14, 200, 'memory'],
    ['ISO 8752', 'spring', 25, 25.5, 25.9, 14, 200, 'memory'],
    ['ISO 8752', 'spring', 28, 28.5, 28.9, 14, 200, 'memory'],
    ['ISO 8752', 'spring', 30, 30.5, 30.9, 14, 200, 'memory'],
    ['ISO 8752', 'spring', 32, 32.5, 32.9, 20, 200, 'memory'],
    ['ISO 8752', 'spring', 35, 35.5, 35.9, 20, 200, 'memory'],
    ['ISO 8752', 'spring', 38, 38.5, 38.9, 20, 200, 'memory'],
    ['ISO 8752', 'spring', 40, 40.5, 40.9, 20, 200, 'memory'],
    ['ISO 8752', 'spring', 45, 45.5, 45.9, 20, 200, 'memory'],
    ['ISO 8752', 'spring', 50, 50.5, 50.9, 20, 200, 'memory'],
    ['ISO 13337', 'spring', 2, 2.3, 2.4, 4, 30, 'library'],
    ['ISO 13337', 'spring', 2.5, 2.8, 2.9, 4, 30, 'library'],
    ['ISO 13337', 'spring', 3, 3.3, 3.5, 4, 40, 'library'],
    ['ISO 13337', 'spring', 3.5, 3.8, 4, 4, 40, 'library'],
    ['ISO 13337', 'spring', 4, 4.4, 4.6, 4, 50, 'library'],
    ['ISO 13337', 'spring', 4.5, 4.9, 5.1, 6, 50, 'library'],
    ['ISO 13337', 'spring', 5, 5.4, 5.6, 6, 80, 'library'],
    ['ISO 13337', 'spring', 6, 6.4, 6.7, 10, 100, 'library'],
    ['ISO 13337', 'spring', 8, 8.5, 8.8, 10, 120, 'library'],
    ['ISO 13337', 'spring', 10, 10.5, 10.8, 10, 160, 'library'],
    ['ISO 13337', 'spring', 12, 12.5, 12.8, 10, 180, 'library'],
    ['ISO 13337', 'spring', 13, 13.5, 13.8, 10, 180, 'library'],
    ['ISO 13337', 'spring', 14, 14.5, 14.8, 10, 200, 'library'],
    ['ISO 13337', 'spring', 16, 16.5, 16.8, 10, 200, 'library'],
    ['ISO 13337', 'spring', 18, 18.5, 18.9, 10, 200, 'library'],
    ['ISO 13337', 'spring', 20, 20.5, 20.9, 10, 200, 'library'],
    ['ISO 13337', 'spring', 21, 21.5, 21.9, 14, 200, 'library'],
    ['ISO 13337', 'spring', 25, 25.5, 25.9, 14, 200, 'library'],
    ['ISO 13337', 'spring', 28, 28.5, 28.9, 14, 200, 'library'],
    ['ISO 13337', 'spring', 30, 30.5, 30.9, 14, 200, 'library'],
    ['ISO 13337', 'spring', 35, 35.5, 35.9, 20, 200, 'library'],
    ['ISO 13337', 'spring', 40, 40.5, 40.9, 20, 200, 'library'],
    ['ISO 13337', 'spring', 45, 45.5, 45.9, 20, 200, 'library'],
    ['ISO 13337', 'spring', 50, 50.5, 50.9, 20, 200, 'library'],
    ['ISO 1234', 'cotter', 0.6, 0.4, 0.5, 4, 12, 'library'],
    ['ISO 1234', 'cotter', 0.8, 0.6, 0.7, 5, 16, 'library'],
    ['ISO 1234', 'cotter', 1, 0.8, 0.9, 6, 20, 'library'],
    ['ISO 1234', 'cotter', 1.2, 0.9, 1, 8, 25, 'library'],
    ['ISO 1234', 'cotter', 1.6, 1.3, 1.4, 8, 32, 'library'],
    ['ISO 1234', 'cotter', 2, 1.7, 1.8, 10, 40, 'library'],
    ['ISO 1234', 'cotter', 2.5, 2.1, 2.3, 12, 50, 'library'],
    ['ISO 1234', 'cotter', 3.2, 2.7, 2.9, 14, 63, 'library'],
    ['ISO 1234', 'cotter', 4, 3.5, 3.7, 18, 80, 'library'],
    ['ISO 1234', 'cotter', 5, 4.4, 4.6, 22, 100, 'library'],
    ['ISO 1234', 'cotter', 6.3, 5.7, 5.9, 32, 125, 'library'],
    ['ISO 1234', 'cotter', 8, 7.3, 7.5, 40, 160, 'library'],
    ['ISO 1234', 'cotter', 10, 9.3, 9.5, 45, 200, 'library'],
    ['ISO 1234', 'cotter', 13, 12.1, 12.4, 71, 250, 'library'],
    ['ISO 1234', 'cotter', 16, 15.1, 15.4, 112, 280, 'library'],
    ['ISO 1234', 'cotter', 20, 19, 19.3, 160, 280, 'library'],
    ['ISO 2339', 'taper', 0.6, 0.56, 0.6, 4, 8, 'library'],
    ['ISO 2339', 'taper', 0.8, 0.76, 0.8, 5, 12, 'library'],
    ['ISO 2339', 'taper', 1, 0.96, 1, 6, 16, 'library'],
    ['ISO 2339', 'taper', 1.2, 1.16, 1.2, 6, 20, 'library'],
    ['ISO 2339', 'taper', 1.5, 1.46, 1.5, 8, 24, 'library'],
    ['ISO 2339', 'taper', 2, 1.96, 2, 10, 35, 'library'],
    ['ISO 2339', 'taper', 2.5, 2.46, 2.5, 10, 35, 'library'],
    ['ISO 2339', 'taper', 3, 2.96, 3, 12, 45, 'library'],
    ['ISO 2339', 'taper', 4, 3.952, 4, 14, 55, 'library'],
    ['ISO 2339', 'taper', 5, 4.952, 5, 18, 60, 'library'],
    ['ISO 2339', 'taper', 6, 5.952, 6, 22, 90, 'library'],
    ['ISO 2339', 'taper', 8, 7.942, 8, 22, 120, 'library'],
    ['ISO 2339', 'taper', 10, 9.942, 10, 26, 160, 'library'],
    ['ISO 2339', 'taper', 12, 11.93, 12, 32, 180, 'library'],
    ['ISO 2339', 'taper', 16, 15.93, 16, 40, 200, 'library'],
    ['ISO 2339', 'taper', 20, 19.916, 20, 45, 200, 'library'],
    ['ISO 2339', 'taper', 25, 24.916, 25, 50, 200, 'library'],
    ['ISO 2339', 'taper', 30, 29.916, 30, 55, 200, 'library'],
    ['ISO 2339', 'taper', 40, 39.9, 40, 60, 200, 'library'],
    ['ISO 2339', 'taper', 50, 49.9, 50, 65, 200, 'library'],
    ['ISO 2340', 'clevis', 3, 2.94, 3, 6, 30, 'library'],
    ['ISO 2340', 'clevis', 4, 3.925, 4, 8, 40, 'library'],
    ['ISO 2340', 'clevis', 5, 4.925, 5, 10, 50, 'library'],
    ['ISO 2340', 'clevis', 6, 5.925, 6, 12, 60, 'library'],
    ['ISO 2340', 'clevis', 8, 7.91, 8, 16, 80, 'library'],
    ['ISO 2340', 'clevis', 10, 9.91, 10, 20, 100, 'library'],
    ['ISO 2340', 'clevis', 12, 11.89, 12, 24, 120, 'library'],
    ['ISO 2340', 'clevis', 14, 13.89, 14, 28, 140, 'library'],
    ['ISO 2340', 'clevis', 16, 15.89, 16, 32, 160, 'library'],
    ['ISO 2340', 'clevis', 18, 17.89, 18, 35, 180, 'library'],
    ['ISO 2340', 'clevis', 20, 19.87, 20, 40, 200, 'library'],
    ['ISO 2340', 'clevis', 22, 21.87, 22, 45, 200, 'library'],
    ['ISO 2340', 'clevis', 24, 23.87, 24, 50, 200, 'library'],
    ['ISO 2340', 'clevis', 27, 26.87, 27, 55, 200, 'library'],
    ['ISO 2340', 'clevis', 30, 29.87, 30, 60, 200, 'library'],
    ['ISO 2340', 'clevis', 33, 32.84, 33, 65, 200, 'library'],
    ['ISO 2340', 'clevis', 36, 35.84, 36, 70, 200, 'library'],
    ['ISO 2340', 'clevis', 40, 39.84, 40, 80, 200, 'library'],
    ['ISO 2340', 'clevis', 45, 44.84, 45, 90, 200, 'library'],
    ['ISO 2340', 'clevis', 50, 49.84, 50, 100, 200, 'library'],
    ['ISO 2341', 'clevis', 3, 2.94, 3, 6, 30, 'library'],
    ['ISO 2341', 'clevis', 4, 3.925, 4, 8, 40, 'library'],
    ['ISO 2341', 'clevis', 5, 4.925, 5, 10, 50, 'library'],
    ['ISO 2341', 'clevis', 6, 5.925, 6, 12, 60, 'library'],
    ['ISO 2341', 'clevis', 8, 7.91, 8, 16, 80, 'library'],
    ['ISO 2341', 'clevis', 10, 9.91, 10, 20, 100, 'library'],
    ['ISO 2341', 'clevis', 12, 11.89, 12, 24, 120, 'library'],
    ['ISO 2341', 'clevis', 14, 13.89, 14, 28, 140, 'library'],
    ['ISO 2341', 'clevis', 16, 15.89, 16, 32, 160, 'library'],
    ['ISO 2341', 'clevis', 18, 17.89, 18, 35, 180, 'library'],
    ['ISO 2341', 'clevis', 20, 19.87, 20, 40, 200, 'library'],
    ['ISO 2341', 'clevis', 22, 21.87, 22, 45, 200, 'library'],
    ['ISO 2341', 'clevis', 24, 23.87, 24, 50, 200, 'library'],
    ['ISO 2341', 'clevis', 27, 26.87, 27, 55, 200, 'library'],
    ['ISO 2341', 'clevis', 30, 29.87, 30, 60, 200, 'library'],
    ['ISO 2341', 'clevis', 33, 32.84, 33, 65, 200, 'library'],
    ['ISO 2341', 'clevis', 36, 35.84, 36, 70, 200, 'library'],
    ['ISO 2341', 'clevis', 40, 39.84, 40, 80, 200, 'library'],
    ['ISO 2341', 'clevis', 45, 44.84, 45, 90, 200, 'library'],
    ['ISO 2341', 'clevis', 50, 49.84, 50, 100, 200, 'library'],
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

/** A dowel is over its nominal by m6, a spring pin over its hole when free, a cotter under its hole; taper pins are h10, clevis pins h11. */
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
  if (type === 'dowel') return min - diameter >= 2 && max - diameter <= 25;
  if (type === 'spring') return min - diameter >= 200 && max - diameter <= 900;
  if (type === 'cotter') return max < diameter && diameter - min <= 1000;
  return max === diameter && diameter - min <= 160;
}

/** A pin's diameter and lengths, in micrometres. */
export interface Pin {
  readonly standard: string;
  readonly type: 'dowel' | 'spring' | 'cotter' | 'taper' | 'clevis';
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
  'DIN 1443': 'ISO 2340',
  'DIN 1444': 'ISO 2341',
};

const bySize = indexBy(pins, pin => `${pin.standard} ${pin.diameter}`);

/** The pin of a standard, DIN or ISO, and nominal diameter in micrometres. */
export const pinOf = (standard: string, diameter: Um): Pin | undefined =>
  bySize.get(`${sameAs[standard] ?? standard} ${diameter}`);

/** The lengths a pin is made in, in micrometres, shortest first. */
export const lengthsOf = (pin: Pin): Um[] =>
  lengthsMade(pin.type).filter(length => pin.lengthMin <= length && length <= pin.lengthMax);
