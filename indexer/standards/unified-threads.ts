import { inch, type Um } from '../units/length.ts';
import type { Limits } from './iso-965.ts';
import { defineTable, groupBy, indexBy, rising } from './table.ts';

/**
 * Unified inch threads, numbers 0 to 12 and 1/4 to 1 inch, coarse, fine and extra fine (ASME B1.1).
 *
 * Diameter of a number: 0.060 + 0.013 x number inch. Limits by the formulas of ASME B1.1, from memory; they equal the
 * published class 2A rows found for 0-80 to 3-48 but one, which differs by 0.0001 in, and class 2B pitch tolerances, which
 * are 1.3 times those of 2A. UNEF sizes, and those above 1/2 inch, from memory, beside an open CAD library's list of UNC and UNF.
 * The size `1 in` is not the number 1; its threads are called 1-8, 1-12 and 1-20, which no number 1 has.
 */
const table = defineTable(
  'ASME B1.1 unified threads',
  'ASME B1.1; checked against published 2A rows; UNEF and above 1/2 inch from memory',
  ['size: text', 'major: inch', 'tpi: number', 'series: text'],
  [
    ['0', 0.06, 80, 'UNF'],
    ['1', 0.073, 64, 'UNC'],
    ['1', 0.073, 72, 'UNF'],
    ['2', 0.086, 56, 'UNC'],
    ['2', 0.086, 64, 'UNF'],
    ['3', 0.099, 48, 'UNC'],
    ['3', 0.099, 56, 'UNF'],
    ['4', 0.112, 40, 'UNC'],
    ['4', 0.112, 48, 'UNF'],
    ['5', 0.125, 40, 'UNC'],
    ['5', 0.125, 44, 'UNF'],
    ['6', 0.138, 32, 'UNC'],
    ['6', 0.138, 40, 'UNF'],
    ['8', 0.164, 32, 'UNC'],
    ['8', 0.164, 36, 'UNF'],
    ['10', 0.19, 24, 'UNC'],
    ['10', 0.19, 32, 'UNF'],
    ['12', 0.216, 24, 'UNC'],
    ['12', 0.216, 28, 'UNF'],
    ['12', 0.216, 32, 'UNEF'],
    ['1/4', 0.25, 20, 'UNC'],
    ['1/4', 0.25, 28, 'UNF'],
    ['1/4', 0.25, 32, 'UNEF'],
    ['5/16', 0.3125, 18, 'UNC'],
    ['5/16', 0.3125, 24, 'UNF'],
    ['5/16', 0.3125, 32, 'UNEF'],
    ['3/8', 0.375, 16, 'UNC'],
    ['3/8', 0.375, 24, 'UNF'],
    ['3/8', 0.375, 32, 'UNEF'],
    ['7/16', 0.4375, 14, 'UNC'],
    ['7/16', 0.4375, 20, 'UNF'],
    ['7/16', 0.4375, 28, 'UNEF'],
    ['1/2', 0.5, 13, 'UNC'],
    ['1/2', 0.5, 20, 'UNF'],
    ['1/2', 0.5, 28, 'UNEF'],
    ['9/16', 0.5625, 12, 'UNC'],
    ['9/16', 0.5625, 18, 'UNF'],
    ['9/16', 0.5625, 24, 'UNEF'],
    ['5/8', 0.625, 11, 'UNC'],
    ['5/8', 0.625, 18, 'UNF'],
    ['5/8', 0.625, 24, 'UNEF'],
    ['11/16', 0.6875, 24, 'UNEF'],
    ['3/4', 0.75, 10, 'UNC'],
    ['3/4', 0.75, 16, 'UNF'],
    ['3/4', 0.75, 20, 'UNEF'],
    ['13/16', 0.8125, 20, 'UNEF'],
    ['7/8', 0.875, 9, 'UNC'],
    ['7/8', 0.875, 14, 'UNF'],
    ['7/8', 0.875, 20, 'UNEF'],
    ['15/16', 0.9375, 20, 'UNEF'],
    ['1 in', 1, 8, 'UNC'],
    ['1 in', 1, 12, 'UNF'],
    ['1 in', 1, 20, 'UNEF'],
  ],
  rising(['major', 'tpi']),
  row => (Math.abs(inch(inchesOf(row.size)) - row.major) > 0 ? 'the size does not mean this diameter' : null),
);

