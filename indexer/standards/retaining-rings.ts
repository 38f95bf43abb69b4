import type { Um } from '../units/length.ts';
import { type Check, defineTable, indexBy, larger, rising } from './table.ts';

/**
 * Retaining rings for shafts (DIN 471) and bores (DIN 472), and E-clips (DIN 6799, JIS B 2804).
 *
 * A ring of DIN 471 or 472 is named by its shaft or bore, never by its own free diameter; an E-clip of DIN 6799 or JIS by the
 * groove. Sources: rows marked `agreed` stand in two open CAD libraries, or in a maker's catalogue and a library; `single` in
 * one; `memory` is from memory of the standard. Where they differ: DIN 472 size 28 has groove 29.4 (one gives 20.4); DIN 472
 * size 39 has the free diameter 42 from memory (the one source prints 42.5, more over its groove than any neighbour), 72, 82 and
 * 90 are 76.5, 2.5 thick and 95.5 (one gives 76.6, 3 and 95.55), size 100 has groove 103.5 (the one source for grooves prints 103);
 * DIN 471 size 48 is 1.75 thick (one gives 2, the thickness from 50 up), size 52 has groove 49 (the one source prints 49.5); E-clip
 * size 5 opens 4.11 (one gives 4.1). Groove diameters above 50 mm stand in one library alone. Groove widths of E-clips from size 12 up are from memory, and all of JIS B 2804.
 */

/** A ring's groove must be wider than the ring, by what the standard leaves: 0.1 mm, 0.15 from 2 mm up, 0.04 for small E-clips. */
const grooveIsWider: Check<{ readonly thickness: Um; readonly grooveWidth: Um }> = row =>
  row.grooveWidth > row.thickness && row.grooveWidth - row.thickness <= 150
    ? null
    : 'groove width does not go with the thickness';

const columns = [
  'nominal: mm',
  'groove: mm',
  'thickness: mm',
  'grooveWidth: mm',
  'freeDiameter: mm',
  'basis: text',
] as const;

