import { toMm, type Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, rising } from './table.ts';

/** Pitches of ISO 261 up to M68, in millimetres. */
const isoPitches = new Set([
  0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5,
  5.5, 6,
]);

/**
 * ISO metric threads: diameter and pitch (ISO 261), with the sizes outside it that older and Japanese devices have.
 *
 * Sources: ISO 261 choices 1 to 3 as quoted in open CAD libraries (three agree on M1 to M20, two on the coarse pitches and the fine
 * ones of ISO 262 up to M68); the other fine pitches from M22 up, M5.5 and every third choice from M15 from memory. M9 and M11 are third choice in ISO 261; one list gives M9 as second. `outside`: M1.7, M2.3 and M2.6 of the older
 * DIN and JIS lists, found in tap makers' tables.
 */
const table = defineTable(
  'ISO 261 threads',
  'ISO 261 as quoted by open CAD libraries and tap makers; third choices and some fine pitches from memory',
  ['nominal: mm', 'pitch: mm', 'series: text', 'choice: number?'],
  [
    [1, 0.25, 'coarse', 1],
    [1, 0.2, 'fine', 1],
    [1.1, 0.25, 'coarse', 2],
    [1.1, 0.2, 'fine', 2],
    [1.2, 0.25, 'coarse', 1],
    [1.2, 0.2, 'fine', 1],
    [1.4, 0.3, 'coarse', 2],
    [1.4, 0.2, 'fine', 2],
    [1.6, 0.35, 'coarse', 1],
    [1.6, 0.2, 'fine', 1],
    [1.7, 0.35, 'outside', null],
    [1.8, 0.35, 'coarse', 2],
    [1.8, 0.2, 'fine', 2],
    [2, 0.4, 'coarse', 1],
    [2, 0.25, 'fine', 1],
    [2.2, 0.45, 'coarse', 2],
    [2.2, 0.25, 'fine', 2],
    [2.3, 0.4, 'outside', null],
    [2.5, 0.45, 'coarse', 1],
    [2.5, 0.35, 'fine', 1],
    [2.6, 0.45, 'outside', null],
    [3, 0.5, 'coarse', 1],
    [3, 0.35, 'fine', 1],
    [3.5, 0.6, 'coarse', 2],
    [3.5, 0.35, 'fine', 2],
    [4, 0.7, 'coarse', 1],
    [4, 0.5, 'fine', 1],
    [4.5, 0.75, 'coarse', 2],
    [4.5, 0.5, 'fine', 2],
    [5, 0.8, 'coarse', 1],
    [5, 0.5, 'fine', 1],
    [5.5, 0.5, 'fine', 3],
    [6, 1, 'coarse', 1],
    [6, 0.75, 'fine', 1],
    [7, 1, 'coarse', 2],
    [7, 0.75, 'fine', 2],
    [8, 1.25, 'coarse', 1],
    [8, 1, 'fine', 1],
    [8, 0.75, 'fine', 1],
    [9, 1.25, 'coarse', 3],
    [9, 1, 'fine', 3],
    [9, 0.75, 'fine', 3],
    [10, 1.5, 'coarse', 1],
    [10, 1.25, 'fine', 1],
    [10, 1, 'fine', 1],
    [10, 0.75, 'fine', 1],
    [11, 1.5, 'coarse', 3],
    [11, 1, 'fine', 3],
    [11, 0.75, 'fine', 3],
    [12, 1.75, 'coarse', 1],
    [12, 1.5, 'fine', 1],
    [12, 1.25, 'fine', 1],
    [12, 1, 'fine', 1],
    [14, 2, 'coarse', 2],
    [14, 1.5, 'fine', 2],
    [14, 1.25, 'fine', 2],
    [14, 1, 'fine', 2],
    [15, 1.5, 'fine', 3],
    [15, 1, 'fine', 3],
    [16, 2, 'coarse', 1],
    [16, 1.5, 'fine', 1],
    [16, 1, 'fine', 1],
    [17, 1.5, 'fine', 3],
    [17, 1, 'fine', 3],
    [18, 2.5, 'coarse', 2],
    [18, 2, 'fine', 2],
    [18, 1.5, 'fine', 2],
    [18, 1, 'fine', 2],
    [20, 2.5, 'coarse', 1],
    [20, 2, 'fine', 1],
    [20, 1.5, 'fine', 1],
    [20, 1, 'fine', 1],
    [22, 2.5, 'coarse', 2],
    [22, 2, 'fine', 2],
    [22, 1.5, 'fine', 2],
    [22, 1, 'fine', 2],
    [24, 3, 'coarse', 1],
    [24, 2, 'fine', 1],
    [24, 1.5, 'fine', 1],
    [24, 1, 'fine', 1],
    [25, 2, 'fine', 3],
    [25, 1.5, 'fine', 3],
    [25, 1, 'fine', 3],
    [26, 1.5, 'fine', 3],
    [27, 3, 'coarse', 2],
    [27, 2, 'fine', 2],
    [27, 1.5, 'fine', 2],
    [27, 1, 'fine', 2],
    [28, 2, 'fine', 3],
    [28, 1.5, 'fine', 3],
    [28, 1, 'fine', 3],
    [30, 3.5, 'coarse', 1],
    [30, 3, 'fine', 1],
    [30, 2, 'fine', 1],
    [30, 1.5, 'fine', 1],
    [30, 1, 'fine', 1],
    [32, 2, 'fine', 3],
    [32, 1.5, 'fine', 3],
    [33, 3.5, 'coarse', 2],
    [33, 3, 'fine', 2],
    [33, 2, 'fine', 2],
    [33, 1.5, 'fine', 2],
    [35, 1.5, 'fine', 3],
    [36, 4, 'coarse', 1],
    [36, 3, 'fine', 1],
    [36, 2, 'fine', 1],
    [36, 1.5, 'fine', 1],
    [38, 1.5, 'fine', 3],
    [39, 4, 'coarse', 2],
    [39, 3, 'fine', 2],
    [39, 2, 'fine', 2],
    [39, 1.5, 'fine', 2],
    [40, 3, 'fine', 3],
    [40, 2, 'fine', 3],
    [40, 1.5, 'fine', 3],
    [42, 4.5, 'coarse', 1],
    [42, 4, 'fine', 1],
    [42, 3, 'fine', 1],
    [42, 2, 'fine', 1],
    [42, 1.5, 'fine', 1],
    [45, 4.5, 'coarse', 2],
    [45, 4, 'fine', 2],
    [45, 3, 'fine', 2],
    [45, 2, 'fine', 2],
    [45, 1.5, 'fine', 2],
    [48, 5, 'coarse', 1],
    [48, 4, 'fine', 1],
    [48, 3, 'fine', 1],
    [48, 2, 'fine', 1],
    [48, 1.5, 'fine', 1],
    [50, 3, 'fine', 3],
    [50, 2, 'fine', 3],
    [50, 1.5, 'fine', 3],
    [52, 5, 'coarse', 2],
    [52, 4, 'fine', 2],
    [52, 3, 'fine', 2],
    [52, 2, 'fine', 2],
    [52, 1.5, 'fine', 2],
    [55, 4, 'fine', 3],
    [55, 3, 'fine', 3],
    [55, 2, 'fine', 3],
    [55, 1.5, 'fine', 3],
    [56, 5.5, 'coarse', 1],
    [56, 4, 'fine', 1],
    [56, 3, 'fine', 1],
    [56, 2, 'fine', 1],
    [56, 1.5, 'fine', 1],
    [58, 4, 'fine', 3],
    [58, 3, 'fine', 3],
    [58, 2, 'fine', 3],
    [58, 1.5, 'fine', 3],
    [60, 5.5, 'coarse', 2],
    [60, 4, 'fine', 2],
    [60, 3, 'fine', 2],
    [60, 2, 'fine', 2],
    [60, 1.5, 'fine', 2],
    [62, 4, 'fine', 3],
    [62, 3, 'fine', 3],
    [62, 2, 'fine', 3],
    [62, 1.5, 'fine', 3],
    [64, 6, 'coarse', 1],
    [64, 4, 'fine', 1],
    [64, 3, 'fine', 1],
    [64, 2, 'fine', 1],
    [64, 1.5, 'fine', 1],
    [65, 4, 'fine', 3],
    [65, 3, 'fine', 3],
    [65, 2, 'fine', 3],
    [65, 1.5, 'fine', 3],
    [68, 6, 'coarse', 2],
    [68, 4, 'fine', 2],
    [68, 3, 'fine', 2],
    [68, 2, 'fine', 2],
    [68, 1.5, 'fine', 2],
  ],
  (row, previous) =>
    previous && previous.nominal > row.nominal ? 'nominal is below that of the row above' : null,
  (row, previous) =>
    previous?.nominal === row.nominal && previous.pitch <= row.pitch ? 'pitch does not fall' : null,
  (row, previous) =>
    previous?.nominal === row.nominal && row.series === 'coarse' ? 'coarse follows fine' : null,
  row => (isoPitches.has(toMm(row.pitch)) ? null : 'no pitch of ISO 261'),
  (row, _, earlier) =>
    row.series === 'coarse' && earlier.some(other => other.series === 'coarse' && other.pitch > row.pitch)
      ? 'coarse pitch is finer than that of a smaller thread'
      : null,
  row => (row.pitch * 2.5 < row.nominal * 1.01 ? null : 'pitch is too coarse for the diameter'),
);

