import type { Um } from '../units/length.ts';
import { defineTable, rising } from './table.ts';

/**
 * Limits of ISO metric threads (ISO 965-1 and 965-2): class 6g outside and 6H inside; 6h and 5H up to M1.4; and where
 * ISO 965-1 has no coarser grade, 5H for the internal minor diameter at pitch 0.25 and 4H at 0.2.
 *
 * Sources: the standard's table values from memory; every published row found agrees (6g of ASME B1.13M and of ISO 965
 * pages, 6H and 5H pitch tolerances of two tap makers). The tables check themselves against the formulas of ISO 965-1,
 * which the standard rounds to R40 numbers with a few cells set by hand.
 */

/** One step of the R40 series, as a part of the number. */
const r40 = 10 ** (1 / 40) - 1;

/** Whether a table value is the formula's, but for the standard's own rounding: an R40 step, or 3 µm on small values. */
const rounds = (value: number, formula: number) => Math.abs(value - formula) <= Math.max(3, formula * r40);

/** Formulas of ISO 965-1; pitch and diameter in millimetres, result in micrometres. */
export const formulas = {
  /** Fundamental deviation g of the external thread. */
  es: (pitch: number) => -(15 + 11 * pitch),
  /** Grade 6 tolerance of the external major diameter. */
  td: (pitch: number) => 180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch),
  /** Grade 6 tolerance of the internal minor diameter. */
  td1: (pitch: number) => (pitch <= 0.8 ? 433 * pitch - 190 * pitch ** 1.22 : 230 * pitch ** 0.7),
  /** Grade 6 tolerance of the external pitch diameter; `mean` is the geometric mean of the diameter range. */
  td2: (pitch: number, mean: number) => 90 * pitch ** 0.4 * mean ** 0.1,
} as const;

/** Grades as a part of grade 6: 4 and 5 of TD1, and 4, 5 and 6 of TD2 over Td2. */
const minorGrade = { 4: 0.63, 5: 0.8, 6: 1 } as const;
const pitchGrade = { 4: 0.85, 5: 1.06, 6: 1.32 } as const;

const misfit = (name: string, value: number | null, formula: number) =>
  value === null || rounds(value, formula)
    ? null
    : `${name} ${value} is off the formula's ${formula.toFixed(1)}`;

const pitches = defineTable(
  'ISO 965-1 deviations and diameter tolerances by pitch',
  'ISO 965-1 table values from memory, checked by its formulas',
  ['pitch: mm', 'es: um', 'td: um', 'td1Grade4: um', 'td1Grade5: um?', 'td1Grade6: um?'],
  [
    [0.2, -17, 56, 38, null, null],
    [0.25, -18, 67, 45, 56, null],
    [0.3, -18, 75, 53, 67, 85],
    [0.35, -19, 85, 63, 80, 100],
    [0.4, -19, 95, 71, 90, 112],
    [0.45, -20, 100, 80, 100, 125],
    [0.5, -20, 106, 90, 112, 140],
    [0.6, -21, 125, 100, 125, 160],
    [0.7, -22, 140, 112, 140, 180],
    [0.75, -22, 140, 118, 150, 190],
    [0.8, -24, 150, 125, 160, 200],
    [1, -26, 180, 150, 190, 236],
    [1.25, -28, 212, 170, 212, 265],
    [1.5, -32, 236, 190, 236, 300],
    [1.75, -34, 265, 212, 265, 335],
    [2, -38, 280, 236, 300, 375],
    [2.5, -42, 335, 280, 355, 450],
    [3, -48, 375, 315, 400, 500],
    [3.5, -53, 425, 355, 450, 560],
    [4, -60, 475, 375, 475, 600],
    [4.5, -63, 500, 425, 530, 670],
    [5, -71, 530, 450, 560, 710],
    [5.5, -75, 560, 475, 600, 750],
    [6, -80, 600, 500, 630, 800],
  ],
  rising(['pitch']),
  row => misfit('es', row.es, formulas.es(row.pitch / 1000)),
  row => misfit('td', row.td, formulas.td(row.pitch / 1000)),
  row => misfit('td1Grade4', row.td1Grade4, formulas.td1(row.pitch / 1000) * minorGrade[4]),
  row => misfit('td1Grade5', row.td1Grade5, formulas.td1(row.pitch / 1000) * minorGrade[5]),
  row => misfit('td1Grade6', row.td1Grade6, formulas.td1(row.pitch / 1000) * minorGrade[6]),
);