const external = defineTable(
  'DIN 471 rings for shafts',
  'DIN 471 in two open CAD libraries; memory where marked',
  columns,
  [
    [3, 2.8, 0.4, 0.5, 2.7, 'agreed'],
    [4, 3.8, 0.4, 0.5, 3.7, 'agreed'],
    [5, 4.8, 0.6, 0.7, 4.7, 'agreed'],
    [6, 5.7, 0.7, 0.8, 5.6, 'agreed'],
    [7, 6.7, 0.8, 0.9, 6.5, 'agreed'],
    [8, 7.6, 0.8, 0.9, 7.4, 'agreed'],
    [9, 8.6, 1, 1.1, 8.4, 'agreed'],
    [10, 9.6, 1, 1.1, 9.3, 'agreed'],
    [11, 10.5, 1, 1.1, 10.2, 'agreed'],
    [12, 11.5, 1, 1.1, 11, 'agreed'],
    [13, 12.4, 1, 1.1, 11.9, 'agreed'],
    [14, 13.4, 1, 1.1, 12.9, 'agreed'],
    [15, 14.3, 1, 1.1, 13.8, 'agreed'],
    [16, 15.2, 1, 1.1, 14.7, 'agreed'],
    [17, 16.2, 1, 1.1, 15.7, 'agreed'],
    [18, 17, 1.2, 1.3, 16.5, 'agreed'],
    [19, 18, 1.2, 1.3, 17.5, 'agreed'],
    [20, 19, 1.2, 1.3, 18.5, 'agreed'],
    [21, 20, 1.2, 1.3, 19.5, 'agreed'],
    [22, 21, 1.2, 1.3, 20.5, 'agreed'],
    [23, 22, 1.2, 1.3, 21.5, 'single'],
    [24, 22.9, 1.2, 1.3, 22.2, 'agreed'],
    [25, 23.9, 1.2, 1.3, 23.2, 'agreed'],
    [26, 24.9, 1.2, 1.3, 24.2, 'agreed'],
    [27, 25.6, 1.2, 1.3, 24.9, 'single'],
    [28, 26.6, 1.5, 1.6, 25.9, 'agreed'],
    [29, 27.6, 1.5, 1.6, 26.9, 'agreed'],
    [30, 28.6, 1.5, 1.6, 27.9, 'agreed'],
    [31, 29.3, 1.5, 1.6, 28.6, 'single'],
    [32, 30.3, 1.5, 1.6, 29.6, 'agreed'],
    [33, 31.3, 1.5, 1.6, 30.5, 'single'],
    [34, 32.3, 1.5, 1.6, 31.5, 'agreed'],
    [35, 33, 1.5, 1.6, 32.2, 'agreed'],
    [36, 34, 1.75, 1.85, 33.2, 'agreed'],
    [37, 35, 1.75, 1.85, 34.2, 'single'],
    [38, 36, 1.75, 1.85, 35.2, 'agreed'],
    [39, 37, 1.75, 1.85, 36, 'single'],
    [40, 37.5, 1.75, 1.85, 36.5, 'agreed'],
    [41, 38.5, 1.75, 1.85, 37.5, 'single'],
    [42, 39.5, 1.75, 1.85, 38.5, 'agreed'],
    [44, 41.5, 1.75, 1.85, 40.5, 'single'],
    [45, 42.5, 1.75, 1.85, 41.5, 'agreed'],
    [46, 43.5, 1.75, 1.85, 42.5, 'single'],
    [47, 44.5, 1.75, 1.85, 43.5, 'single'],
    [48, 45.5, 1.75, 1.85, 44.5, 'single'],
    [50, 47, 2, 2.15, 45.8, 'agreed'],
    [52, 49, 2, 2.15, 47.8, 'memory'],
    [54, 51, 2, 2.15, 49.8, 'single'],
    [55, 52, 2, 2.15, 50.8, 'agreed'],
    [56, 53, 2, 2.15, 51.8, 'agreed'],
    [57, 54, 2, 2.15, 52.8, 'single'],
    [58, 55, 2, 2.15, 53.8, 'agreed'],
    [60, 57, 2, 2.15, 55.8, 'agreed'],
    [62, 59, 2, 2.15, 57.8, 'agreed'],
    [63, 60, 2, 2.15, 58.8, 'agreed'],
    [65, 62, 2.5, 2.65, 60.8, 'agreed'],
    [67, 64, 2.5, 2.65, 62.5, 'single'],
    [68, 65, 2.5, 2.65, 63.5, 'agreed'],
    [70, 67, 2.5, 2.65, 65.5, 'agreed'],
    [72, 69, 2.5, 2.65, 67.5, 'agreed'],
    [75, 72, 2.5, 2.65, 70.5, 'agreed'],
    [77, 74, 2.5, 2.65, 72.5, 'single'],
    [78, 75, 2.5, 2.65, 73.5, 'agreed'],
    [80, 76.5, 2.5, 2.65, 74.5, 'agreed'],
    [82, 78.5, 2.5, 2.65, 76.5, 'agreed'],
    [85, 81.5, 3, 3.15, 79.5, 'agreed'],
    [87, 83.5, 3, 3.15, 81.5, 'single'],
    [88, 84.5, 3, 3.15, 82.5, 'agreed'],
    [90, 86.5, 3, 3.15, 84.5, 'agreed'],
    [92, 88.5, 3, 3.15, 86.5, 'single'],
    [95, 91.5, 3, 3.15, 89.5, 'agreed'],
    [97, 93.5, 3, 3.15, 91.5, 'single'],
    [98, 94.5, 3, 3.15, 92.5, 'single'],
    [100, 96.5, 3, 3.15, 94.5, 'agreed'],
  ],
  rising(['nominal']),
  larger('nominal', 'groove'),
  larger('groove', 'freeDiameter'),
  grooveIsWider,
  row => (row.nominal - row.freeDiameter <= 5500 ? null : 'free diameter is too small'),
);

