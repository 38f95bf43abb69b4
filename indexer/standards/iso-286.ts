import { mm, type Um } from '../units/length.ts';
import { defineTable, rising } from './table.ts';

/**
 * Limits and fits (ISO 286): tolerance grades IT4 to IT17 and deviations of shafts and holes, up to 120 mm.
 *
 * Sources: IT5 to IT11 up to 50 mm and the letters f to p from a public table of deviations, the NSK fit tables and a
 * JIS B 0401 page, checked against each other; IT4, IT12 up, all above 50 mm, and the letters d, e, r, s from memory.
 * Rejected: a page with h6 of 12 for 10 to 18 mm (11), a program with IT9 of 20 for 3 to 6 mm (30).
 */

/** Grades as multiples of the tolerance unit i = 0.45 D^(1/3) + 0.001 D (ISO 286-1). IT4 has no multiple of its own. */
const multiples = {
  IT5: 7,
  IT6: 10,
  IT7: 16,
  IT8: 25,
  IT9: 40,
  IT10: 64,
  IT11: 100,
  IT12: 160,
  IT13: 250,
  IT14: 400,
  IT15: 640,
  IT16: 1000,
  IT17: 1600,
} as const;

type Grade = 'IT4' | keyof typeof multiples;

/** The tolerance unit i of a range, in micrometres; its D is the geometric mean of the range, in millimetres. */
function toleranceUnit(over: Um, to: Um): number {
  const mean = Math.sqrt(over * to) / 1000;
  return 0.45 * Math.cbrt(mean) + 0.001 * mean;
}

const grades = defineTable(
  'ISO 286 tolerance grades',
  'public deviation table, NSK fit tables, JIS B 0401 page; memory for IT4, IT12 up and above 50 mm',
  [
    'to: mm',
    'IT4: um',
    'IT5: um',
    'IT6: um',
    'IT7: um',
    'IT8: um',
    'IT9: um',
    'IT10: um',
    'IT11: um',
    'IT12: um',
    'IT13: um',
    'IT14: um',
    'IT15: um',
    'IT16: um',
    'IT17: um',
  ],
  [
    [3, 3, 4, 6, 10, 14, 25, 40, 60, 100, 140, 250, 400, 600, 1000],
    [6, 4, 5, 8, 12, 18, 30, 48, 75, 120, 180, 300, 480, 750, 1200],
    [10, 4, 6, 9, 15, 22, 36, 58, 90, 150, 220, 360, 580, 900, 1500],
    [18, 5, 8, 11, 18, 27, 43, 70, 110, 180, 270, 430, 700, 1100, 1800],
    [30, 6, 9, 13, 21, 33, 52, 84, 130, 210, 330, 520, 840, 1300, 2100],
    [50, 7, 11, 16, 25, 39, 62, 100, 160, 250, 390, 620, 1000, 1600, 2500],
    [80, 8, 13, 19, 30, 46, 74, 120, 190, 300, 460, 740, 1200, 1900, 3000],
    [120, 10, 15, 22, 35, 54, 87, 140, 220, 350, 540, 870, 1400, 2200, 3500],
  ],
  rising(['to']),
  (row, previous) => {
    const unit = toleranceUnit(previous?.to ?? mm(1), row.to);
    for (const [name, multiple] of Object.entries(multiples)) {
      const [value, formula] = [row[name as Grade], multiple * unit];
      // Up to 3 mm the standard departs from its own formula; above, it rounds.
      const room = row.to === mm(3) ? formula * 0.16 : Math.max(0.75, formula * 0.05);
      if (Math.abs(value - formula) > room)
        return `${name} ${value} is off the formula's ${formula.toFixed(1)}`;
    }
    return row.IT4 < row.IT5 ? null : 'IT4 is not below IT5';
  },
);

/** Fundamental deviations in micrometres: d to g are the upper one of a shaft, k to s the lower one, j5 to j7 the lower one by grade. */
const fundamentals = defineTable(
  'ISO 286 fundamental deviations of shafts',
  'public deviation table and JIS B 0401 page; d, e, r, s and above 50 mm from memory',
  [
    'to: mm',
    'd: um',
    'e: um',
    'f: um',
    'g: um',
    'h: um',
    'j5: um',
    'j6: um',
    'j7: um',
    'k: um',
    'm: um',
    'n: um',
    'p: um',
    'r: um',
    's: um',
  ],
  [
    [3, -20, -14, -6, -2, 0, -2, -2, -4, 0, 2, 4, 6, 10, 14],
    [6, -30, -20, -10, -4, 0, -2, -2, -4, 1, 4, 8, 12, 15, 19],
    [10, -40, -25, -13, -5, 0, -2, -2, -5, 1, 6, 10, 15, 19, 23],
    [18, -50, -32, -16, -6, 0, -3, -3, -6, 1, 7, 12, 18, 23, 28],
    [30, -65, -40, -20, -7, 0, -4, -4, -8, 2, 8, 15, 22, 28, 35],
    [50, -80, -50, -25, -9, 0, -5, -5, -10, 2, 9, 17, 26, 34, 43],
    [65, -100, -60, -30, -10, 0, -7, -7, -12, 2, 11, 20, 32, 41, 53],
    [80, -100, -60, -30, -10, 0, -7, -7, -12, 2, 11, 20, 32, 43, 59],
    [100, -120, -72, -36, -12, 0, -9, -9, -15, 3, 13, 23, 37, 51, 71],
    [120, -120, -72, -36, -12, 0, -9, -9, -15, 3, 13, 23, 37, 54, 79],
  ],
  rising(['to']),
  ({ d, e, f, g, h, k, m, n, p, r, s }) =>
    [d, e, f, g, h, k, m, n, p, r, s].every((value, at, all) => at === 0 || value >= all[at - 1]!)
      ? null
      : 'a later letter lies lower',
  (row, previous) =>
    previous &&
    Object.entries(row).some(([key, value]) => Math.abs(value) < Math.abs(previous[key as keyof typeof row]))
      ? 'does not grow with the size'
      : null,
);

