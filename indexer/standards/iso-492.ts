import type { Um } from '../units/length.ts';
import { defineTable, larger, rising } from './table.ts';

/**
 * Tolerances of radial ball bearings (ISO 492): by how much the mean bore, the mean outside diameter and the ring width may
 * lie under nominal. The upper deviation is nought throughout.
 *
 * Sources: NSK catalogue table 8.2 and FBJ catalogue table 3, which agree. Outside diameters
 * above 80 mm from memory. Above 50 mm bore and 150 mm outside diameter the tables here end.
 */
const ranges = ['over: mm', 'to: mm', 'normal: number', 'class6: number', 'class5: number'] as const;

/** Whether every class is at least as tight as the one before it, and ranges meet. */
const tighter = (row: { normal: number; class6: number; class5: number }) =>
  row.normal <= row.class6 && row.class6 <= row.class5 && row.class5 < 0
    ? null
    : 'a better class is not tighter';

const bore = defineTable(
  'ISO 492 mean bore by bore',
  'NSK catalogue table 8.2, FBJ catalogue table 3',
  ranges,
  [
    [0.6, 2.5, -8, -7, -5],
    [2.5, 10, -8, -7, -5],
    [10, 18, -8, -7, -5],
    [18, 30, -10, -8, -6],
    [30, 50, -12, -10, -8],
  ],
  rising(['over']),
  larger('to', 'over'),
  tighter,
);

const outside = defineTable(
  'ISO 492 mean outside diameter by outside diameter',
  'NSK catalogue table 8.2, FBJ catalogue table 3',
  ranges,
  [
    [2.5, 6, -8, -7, -5],
    [6, 18, -8, -7, -5],
    [18, 30, -9, -8, -6],
    [30, 50, -11, -9, -7],
    [50, 80, -13, -11, -9],
    [80, 120, -15, -13, -10],
    [120, 150, -18, -15, -11],
  ],
  rising(['over']),
  larger('to', 'over'),
  tighter,
);

const width = defineTable(
  'ISO 492 ring width by bore',
  'NSK catalogue table 8.2, FBJ catalogue table 3',
  ranges,
  [
    [0.6, 2.5, -40, -40, -40],
    [2.5, 10, -120, -120, -40],
    [10, 18, -120, -120, -80],
    [18, 30, -120, -120, -120],
    [30, 50, -120, -120, -120],
  ],
  rising(['over']),
  larger('to', 'over'),
  tighter,
);

/** A tolerance class of ISO 492: normal, 6 or 5, coarse to fine. */
export type BearingClass = 'normal' | 'class6' | 'class5';

/** Lower deviations of a bearing in micrometres, all negative; the upper ones are nought. */
export interface BearingTolerances {
  readonly bore: number;
  readonly od: number;
  readonly width: number;
}

/**
 * By how much a bearing's bore, outside diameter and ring width may lie under nominal, in micrometres. The width of the
 * outer ring takes the value of the inner ring, so by bore. Null outside the tables: bore 0.6 to 50, outside diameter to 150 mm.
 */
export function bearingTolerances(
  size: { readonly bore: Um; readonly od: Um },
  toleranceClass: BearingClass = 'normal',
): BearingTolerances | null {
  const find = (table: typeof bore, value: Um) =>
    table.rows.find((row, at) => (at === 0 ? value >= row.over : value > row.over) && value <= row.to)?.[
      toleranceClass
    ];
  const [inner, outer, ring] = [find(bore, size.bore), find(outside, size.od), find(width, size.bore)];
  if (inner === undefined || outer === undefined || ring === undefined) return null;
  return { bore: inner, od: outer, width: ring };
}