const internal = defineTable(
  'DIN 472 rings for bores',
  'DIN 472 in two open CAD libraries; memory where marked',
  columns,
  [
    [8, 8.4, 0.8, 0.9, 8.7, 'agreed'],
    [9, 9.4, 0.8, 0.9, 9.8, 'agreed'],
    [10, 10.4, 1, 1.1, 10.8, 'agreed'],
    [11, 11.4, 1, 1.1, 11.8, 'agreed'],
    [12, 12.5, 1, 1.1, 13, 'agreed'],
    [13, 13.6, 1, 1.1, 14.1, 'agreed'],
    [14, 14.6, 1, 1.1, 15.1, 'agreed'],
    [15, 15.7, 1, 1.1, 16.2, 'agreed'],
    [16, 16.8, 1, 1.1, 17.3, 'agreed'],
    [17, 17.8, 1, 1.1, 18.3, 'agreed'],
    [18, 19, 1, 1.1, 19.5, 'agreed'],
    [19, 20, 1, 1.1, 20.5, 'agreed'],
    [20, 21, 1, 1.1, 21.5, 'agreed'],
    [21, 22, 1, 1.1, 22.5, 'agreed'],
    [22, 23, 1, 1.1, 23.5, 'agreed'],
    [23, 24.1, 1.2, 1.3, 24.6, 'single'],
    [24, 25.2, 1.2, 1.3, 25.9, 'agreed'],
    [25, 26.2, 1.2, 1.3, 26.9, 'agreed'],
    [26, 27.2, 1.2, 1.3, 27.9, 'agreed'],
    [27, 28.4, 1.2, 1.3, 29.1, 'single'],
    [28, 29.4, 1.2, 1.3, 30.1, 'agreed'],
    [29, 30.4, 1.2, 1.3, 31.1, 'single'],
    [30, 31.4, 1.2, 1.3, 32.1, 'agreed'],
    [31, 32.7, 1.2, 1.3, 33.4, 'agreed'],
    [32, 33.7, 1.2, 1.3, 34.4, 'agreed'],
    [33, 34.7, 1.2, 1.3, 35.5, 'single'],
    [34, 35.7, 1.5, 1.6, 36.5, 'agreed'],
    [35, 37, 1.5, 1.6, 37.8, 'agreed'],
    [36, 38, 1.5, 1.6, 38.8, 'agreed'],
    [37, 39, 1.5, 1.6, 39.8, 'agreed'],
    [38, 40, 1.5, 1.6, 40.8, 'agreed'],
    [39, 41, 1.5, 1.6, 42, 'memory'],
    [40, 42.5, 1.75, 1.85, 43.5, 'agreed'],
    [41, 43.5, 1.75, 1.85, 44.5, 'single'],
    [42, 44.5, 1.75, 1.85, 45.5, 'agreed'],
    [43, 45.5, 1.75, 1.85, 46.5, 'single'],
    [44, 46.5, 1.75, 1.85, 47.5, 'single'],
    [45, 47.5, 1.75, 1.85, 48.5, 'agreed'],
    [46, 48.5, 1.75, 1.85, 49.5, 'single'],
    [47, 49.5, 1.75, 1.85, 50.5, 'agreed'],
    [48, 50.5, 1.75, 1.85, 51.5, 'agreed'],
    [49, 51.5, 1.75, 1.85, 52.5, 'single'],
    [50, 53, 2, 2.15, 54.2, 'agreed'],
    [51, 54, 2, 2.15, 55.2, 'single'],
    [52, 55, 2, 2.15, 56.2, 'agreed'],
    [53, 56, 2, 2.15, 57.2, 'single'],
    [54, 57, 2, 2.15, 58.2, 'single'],
    [55, 58, 2, 2.15, 59.2, 'agreed'],
    [56, 59, 2, 2.15, 60.2, 'agreed'],
    [57, 60, 2, 2.15, 61.2, 'single'],
    [58, 61, 2, 2.15, 62.2, 'agreed'],
    [60, 63, 2, 2.15, 64.2, 'agreed'],
    [62, 65, 2, 2.15, 66.2, 'agreed'],
    [63, 66, 2, 2.15, 67.2, 'agreed'],
    [64, 67, 2, 2.15, 68.2, 'single'],
    [65, 68, 2.5, 2.65, 69.2, 'agreed'],
    [67, 70, 2.5, 2.65, 71.5, 'single'],
    [68, 71, 2.5, 2.65, 72.5, 'agreed'],
    [70, 73, 2.5, 2.65, 74.5, 'agreed'],
    [72, 75, 2.5, 2.65, 76.5, 'single'],
    [75, 78, 2.5, 2.65, 79.5, 'agreed'],
    [77, 80, 2.5, 2.65, 81.5, 'single'],
    [78, 81, 2.5, 2.65, 82.5, 'agreed'],
    [80, 83.5, 2.5, 2.65, 85.5, 'agreed'],
    [82, 85.5, 2.5, 2.65, 87.5, 'single'],
    [85, 88.5, 3, 3.15, 90.5, 'agreed'],
    [87, 90.5, 3, 3.15, 92.5, 'single'],
    [88, 91.5, 3, 3.15, 93.5, 'agreed'],
    [90, 93.5, 3, 3.15, 95.5, 'single'],
    [92, 95.5, 3, 3.15, 97.5, 'agreed'],
    [95, 98.5, 3, 3.15, 100.5, 'agreed'],
    [97, 100.5, 3, 3.15, 102.5, 'single'],
    [98, 101.5, 3, 3.15, 103.5, 'agreed'],
    [100, 103.5, 3, 3.15, 105.5, 'memory'],
  ],
  rising(['nominal']),
  larger('groove', 'nominal'),
  larger('freeDiameter', 'groove'),
  grooveIsWider,
  // No published ring up to 65 mm stands more than 1.2 mm over its groove: this is what finds the misprinted size 39.
  row =>
    row.freeDiameter - row.groove <= (row.nominal <= 65_000 ? 1200 : 2000)
      ? null
      : 'free diameter is too large',
);