/** A metric thread; lengths in micrometres. */
export interface MetricThread {
  /** `M3`, or with the pitch where it is not the coarse one: `M3x0.35`. */
  readonly designation: string;
  readonly nominal: Um;
  readonly pitch: Um;
  /** `outside`: not in ISO 261, but its one usual pitch. */
  readonly series: 'coarse' | 'fine' | 'outside';
  /** Which choice ISO 261 makes it, 1 to 3; null outside it. */
  readonly choice: number | null;
}

/** All metric threads, smallest first, the coarse pitch before the fine ones. */
export const metricThreads: readonly MetricThread[] = table.rows.map(row => ({
  ...row,
  series: row.series as MetricThread['series'],
  designation: `M${toMm(row.nominal)}${row.series === 'fine' ? `x${toMm(row.pitch)}` : ''}`,
}));

const byNominal = groupBy(metricThreads, thread => thread.nominal);
const byName = indexBy(metricThreads, thread => thread.designation);

/** The pitch that a bare `M3` means, in micrometres; undefined for a diameter that has none, as M5.5. */
export const coarsePitch = (nominal: Um): Um | undefined =>
  byNominal.get(nominal)?.find(thread => thread.series !== 'fine')?.pitch;

/** The threads of a diameter in micrometres, coarsest first. */
export const metricThreadsOf = (nominal: Um): readonly MetricThread[] => byNominal.get(nominal) ?? [];

