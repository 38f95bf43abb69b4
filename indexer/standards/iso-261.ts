import { toMm, type Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, rising } from './table.ts';

/** Pitches of ISO 261 up to M36, in millimetres. */
const isoPitches = new Set([
  0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4,
]);

/**
 * ISO metric threads: diameter and pitch (ISO 261), with the sizes outside it that older and Japanese devices have.
 *
 * Sources: ISO 261 choices 1 to 3 as quoted in open CAD libraries (three agree on M1 to M20); M22 up, M5.5, M15 and M17 from
 * memory. M9 and M11 are third choice in ISO 261; one list gives M9 as second. `outside`: M1.7, M2.3 and M2.6 of the older
 * DIN and JIS lists, found in tap makers' tables.
 */
const table = defineTable(
  'ISO 261 threads',
  'ISO 261 as quoted by open CAD libraries and tap makers; M22 up from memory',
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
    [27, 3, 'coarse', 2],
    [30, 3.5, 'coarse', 1],
    [33, 3.5, 'coarse', 2],
    [36, 4, 'coarse', 1],
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