const eClips = defineTable(
  'DIN 6799 E-clips',
  "DIN 6799 in a maker's catalogue and an open CAD library; memory where marked",
  [
    'groove: mm',
    'shaftMin: mm',
    'shaftMax: mm',
    'thickness: mm',
    'grooveWidth: mm',
    'outside: mm',
    'opening: mm',
    'basis: text',
  ],
  [
    [0.8, 1, 1.4, 0.2, 0.24, 2.25, 0.58, 'memory'],
    [1.2, 1.4, 2, 0.3, 0.34, 3.25, 1.01, 'agreed'],
    [1.5, 2, 2.5, 0.4, 0.44, 4.25, 1.28, 'agreed'],
    [1.9, 2.5, 3, 0.5, 0.54, 4.8, 1.61, 'agreed'],
    [2.3, 3, 4, 0.6, 0.64, 6.3, 1.94, 'single'],
    [3.2, 4, 5, 0.6, 0.64, 7.3, 2.7, 'agreed'],
    [4, 5, 7, 0.7, 0.74, 9.3, 3.34, 'single'],
    [5, 6, 8, 0.7, 0.74, 11.3, 4.11, 'agreed'],
    [6, 7, 9, 0.7, 0.74, 12.3, 5.26, 'agreed'],
    [7, 8, 11, 0.9, 0.94, 14.3, 5.84, 'single'],
    [8, 9, 12, 1, 1.05, 16.3, 6.52, 'agreed'],
    [9, 10, 14, 1.1, 1.15, 18.8, 7.63, 'single'],
    [10, 11, 15, 1.2, 1.25, 20.4, 8.32, 'agreed'],
    [12, 13, 18, 1.3, 1.35, 23.4, 10.45, 'agreed'],
    [15, 16, 24, 1.5, 1.55, 29.4, 12.61, 'agreed'],
    [19, 20, 31, 1.75, 1.8, 37.6, 15.92, 'agreed'],
    [24, 25, 38, 2, 2.05, 44.6, 21.88, 'agreed'],
    [30, 32, 42, 2.5, 2.58, 52.6, 25.8, 'single'],
  ],
  rising(['groove']),
  larger('shaftMin', 'groove'),
  larger('shaftMax', 'shaftMin'),
  larger('outside', 'shaftMax'),
  larger('groove', 'opening'),
  grooveIsWider,
);

