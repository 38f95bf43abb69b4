import type { Um } from '../units/length.ts';
import { defineTable, indexBy, unique } from './table.ts';

/**
 * British Association threads 0 to 16 BA (BS 93), 47.5 degrees: pitch 0.9^n mm and diameter 6 p^1.2, each to two figures.
 *
 * Sources: the formula from an encyclopedia; 0 to 12 BA equal a published table of threads an inch and inch diameters,
 * 13 to 16 BA are by the formula alone. One page says that the diameter is six pitches, which holds for 0 BA alone.
 */
const table = defineTable(
  'British Association threads',
  'BS 93: formula, and a published table for 0 to 12 BA',
  ['number: number', 'nominal: mm', 'pitch: mm'],
  [
    [0, 6, 1],
    [1, 5.3, 0.9],
    [2, 4.7, 0.81],
    [3, 4.1, 0.73],
    [4, 3.6, 0.66],
    [5, 3.2, 0.59],
    [6, 2.8, 0.53],
    [7, 2.5, 0.48],
    [8, 2.2, 0.43],
    [9, 1.9, 0.39],
    [10, 1.7, 0.35],
    [11, 1.5, 0.31],
    [12, 1.3, 0.28],
    [13, 1.2, 0.25],
    [14, 1, 0.23],
    [15, 0.9, 0.21],
    [16, 0.79, 0.19],
  ],
  unique('number'),
  row => misfit('pitch', row.pitch, 0.9 ** row.number),
  row => misfit('nominal', row.nominal, 6 * (0.9 ** row.number) ** 1.2),
);

/** The standard gives two figures: the value may be off the formula by half of the second one. */
function misfit(name: string, value: Um, formula: number): string | null {
  const half = 500 * 10 ** (Math.floor(Math.log10(formula)) - 1) + 1;
  return Math.abs(value - formula * 1000) <= half
    ? null
    : `${name} is not ${formula.toFixed(4)} to two figures`;
}

/** A BA thread; lengths in micrometres. */
export interface BaThread {
  /** `2BA`. */
  readonly designation: string;
  readonly number: number;
  readonly nominal: Um;
  readonly pitch: Um;
  /** Effective diameter, 0.6 pitches under the outside one. */
  readonly pitchDiameter: Um;
  /** Minor diameter, 1.2 pitches under the outside one. */
  readonly minor: Um;
}

/** 0 to 16 BA, largest first. */
export const baThreads: readonly BaThread[] = table.rows.map(row => ({
  ...row,
  designation: `${row.number}BA`,
  pitchDiameter: Math.round(row.nominal - 0.6 * row.pitch),
  minor: Math.round(row.nominal - 1.2 * row.pitch),
}));

const byName = indexBy(baThreads, thread => thread.designation);

/** The thread of a designation, `2BA`. */
export const baThreadNamed = (designation: string): BaThread | undefined => byName.get(designation);