const pitchDiameters = defineTable(
  'ISO 965-1 tolerances of the pitch diameter by diameter range and pitch',
  'ISO 965-1 table values from memory, checked by its formulas',
  ['over: mm', 'to: mm', 'pitch: mm', 'td2: um', 'tD2Grade4: um', 'tD2Grade5: um?', 'tD2Grade6: um?'],
  [
    [0.99, 1.4, 0.2, 48, 40, null, null],
    [0.99, 1.4, 0.25, 53, 45, 56, null],
    [0.99, 1.4, 0.3, 56, 48, 60, 75],
    [1.4, 2.8, 0.2, 50, 42, null, null],
    [1.4, 2.8, 0.25, 56, 48, 60, null],
    [1.4, 2.8, 0.35, 63, 53, 67, 85],
    [1.4, 2.8, 0.4, 67, 56, 71, 90],
    [1.4, 2.8, 0.45, 71, 60, 75, 95],
    [2.8, 5.6, 0.35, 67, 56, 71, 90],
    [2.8, 5.6, 0.5, 75, 63, 80, 100],
    [2.8, 5.6, 0.6, 85, 71, 90, 112],
    [2.8, 5.6, 0.7, 90, 75, 95, 118],
    [2.8, 5.6, 0.75, 90, 75, 95, 118],
    [2.8, 5.6, 0.8, 95, 80, 100, 125],
    [5.6, 11.2, 0.75, 100, 85, 106, 132],
    [5.6, 11.2, 1, 112, 95, 118, 150],
    [5.6, 11.2, 1.25, 118, 100, 125, 160],
    [5.6, 11.2, 1.5, 132, 112, 140, 180],
    [11.2, 22.4, 1, 118, 100, 125, 160],
    [11.2, 22.4, 1.25, 132, 112, 140, 180],
    [11.2, 22.4, 1.5, 140, 118, 150, 190],
    [11.2, 22.4, 1.75, 150, 125, 160, 200],
    [11.2, 22.4, 2, 160, 132, 170, 212],
    [11.2, 22.4, 2.5, 170, 140, 180, 224],
    [22.4, 45, 1, 125, 106, 132, 170],
    [22.4, 45, 1.5, 150, 125, 160, 200],
    [22.4, 45, 2, 170, 140, 180, 224],
    [22.4, 45, 3, 200, 170, 212, 265],
    [22.4, 45, 3.5, 212, 180, 224, 280],
    [22.4, 45, 4, 224, 190, 236, 300],
    [22.4, 45, 4.5, 236, 200, 250, 315],
    [45, 90, 1.5, 160, 132, 170, 212],
    [45, 90, 2, 180, 150, 190, 236],
    [45, 90, 3, 212, 180, 224, 280],
    [45, 90, 4, 236, 200, 250, 315],
    [45, 90, 5, 250, 212, 265, 335],
    [45, 90, 5.5, 265, 224, 280, 355],
    [45, 90, 6, 280, 236, 300, 375],
  ],
  rising(['over', 'pitch']),
  row => (row.to > row.over ? null : 'the diameter range is empty'),
  row => misfit('td2', row.td2, td2Of(row)),
  row => misfit('tD2Grade4', row.tD2Grade4, td2Of(row) * pitchGrade[4]),
  row => misfit('tD2Grade5', row.tD2Grade5, td2Of(row) * pitchGrade[5]),
  row => misfit('tD2Grade6', row.tD2Grade6, td2Of(row) * pitchGrade[6]),
);

function td2Of({ over, to, pitch }: { over: Um; to: Um; pitch: Um }): number {
  return formulas.td2(pitch / 1000, Math.sqrt(over * to) / 1000);
}

/** The least and the greatest a dimension may be, in micrometres. */
export interface Limits {
  readonly min: Um;
  readonly max: Um;
}