/** Inches that a size means: a number 0 to 12, a fraction, or one inch. */
function inchesOf(size: string): number {
  if (size === '1 in') return 1;
  const [top, bottom] = size.split('/').map(Number) as [number, number?];
  return bottom === undefined ? 0.06 + 0.013 * top : top / bottom;
}

/** A unified thread; lengths in micrometres. */
export interface UnifiedThread {
  /** Size and threads an inch: `6-32`, `1/4-20`. */
  readonly designation: string;
  /** `6`, `1/4` or `1 in`. */
  readonly size: string;
  readonly series: 'UNC' | 'UNF' | 'UNEF';
  readonly nominal: Um;
  readonly pitch: Um;
  /** Threads an inch. */
  readonly tpi: number;
}

/** All unified threads, smallest first, coarse before fine. */
export const unifiedThreads: readonly UnifiedThread[] = table.rows.map(({ size, major, tpi, series }) => ({
  designation: `${size.replace(' in', '')}-${tpi}`,
  size,
  series: series as UnifiedThread['series'],
  nominal: major,
  pitch: inch(1 / tpi),
  tpi,
}));

const byName = indexBy(unifiedThreads, thread => thread.designation);
const bySize = groupBy(unifiedThreads, thread => thread.size);

/** The thread of a designation without # or series: `6-32`, `1/4-20`. */
export const unifiedThreadNamed = (designation: string): UnifiedThread | undefined => byName.get(designation);

/** The threads of a size, `6` or `1/4`, coarsest first. */
export const unifiedThreadsOf = (size: string): readonly UnifiedThread[] => bySize.get(size) ?? [];

/** Limits of a unified thread, in micrometres: class 2A outside, class 2B inside. */
export interface UnifiedLimits {
  readonly external: { readonly major: Limits; readonly pitchDiameter: Limits };
  readonly internal: { readonly minor: Limits; readonly pitchDiameter: Limits };
}

/**
 * ASME B1.1 rounds limits, allowances and tolerances to four decimals of an inch, a half to the even side (ASME B1.30): the
 * allowance of 4-40 is 0.0008 for 0.00075, that of 5/8-11 is 0.0016 for 0.00165.
 */
function tenThousandth(inches: number): number {
  const parts = inches * 1e4;
  const whole = Math.floor(parts);
  const half = Math.abs(parts - whole - 0.5) < 1e-6;
  return (half ? whole + (whole % 2) : Math.round(parts)) / 1e4;
}
const span = (min: number, max: number): Limits => ({
  min: inch(tenThousandth(min)),
  max: inch(tenThousandth(max)),
});

/** Tolerance of the internal minor diameter, classes 1B and 2B, in inches: ASME B1.1, for sizes under and from 1/4 inch. */
function minorTolerance(diameter: number, pitch: number): number {
  const plain = 0.25 * pitch - 0.4 * pitch ** 2;
  if (diameter >= 0.25) return plain;
  return Math.min(
    0.394 * pitch,
    Math.max(plain, 0.05 * pitch ** (2 / 3) + (0.03 * pitch) / diameter - 0.002),
  );
}

/**
 * Limits of a unified thread by the formulas of ASME B1.1, rounded to 0.0001 in and turned into micrometres.
 * Length of engagement is one diameter for UNC and UNF, nine pitches for UNEF.
 */
export function unifiedLimits(thread: UnifiedThread): UnifiedLimits {
  const diameter = inchesOf(thread.size);
  const pitch = 1 / thread.tpi;
  const engagement = thread.series === 'UNEF' ? 9 * pitch : diameter;
  const td2 = tenThousandth(
    0.0015 * Math.cbrt(diameter) + 0.0015 * Math.sqrt(engagement) + 0.015 * Math.cbrt(pitch ** 2),
  );
  const allowance = tenThousandth(0.3 * td2);
  const major = diameter - allowance;
  const basic = diameter - 0.649519 * pitch;
  const minor = diameter - 1.082532 * pitch;
  return {
    external: {
      major: span(major - tenThousandth(0.06 * Math.cbrt(pitch ** 2)), major),
      pitchDiameter: span(basic - allowance - td2, basic - allowance),
    },
    internal: {
      minor: span(minor, minor + minorTolerance(diameter, pitch)),
      pitchDiameter: span(basic, basic + 1.3 * td2),
    },
  };
}
