import type { Um } from '../units/length.ts';
import { type Check, defineTable, rising } from './table.ts';

/**
 * Radial play inside a deep-groove ball bearing before it is fitted, in micrometres.
 *
 * Sources: groups C2 to C4 (ISO 5753-1) up to 10 mm bore and the miniature groups MC1 to MC6 from two bearing makers' handbooks;
 * C2 to C4 above 10 mm from memory. C3 and MC3 are not the same: MC3 is the normal play of a miniature bearing, C3 is a loose one.
 */

/** Each group begins and ends above the one before it. */
const looser: Check<Readonly<Record<'C2' | 'CN' | 'C3' | 'C4', string>>> = row => {
  const ends = [row.C2, row.CN, row.C3, row.C4].map(text => text.split(' ').map(Number));
  return ends.every(([low, high], at) => low! < high! && (at === 0 || ends[at - 1]![1]! < high!))
    ? null
    : 'a looser group is not looser';
};

const ordinary = defineTable(
  'ISO 5753-1 radial play by bore',
  'two bearing makers’ handbooks up to 10 mm, memory above',
  ['to: mm', 'C2: text', 'CN: text', 'C3: text', 'C4: text'],
  [
    [10, '0 7', '2 13', '8 23', '14 29'],
    [18, '0 9', '3 18', '11 25', '18 33'],
    [24, '0 10', '5 20', '13 28', '20 36'],
    [30, '1 11', '5 20', '13 28', '23 41'],
    [40, '1 11', '6 20', '15 33', '28 46'],
    [50, '1 11', '6 23', '18 36', '30 51'],
  ],
  rising(['to']),
  looser,
);

const miniature: Readonly<Record<string, readonly [number, number]>> = {
  MC1: [0, 5],
  MC2: [3, 8],
  MC3: [5, 10],
  MC4: [8, 13],
  MC5: [13, 20],
  MC6: [20, 28],
};

/** The groups by name, tight to loose. */
export const playGroups: readonly string[] = ['C2', 'CN', 'C3', 'C4', ...Object.keys(miniature)];

/** Least and greatest radial play, in micrometres. */
export interface Play {
  readonly min: number;
  readonly max: number;
}

/** Radial play of a group at a bore in micrometres; null for a group or bore outside the tables. Ends at 50 mm. */
export function radialPlay(group: string, bore: Um): Play | null {
  const small = miniature[group];
  // The miniature groups are for bearings below 10 mm bore.
  if (small) return bore < 10_000 ? { min: small[0], max: small[1] } : null;
  const row = ordinary.rows.find(range => bore <= range.to);
  if (!row || !['C2', 'CN', 'C3', 'C4'].includes(group)) return null;
  const [min, max] = row[group as 'CN'].split(' ').map(Number) as [number, number];
  return { min, max };
}

/** The group a bearing has when nothing is printed on it: MC3 below 10 mm bore, CN above. */
export const usualGroup = (bore: Um): string => (bore < 10_000 ? 'MC3' : 'CN');

/** Axial play from radial play: 8 to 10 times (a bearing maker's handbook). */
export const axialPlay = ({ min, max }: Play): Play => ({ min: 8 * min, max: 10 * max });