/** Limits of a thread's outside diameter and pitch diameter: what a caliper and a thread micrometer see on a sound screw. */
export interface ExternalLimits {
  readonly toleranceClass: '6g' | '6h';
  readonly major: Limits;
  readonly pitchDiameter: Limits;
}

/** Limits of a nut's thread: its minor diameter, which a caliper sees, and its pitch diameter. */
export interface InternalLimits {
  readonly toleranceClass: '6H' | '5H' | '4H';
  readonly minor: Limits;
  readonly pitchDiameter: Limits;
}

/** Diameter and pitch of a thread, in micrometres. */
export interface ThreadSize {
  readonly nominal: Um;
  readonly pitch: Um;
}

/** Pitch diameter of the basic profile, in micrometres (ISO 724). */
const basicPitchDiameter = ({ nominal, pitch }: ThreadSize): Um => Math.round(nominal - 0.649519 * pitch);

/** Internal minor diameter of the basic profile, in micrometres (ISO 724). */
const basicMinorDiameter = ({ nominal, pitch }: ThreadSize): Um => Math.round(nominal - 1.082532 * pitch);

/** Up to M1.4 ISO 965-2 has 6h and 5H. */
const smallest = ({ nominal }: ThreadSize) => nominal <= 1400;

/** The tolerances of a thread, from the tables, or by formula for a pitch the standard has no cell for. */
function tolerances({ nominal, pitch }: ThreadSize) {
  const byPitch = pitches.rows.find(row => row.pitch === pitch);
  const range = pitchDiameters.rows.find(row => nominal > row.over && nominal <= row.to);
  const byRange = pitchDiameters.rows.find(row => row.over === range?.over && row.pitch === pitch);
  if (!range)
    throw new RangeError(
      `ISO 965-1 tables here end at 90 mm and begin above 0.99 mm; ${nominal / 1000} is outside`,
    );
  const p = pitch / 1000;
  const td2 = td2Of({ ...range, pitch });
  return {
    es: byPitch?.es ?? Math.round(formulas.es(p)),
    td: byPitch?.td ?? Math.round(formulas.td(p)),
    td2: byRange?.td2 ?? Math.round(td2),
    minor: byPitch
      ? { 4: byPitch.td1Grade4, 5: byPitch.td1Grade5, 6: byPitch.td1Grade6 }
      : { 4: null, 5: null, 6: Math.round(formulas.td1(p)) },
    inner: byRange
      ? { 4: byRange.tD2Grade4, 5: byRange.tD2Grade5, 6: byRange.tD2Grade6 }
      : { 4: null, 5: null, 6: Math.round(td2 * pitchGrade[6]) },
  };
}

/**
 * Limits of an external metric thread, class 6g (6h up to M1.4), in micrometres. A pitch outside the tables, as the older
 * M3x0.6 in a range that lacks it, is by formula.
 *
 * @throws RangeError for a diameter outside the tables (0.99 to 90 mm).
 */
export function externalLimits(thread: ThreadSize): ExternalLimits {
  const { es, td, td2 } = tolerances(thread);
  const deviation = smallest(thread) ? 0 : es;
  const major = thread.nominal + deviation;
  const pitchDiameter = basicPitchDiameter(thread) + deviation;
  return {
    toleranceClass: smallest(thread) ? '6h' : '6g',
    major: { min: major - td, max: major },
    pitchDiameter: { min: pitchDiameter - td2, max: pitchDiameter },
  };
}

/**
 * Limits of an internal metric thread, class 6H (5H up to M1.4 and at pitch 0.25, 4H at pitch 0.2), in micrometres.
 *
 * @throws RangeError for a diameter outside the tables (0.99 to 90 mm).
 */
export function internalLimits(thread: ThreadSize): InternalLimits {
  const { minor, inner } = tolerances(thread);
  const wanted = smallest(thread) ? 5 : 6;
  const grade = ([6, 5, 4] as const).find(g => g <= wanted && minor[g] !== null && inner[g] !== null) ?? 6;
  const [low, pitchDiameter] = [basicMinorDiameter(thread), basicPitchDiameter(thread)];
  return {
    toleranceClass: `${grade}H`,
    minor: { min: low, max: low + minor[grade]! },
    pitchDiameter: { min: pitchDiameter, max: pitchDiameter + inner[grade]! },
  };
}
