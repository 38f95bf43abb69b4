import type { Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, larger, unique } from './table.ts';

/**
 * Washers by the size of their screw: ISO 7089 and its relations, the older DIN ones, spring and toothed lock washers.
 *
 * `d1` is the hole (its minimum, the nominal), `d2` the outside diameter (its maximum), `h` the nominal thickness with limits.
 *
 * Sources: rows marked `libraries` stand in open CAD libraries, most in two to four of them; `memory` is from memory of the
 * standard. Where they differ: hole of ISO 7089 M10 is 10.5 (one gives 10); ISO 7093-1 M5 is 1 thick (two give 1.2, which is
 * DIN 9021, a row of its own: not settled); ISO 7092 M12 is 2 thick as in DIN 433 (one gives 2.5: not settled).
 * DIN rows that equal the ISO ones are not repeated: DIN 125-A and -B, 433 and 9021 fall back on ISO 7089, 7090, 7092 and 7093-1.
 */
const table = defineTable(
  'washers',
  'ISO 7089 to 7094, DIN 125, 127, 433, 6797, 6798 and 9021 as open CAD libraries quote them; memory where marked',
  [
    'standard: text',
    'type: text',
    'form: text',
    'thread: text',
    'd1: mm',
    'd2: mm',
    'h: mm',
    'hMin: mm',
    'hMax: mm',
    'basis: text',
  ],
  [
    ['ISO 7089', 'flat', 'normal', 'M1.6', 1.7, 4, 0.3, 0.25, 0.35, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M2', 2.2, 5, 0.3, 0.25, 0.35, 'memory'],
    ['ISO 7089', 'flat', 'normal', 'M2.5', 2.7, 6, 0.5, 0.45, 0.55, 'memory'],
    ['ISO 7089', 'flat', 'normal', 'M3', 3.2, 7, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M3.5', 3.7, 8, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M4', 4.3, 9, 0.8, 0.7, 0.9, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M5', 5.3, 10, 1, 0.9, 1.1, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M6', 6.4, 12, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M8', 8.4, 16, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M10', 10.5, 20, 2, 1.8, 2.2, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M12', 13, 24, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M14', 15, 28, 2.5, 2.3, 2.7, 'memory'],
    ['ISO 7089', 'flat', 'normal', 'M16', 17, 30, 3, 2.7, 3.3, 'memory'],
    ['ISO 7089', 'flat', 'normal', 'M20', 21, 37, 3, 2.7, 3.3, 'memory'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M5', 5.3, 10, 1, 0.9, 1.1, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M6', 6.4, 12, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M8', 8.4, 16, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M10', 10.5, 20, 2, 1.8, 2.2, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M12', 13, 24, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M14', 15, 28, 2.5, 2.3, 2.7, 'memory'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M16', 17, 30, 3, 2.7, 3.3, 'memory'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M20', 21, 37, 3, 2.7, 3.3, 'memory'],
    ['ISO 7092', 'flat', 'small', 'M1.6', 1.7, 3.5, 0.3, 0.25, 0.35, 'memory'],
    ['ISO 7092', 'flat', 'small', 'M2', 2.2, 4.5, 0.3, 0.25, 0.35, 'memory'],
    ['ISO 7092', 'flat', 'small', 'M2.5', 2.7, 5, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M3', 3.2, 6, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M3.5', 3.7, 7, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M4', 4.3, 8, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M5', 5.3, 9, 1, 0.9, 1.1, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M6', 6.4, 11, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M8', 8.4, 15, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M10', 10.5, 18, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M12', 13, 20, 2, 1.8, 2.2, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M14', 15, 24, 2.5, 2.3, 2.7, 'memory'],
    ['ISO 7092', 'flat', 'small', 'M16', 17, 28, 2.5, 2.3, 2.7, 'memory'],
    ['ISO 7092', 'flat', 'small', 'M20', 21, 34, 3, 2.7, 3.3, 'memory'],
    ['ISO 7093-1', 'flat', 'large', 'M3', 3.2, 9, 0.8, 0.7, 0.9, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M3.5', 3.7, 11, 0.8, 0.7, 0.9, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M4', 4.3, 12, 1, 0.9, 1.1, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M5', 5.3, 15, 1, 0.9, 1.1, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M6', 6.4, 18, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M8', 8.4, 24, 2, 1.8, 2.2, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M10', 10.5, 30, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M12', 13, 37, 3, 2.7, 3.3, 'memory'],
    ['ISO 7094', 'flat', 'extra large', 'M5', 5.5, 18, 2, 1.7, 2.3, 'memory'],
    ['ISO 7094', 'flat', 'extra large', 'M6', 6.6, 22, 2, 1.7, 2.3, 'memory'],
    ['ISO 7094', 'flat', 'extra large', 'M8', 9, 28, 3, 2.4, 3.6, 'memory'],
    ['ISO 7094', 'flat', 'extra large', 'M10', 11, 34, 3, 2.4, 3.6, 'memory'],
    ['DIN 125-A', 'flat', 'normal', 'M1.4', 1.5, 4, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M1.7', 1.8, 4.5, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M2.3', 2.5, 6, 0.5, 0.45, 0.55, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M2.6', 2.8, 7, 0.5, 0.45, 0.55, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M7', 7.4, 14, 1.6, 1.4, 1.8, 'memory'],
    ['DIN 433', 'flat', 'small', 'M1.7', 1.8, 4, 0.3, 0.25, 0.35, 'memory'],
    ['DIN 433', 'flat', 'small', 'M2.6', 2.8, 5.5, 0.5, 0.45, 0.55, 'memory'],
    ['DIN 9021', 'flat', 'large', 'M5', 5.3, 15, 1.2, 1, 1.4, 'libraries'],
    ['DIN 9021', 'flat', 'large', 'M7', 7.4, 22, 2, 1.8, 2.2, 'memory'],
    ['DIN 9021', 'flat', 'large', 'M12', 13, 37, 3, 2.7, 3.3, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M2', 2.1, 4.4, 0.5, 0.4, 0.6, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M2.5', 2.6, 5.1, 0.6, 0.5, 0.7, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M3', 3.1, 6.2, 0.8, 0.7, 0.9, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M3.5', 3.6, 6.7, 0.8, 0.7, 0.9, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M4', 4.1, 7.6, 0.9, 0.8, 1, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M5', 5.1, 9.2, 1.2, 1.1, 1.3, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M6', 6.1, 11.8, 1.6, 1.5, 1.7, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M7', 7.1, 12.8, 1.6, 1.5, 1.7, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M8', 8.1, 14.8, 2, 1.9, 2.1, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M10', 10.2, 18.1, 2.2, 2.05, 2.35, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M12', 12.2, 21.1, 2.5, 2.35, 2.65, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M14', 14.2, 24.1, 3, 2.8, 3.2, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M16', 16.2, 27.4, 3.5, 3.3, 3.7, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M2', 2.2, 4.5, 0.3, 0.27, 0.33, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M2.5', 2.7, 5.5, 0.4, 0.36, 0.44, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M3', 3.2, 6, 0.4, 0.36, 0.44, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M3.5', 3.7, 7, 0.5, 0.46, 0.54, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M4', 4.3, 8, 0.5, 0.46, 0.54, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M5', 5.3, 10, 0.6, 0.55, 0.65, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M6', 6.4, 11, 0.7, 0.65, 0.75, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M8', 8.4, 15, 0.8, 0.74, 0.86, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M10', 10.5, 18, 0.9, 0.84, 0.96, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M12', 13, 20.5, 1, 0.94, 1.06, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M2', 2.2, 4.5, 0.3, 0.27, 0.33, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M2.5', 2.7, 5.5, 0.4, 0.36, 0.44, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M3', 3.2, 6, 0.4, 0.36, 0.44, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M3.5', 3.7, 7, 0.5, 0.46, 0.54, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M4', 4.3, 8, 0.5, 0.46, 0.54, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M5', 5.3, 10, 0.6, 0.55, 0.65, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M6', 6.4, 11, 0.7, 0.65, 0.75, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M8', 8.4, 15, 0.8, 0.74, 0.86, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M10', 10.5, 18, 0.9, 0.84, 0.96, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M12', 13, 20.5, 1, 0.94, 1.06, 'memory'],
  ],
  unique('standard', 'thread'),
  larger('d2', 'd1'),
  larger('h', 'hMin'),
  larger('hMax', 'h'),
  row => (row.d1 > Number(row.thread.slice(1)) * 1000 ? null : 'the hole does not let its screw through'),
  row => (row.d1 < Number(row.thread.slice(1)) * 1130 ? null : 'the hole is too wide for its screw'),
  row => (row.d2 - row.d1 > row.h ? null : 'thicker than its ring is wide'),
  row => (row.h - row.hMin === row.hMax - row.h ? null : 'the limits do not lie evenly about the thickness'),
  row => (row.hMax - row.h <= Math.max(50, row.h * 0.2) ? null : 'the limits are too wide'),
  (row, previous) =>
    previous?.standard === row.standard && (previous.d2 >= row.d2 || previous.h > row.h)
      ? 'narrower or thinner than the washer of a smaller screw'
      : null,
  (row, previous) =>
    previous?.standard === row.standard && previous.d1 >= row.d1
      ? 'hole does not rise within the standard'
      : null,
);

/** A washer; lengths in micrometres. */
export interface Washer {
  readonly standard: string;
  readonly type: 'flat' | 'spring' | 'star';
  readonly form: string;
  /** The screw it is for, as `M3`. */
  readonly thread: string;
  /** Hole: nominal and minimum. */
  readonly d1: Um;
  /** Outside diameter: nominal and maximum. */
  readonly d2: Um;
  /** Thickness: nominal. */
  readonly h: Um;
  readonly hMin: Um;
  readonly hMax: Um;
  readonly basis: string;
}

/** All washers, by standard and size. */
export const washers: readonly Washer[] = table.rows.map(row => ({
  ...row,
  type: row.type as Washer['type'],
}));

/** ISO standards whose rows an older DIN number shares where it has none of its own. */
const sameAs: Readonly<Record<string, string>> = {
  'DIN 125': 'DIN 125-A',
  'DIN 125-A': 'ISO 7089',
  'DIN 125-B': 'ISO 7090',
  'DIN 433': 'ISO 7092',
  'DIN 9021': 'ISO 7093-1',
  'ISO 7093': 'ISO 7093-1',
  'DIN 127': 'DIN 127-B',
  'DIN 6797': 'DIN 6797-A',
  'DIN 6798': 'DIN 6798-A',
};

const byScrew = indexBy(washers, washer => `${washer.standard} ${washer.thread}`);
const byHole = groupBy(washers, washer => washer.d1);

/** The washer of a standard for a screw: `washerFor('DIN 125', 'M4')`. An older DIN number falls back on its ISO successor. */
export function washerFor(standard: string, thread: string): Washer | undefined {
  const same = sameAs[standard];
  return byScrew.get(`${standard} ${thread}`) ?? (same === undefined ? undefined : washerFor(same, thread));
}

/** The washer of a standard named by its hole, as `DIN 125 A 4,3` does; hole in micrometres. */
export function washerWithHole(standard: string, d1: Um): Washer | undefined {
  const own = byHole.get(d1)?.find(washer => washer.standard === standard);
  const same = sameAs[standard];
  return own ?? (same === undefined ? undefined : washerWithHole(same, d1));
}

/** The washers of a hole and outside diameter and, where given, thickness, in micrometres. */
export const washersByDims = (d1: Um, d2: Um, h?: Um): readonly Washer[] =>
  (byHole.get(d1) ?? []).filter(washer => washer.d2 === d2 && (h === undefined || washer.h === h));