/** The thread of a diameter and pitch in micrometres. */
export const metricThread = (nominal: Um, pitch: Um): MetricThread | undefined =>
  byNominal.get(nominal)?.find(thread => thread.pitch === pitch);

/** The thread of a designation, `M3` or `M3x0.35`; a coarse pitch written out, `M3x0.5`, is understood too. */
export function metricThreadNamed(designation: string): MetricThread | undefined {
  const named = byName.get(designation);
  if (named) return named;
  const [diameter, pitch] = designation.replace(/^M/, '').split('x');
  return metricThread(Math.round(Number(diameter) * 1000), Math.round(Number(pitch) * 1000));
}

/**
 * Pitches that Japanese screws of M3, M4 and M5 had before JIS took the ISO ones, in the 1960s: same diameter, coarser.
 * Source: a maker's bulletin of 1967.
 */
const older = defineTable(
  'JIS threads before ISO',
  "a maker's bulletin of 1967",
  ['nominal: mm', 'pitch: mm', 'acrossFlats: mm'],
  [
    [3, 0.6, 6],
    [4, 0.75, 8],
    [5, 0.9, 9],
  ],
  rising(['nominal']),
);

/** Older Japanese threads, with the across flats of their nuts; lengths in micrometres. */
export const olderJapaneseThreads = older.rows;