/** Upper deviation of holes J6 to J8, in micrometres, by range: the older form of JS. */
const holesJ: Readonly<Record<string, readonly number[]>> = {
  J6: [2, 5, 5, 6, 8, 10, 13, 13, 16, 16],
  J7: [4, 6, 8, 10, 12, 14, 18, 18, 22, 22],
  J8: [6, 10, 12, 15, 20, 24, 28, 28, 34, 34],
};

/** Upper and lower deviation from nominal, in micrometres; halves occur in js and JS. */
export interface Deviations {
  readonly upper: number;
  readonly lower: number;
}

/** The tolerance of a grade, 4 to 17, at a nominal size in micrometres; in micrometres. Null above 120 mm or for another grade. */
export function toleranceOf(grade: number, nominal: Um): number | null {
  const row = grades.rows.find(range => nominal > 0 && nominal <= range.to);
  return row?.[`IT${grade}` as Grade] ?? null;
}

/**
 * Deviations of a tolerance class (`h6`, `H7`, `js5`, `K6`) at a nominal size in micrometres, from the tables of ISO 286-2.
 * Null for a size above 120 mm and for a class that the standard or these tables do not have.
 */
export function deviations(toleranceClass: string, nominal: Um): Deviations | null {
  const [, letter, digits] = /^([d-hj-np-s]|js|[D-HJ-NP-S]|JS)(\d{1,2})$/.exec(toleranceClass) ?? [];
  const range = fundamentals.rows.findIndex(row => nominal > 0 && nominal <= row.to);
  const grade = Number(digits);
  const tolerance = toleranceOf(grade, nominal);
  if (letter === undefined || range < 0 || tolerance === null) return null;
  if (letter.toLowerCase() === 'js') return { upper: tolerance / 2, lower: -tolerance / 2 };
  if (letter === letter.toLowerCase()) return ofShaft(letter, grade, tolerance, range);
  return ofHole(letter, grade, tolerance, range, nominal);
}

function ofShaft(letter: string, grade: number, tolerance: number, range: number): Deviations | null {
  const row = fundamentals.rows[range]! as Readonly<Record<string, number>>;
  const deviation = row[letter === 'j' ? `j${grade}` : letter];
  if (deviation === undefined) return null;
  if (letter <= 'h') return { upper: deviation, lower: deviation - tolerance };
  // k has its lift in grades 4 to 7 alone.
  const lower = letter === 'k' && grade > 7 ? 0 : deviation;
  return { upper: lower + tolerance, lower };
}

/**
 * A hole mirrors the shaft of its letter. Above 3 mm, K, M and N up to grade 8 and P to S up to grade 7 are raised by the
 * difference to the next finer grade, so that H7/p6 and P7/h6 fit alike (ISO 286-1).
 */
function ofHole(
  letter: string,
  grade: number,
  tolerance: number,
  range: number,
  nominal: Um,
): Deviations | null {
  if (letter === 'J') {
    const upper = holesJ[`J${grade}`]?.[range];
    return upper === undefined ? null : { upper, lower: upper - tolerance };
  }
  const small = letter.toLowerCase();
  const shaft = (fundamentals.rows[range]! as Readonly<Record<string, number>>)[small];
  if (shaft === undefined) return null;
  if (small <= 'h') return { upper: tolerance - shaft, lower: 0 - shaft };
  const raised = nominal > mm(3) && grade <= (small <= 'n' ? 8 : 7);
  const finer = raised ? toleranceOf(grade - 1, nominal) : null;
  if (raised && finer === null) return null;
  // Beyond grade 8, K is not defined above 3 mm, and N is nought there.
  if (small === 'k' && grade > 8 && nominal > mm(3)) return null;
  const upper =
    small === 'n' && grade > 8 && nominal > mm(3) ? 0 : 0 - shaft + (finer === null ? 0 : tolerance - finer);
  return { upper, lower: upper - tolerance };
}