const japaneseEClips = defineTable(
  'JIS B 2804 E-rings',
  'JIS B 2804 from memory, unverified',
  ['groove: mm', 'shaftMin: mm', 'shaftMax: mm', 'thickness: mm', 'outside: mm'],
  [
    [0.8, 1, 1.4, 0.2, 2],
    [1.2, 1.4, 2, 0.3, 3],
    [1.5, 2, 2.5, 0.4, 4],
    [2, 2.5, 3.2, 0.4, 5],
    [2.5, 3.2, 4, 0.4, 6],
    [3, 4, 5, 0.6, 7],
    [4, 5, 7, 0.6, 9],
    [5, 6, 8, 0.6, 11],
    [6, 7, 9, 0.8, 12],
    [7, 8, 11, 0.8, 14],
    [8, 9, 12, 0.8, 16],
    [9, 10, 14, 0.8, 18],
    [10, 11, 15, 1, 20],
    [12, 13, 18, 1, 23],
    [15, 16, 24, 1.6, 29],
    [19, 20, 31, 1.6, 37],
    [24, 25, 38, 2, 44],
  ],
  rising(['groove']),
  larger('shaftMin', 'groove'),
  larger('shaftMax', 'shaftMin'),
  larger('outside', 'shaftMax'),
);

/** A ring for a shaft or a bore; lengths in micrometres. */
export interface RetainingRing {
  /** Shaft (DIN 471) or bore (DIN 472). */
  readonly nominal: Um;
  readonly groove: Um;
  readonly thickness: Um;
  /** Least width of the groove. */
  readonly grooveWidth: Um;
  /** Inside diameter of the free external ring, outside diameter of the free internal one. */
  readonly freeDiameter: Um;
  readonly basis: string;
}

/** An E-clip, named by its groove; lengths in micrometres. */
export interface EClip {
  readonly groove: Um;
  readonly shaftMin: Um;
  readonly shaftMax: Um;
  readonly thickness: Um;
  /** Outside diameter, seated, at most. */
  readonly outside: Um;
}

/** Rings for shafts 3 to 100 mm, smallest first (DIN 471). */
export const externalRings: readonly RetainingRing[] = external.rows;

/** Rings for bores 8 to 100 mm, smallest first (DIN 472). */
export const internalRings: readonly RetainingRing[] = internal.rows;

/** E-clips for grooves 0.8 to 30 mm, smallest first, with groove width and opening (DIN 6799). */
export const din6799EClips = eClips.rows;

/** Japanese E-rings, smallest first: some sizes and thicknesses differ from DIN 6799 (JIS B 2804). */
export const jisEClips: readonly EClip[] = japaneseEClips.rows;

const byShaft = indexBy(externalRings, ring => ring.nominal);
const byBore = indexBy(internalRings, ring => ring.nominal);
const byGroove = indexBy(din6799EClips, clip => clip.groove);
const byJisGroove = indexBy(jisEClips, clip => clip.groove);

/** The DIN 471 ring of a shaft, in micrometres. */
export const externalRing = (shaft: Um): RetainingRing | undefined => byShaft.get(shaft);

/** The DIN 472 ring of a bore, in micrometres. */
export const internalRing = (bore: Um): RetainingRing | undefined => byBore.get(bore);

/** The E-clip of a groove, in micrometres: by DIN 6799, or by JIS B 2804. */
export const eClip = (groove: Um, standard: 'DIN 6799' | 'JIS B 2804' = 'DIN 6799'): EClip | undefined =>
  (standard === 'DIN 6799' ? byGroove : byJisGroove).get(groove);

/** The DIN 6799 E-clips that a shaft in micrometres takes: most shafts take two, by how deep the groove is. */
export const eClipsForShaft = (shaft: Um): readonly EClip[] =>
  din6799EClips.filter(clip => clip.shaftMin <= shaft && shaft <= clip.shaftMax);
