import type { Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, larger } from './table.ts';

/**
 * Nuts: across flats and height. For lock nuts with an insert and cap nuts the height is the total.
 *
 * Sources: ISO 4032, 4035, 7040, DIN 934 and 985 in open CAD libraries, suppliers' pages beside them; rows marked `memory`
 * from memory of the standard. Where they differ: ISO 4035 M10 and M12 are 16 and 18 across flats (one gives DIN 439's 17 and
 * 19), DIN 985 M10 and M12 are 17 and 19 (one gives ISO's 16 and 18). ISO 4161 M10 is 15 across flats, as
 * DIN 6923; a later edition has 16. DIN 934, in older devices, is lower from M5 up and wider at M10 and M12 than ISO 4032.
 */
const table = defineTable(
  'nuts',
  'ISO 4032, 4035, 7040, DIN 934 and 985 in open CAD libraries; memory where marked',
  [
    'standard: text',
    'type: text',
    'thread: text',
    'acrossFlats: mm',
    'acrossFlatsMin: mm?',
    'height: mm',
    'heightMin: mm?',
    'basis: text',
  ],
  [
    ['ISO 4032', 'hex', 'M1.6', 3.2, 3.02, 1.3, 1.05, 'library'],
    ['ISO 4032', 'hex', 'M2', 4, 3.82, 1.6, 1.35, 'library'],
    ['ISO 4032', 'hex', 'M2.5', 5, 4.82, 2, 1.75, 'library'],
    ['ISO 4032', 'hex', 'M3', 5.5, 5.32, 2.4, 2.15, 'library'],
    ['ISO 4032', 'hex', 'M3.5', 6, 5.82, 2.8, 2.55, 'library'],
    ['ISO 4032', 'hex', 'M4', 7, 6.78, 3.2, 2.9, 'library'],
    ['ISO 4032', 'hex', 'M5', 8, 7.78, 4.7, 4.4, 'library'],
    ['ISO 4032', 'hex', 'M6', 10, 9.78, 5.2, 4.9, 'library'],
    ['ISO 4032', 'hex', 'M8', 13, 12.73, 6.8, 6.44, 'library'],
    ['ISO 4032', 'hex', 'M10', 16, 15.73, 8.4, 8.04, 'library'],
    ['ISO 4032', 'hex', 'M12', 18, 17.73, 10.8, 10.37, 'library'],
    ['ISO 4032', 'hex', 'M14', 21, 20.67, 12.8, 12.1, 'memory'],
    ['ISO 4032', 'hex', 'M16', 24, 23.67, 14.8, 14.1, 'memory'],
    ['ISO 4032', 'hex', 'M20', 30, 29.16, 18, 16.9, 'memory'],
    ['ISO 4035', 'jam', 'M1.6', 3.2, 3.02, 1, 0.75, 'library'],
    ['ISO 4035', 'jam', 'M2', 4, 3.82, 1.2, 0.95, 'library'],
    ['ISO 4035', 'jam', 'M2.5', 5, 4.82, 1.6, 1.35, 'library'],
    ['ISO 4035', 'jam', 'M3', 5.5, 5.32, 1.8, 1.55, 'library'],
    ['ISO 4035', 'jam', 'M3.5', 6, 5.82, 2, 1.75, 'library'],
    ['ISO 4035', 'jam', 'M4', 7, 6.78, 2.2, 1.95, 'library'],
    ['ISO 4035', 'jam', 'M5', 8, 7.78, 2.7, 2.45, 'library'],
    ['ISO 4035', 'jam', 'M6', 10, 9.78, 3.2, 2.9, 'library'],
    ['ISO 4035', 'jam', 'M8', 13, 12.73, 4, 3.7, 'library'],
    ['ISO 4035', 'jam', 'M10', 16, 15.73, 5, 4.7, 'library'],
    ['ISO 4035', 'jam', 'M12', 18, 17.73, 6, 5.7, 'library'],
    ['ISO 4035', 'jam', 'M14', 21, 20.67, 7, 6.42, 'memory'],
    ['ISO 4035', 'jam', 'M16', 24, 23.67, 8, 7.42, 'memory'],
    ['ISO 4035', 'jam', 'M20', 30, 29.16, 10, 9.1, 'memory'],
    ['ISO 7040', 'lock', 'M3', 5.5, 5.32, 4.5, 4.02, 'library'],
    ['ISO 7040', 'lock', 'M4', 7, 6.78, 6, 5.52, 'library'],
    ['ISO 7040', 'lock', 'M5', 8, 7.78, 6.8, 6.22, 'library'],
    ['ISO 7040', 'lock', 'M6', 10, 9.78, 8, 7.42, 'library'],
    ['ISO 7040', 'lock', 'M8', 13, 12.73, 9.5, 8.92, 'library'],
    ['ISO 7040', 'lock', 'M10', 16, 15.73, 11.9, 11.2, 'library'],
    ['ISO 7040', 'lock', 'M12', 18, 17.73, 14.9, 14.2, 'library'],
    ['ISO 7040', 'lock', 'M14', 21, 20.67, 17, 15.9, 'memory'],
    ['ISO 7040', 'lock', 'M16', 24, 23.67, 19.1, 17.8, 'memory'],
    ['DIN 985', 'lock', 'M2', 4, 3.82, 2.8, null, 'memory'],
    ['DIN 985', 'lock', 'M2.5', 5, 4.82, 3.8, null, 'memory'],
    ['DIN 985', 'lock', 'M3', 5.5, 5.32, 4, null, 'library'],
    ['DIN 985', 'lock', 'M4', 7, 6.78, 5, null, 'library'],
    ['DIN 985', 'lock', 'M5', 8, 7.78, 5, null, 'library'],
    ['DIN 985', 'lock', 'M6', 10, 9.78, 6, null, 'library'],
    ['DIN 985', 'lock', 'M7', 11, 10.73, 7.5, null, 'memory'],
    ['DIN 985', 'lock', 'M8', 13, 12.73, 8, null, 'library'],
    ['DIN 985', 'lock', 'M10', 17, 16.73, 10, null, 'library'],
    ['DIN 985', 'lock', 'M12', 19, 18.67, 12, null, 'library'],
    ['DIN 985', 'lock', 'M14', 22, 21.67, 14, null, 'memory'],
    ['DIN 985', 'lock', 'M16', 24, 23.67, 16, null, 'memory'],
    ['DIN 934', 'hex', 'M1', 2.5, null, 0.8, null, 'library'],
    ['DIN 934', 'hex', 'M1.2', 3, null, 1, null, 'library'],
    ['DIN 934', 'hex', 'M1.4', 3, null, 1.2, null, 'library'],
    ['DIN 934', 'hex', 'M1.6', 3.2, null, 1.3, null, 'library'],
    ['DIN 934', 'hex', 'M1.7', 3.5, null, 1.4, null, 'memory'],
    ['DIN 934', 'hex', 'M2', 4, null, 1.6, null, 'library'],
    ['DIN 934', 'hex', 'M2.3', 4.5, null, 1.8, null, 'memory'],
    ['DIN 934', 'hex', 'M2.5', 5, null, 2, null, 'library'],
    ['DIN 934', 'hex', 'M2.6', 5, null, 2, null, 'memory'],
    ['DIN 934', 'hex', 'M3', 5.5, null, 2.4, null, 'library'],
    ['DIN 934', 'hex', 'M3.5', 6, null, 2.8, null, 'memory'],
    ['DIN 934', 'hex', 'M4', 7, null, 3.2, null, 'library'],
    ['DIN 934', 'hex', 'M5', 8, null, 4, null, 'library'],
    ['DIN 934', 'hex', 'M6', 10, null, 5, null, 'library'],
    ['DIN 934', 'hex', 'M7', 11, null, 5.5, null, 'memory'],
    ['DIN 934', 'hex', 'M8', 13, null, 6.5, null, 'library'],
    ['DIN 934', 'hex', 'M10', 17, null, 8, null, 'library'],
    ['DIN 934', 'hex', 'M12', 19, null, 10, null, 'library'],
    ['DIN 934', 'hex', 'M14', 22, null, 11, null, 'memory'],
    ['DIN 934', 'hex', 'M16', 24, null, 13, null, 'memory'],
    ['DIN 934', 'hex', 'M20', 30, null, 16, null, 'memory'],
    ['DIN 439-B', 'jam', 'M10', 17, 16.73, 5, 4.7, 'memory'],
    ['DIN 439-B', 'jam', 'M12', 19, 18.67, 6, 5.7, 'memory'],
    ['DIN 439-B', 'jam', 'M14', 22, 21.67, 7, 6.42, 'memory'],
    ['DIN 982', 'lock', 'M5', 8, 7.78, 6.3, null, 'memory'],
    ['DIN 982', 'lock', 'M6', 10, 9.78, 8, null, 'memory'],
    ['DIN 982', 'lock', 'M8', 13, 12.73, 9.5, null, 'memory'],
    ['DIN 982', 'lock', 'M10', 17, 16.73, 11.5, null, 'memory'],
    ['DIN 982', 'lock', 'M12', 19, 18.67, 14, null, 'memory'],
    ['DIN 1587', 'cap', 'M3', 5.5, 5.32, 7, null, 'memory'],
    ['DIN 1587', 'cap', 'M4', 7, 6.78, 8, null, 'memory'],
    ['DIN 1587', 'cap', 'M5', 8, 7.78, 10, null, 'memory'],
    ['DIN 1587', 'cap', 'M6', 10, 9.78, 12, null, 'memory'],
    ['DIN 1587', 'cap', 'M8', 13, 12.73, 15, null, 'memory'],
    ['DIN 1587', 'cap', 'M10', 17, 16.73, 18, null, 'memory'],
    ['DIN 1587', 'cap', 'M12', 19, 18.67, 22, null, 'memory'],
    ['ISO 4161', 'flange', 'M5', 8, 7.78, 5, 4.7, 'memory'],
    ['ISO 4161', 'flange', 'M6', 10, 9.78, 6, 5.7, 'memory'],
    ['ISO 4161', 'flange', 'M8', 13, 12.73, 8, 7.64, 'memory'],
    ['ISO 4161', 'flange', 'M10', 15, 14.73, 10, 9.64, 'memory'],
    ['ISO 4161', 'flange', 'M12', 18, 17.73, 12, 11.57, 'memory'],
    ['DIN 562', 'square', 'M2', 4, 3.7, 1.2, null, 'memory'],
    ['DIN 562', 'square', 'M2.5', 5, 4.7, 1.6, null, 'memory'],
    ['DIN 562', 'square', 'M3', 5.5, 5.2, 1.8, null, 'memory'],
    ['DIN 562', 'square', 'M4', 7, 6.64, 2.2, null, 'memory'],
    ['DIN 562', 'square', 'M5', 8, 7.64, 2.7, null, 'memory'],
    ['DIN 562', 'square', 'M6', 10, 9.64, 3.2, null, 'memory'],
    ['DIN 562', 'square', 'M8', 13, 12.57, 4, null, 'memory'],
    ['DIN 562', 'square', 'M10', 17, 16.57, 5, null, 'memory'],
    ['DIN 557', 'square', 'M5', 8, 7.64, 4, null, 'memory'],
    ['DIN 557', 'square', 'M6', 10, 9.64, 5, null, 'memory'],
    ['DIN 557', 'square', 'M8', 13, 12.57, 6.5, null, 'memory'],
    ['DIN 557', 'square', 'M10', 17, 16.57, 8, null, 'memory'],
    ['DIN 935', 'castle', 'M4', 7, 6.78, 5, null, 'memory'],
    ['DIN 935', 'castle', 'M5', 8, 7.78, 6, null, 'memory'],
    ['DIN 935', 'castle', 'M6', 10, 9.78, 7.5, null, 'memory'],
    ['DIN 935', 'castle', 'M8', 13, 12.73, 9.5, null, 'memory'],
    ['DIN 935', 'castle', 'M10', 17, 16.73, 12, null, 'memory'],
    ['DIN 935', 'castle', 'M12', 19, 18.67, 15, null, 'memory'],
  ],
  larger('acrossFlats', 'acrossFlatsMin'),
  larger('height', 'heightMin'),
  row => (row.acrossFlats > diameterOf(row.thread) * 1.4 ? null : 'no wall left around the thread'),
  (row, previous) =>
    previous?.standard === row.standard && diameterOf(previous.thread) >= diameterOf(row.thread)
      ? 'thread does not rise'
      : null,
  (row, previous) =>
    previous?.standard === row.standard &&
    (previous.acrossFlats > row.acrossFlats || previous.height > row.height)
      ? 'smaller than the nut of a smaller thread'
      : null,
);

/** A nut; lengths in micrometres. */
export interface Nut {
  readonly standard: string;
  readonly type: 'hex' | 'jam' | 'lock' | 'cap' | 'flange' | 'square' | 'castle';
  readonly thread: string;
  /** Nominal and greatest across flats. */
  readonly acrossFlats: Um;
  readonly acrossFlatsMin: Um | null;
  /** Greatest height; the total one of lock and cap nuts. */
  readonly height: Um;
  readonly heightMin: Um | null;
  readonly basis: string;
}

/** All nuts, by standard and size. */
export const nuts: readonly Nut[] = table.rows.map(row => ({ ...row, type: row.type as Nut['type'] }));

/** Numbers that share the rows of another where they have none of their own. */
const sameAs: Readonly<Record<string, string>> = {
  'DIN 439': 'DIN 439-B',
  'DIN 439-B': 'ISO 4035',
  'ISO 8673': 'ISO 4032',
  'ISO 8675': 'ISO 4035',
  'ISO 10512': 'ISO 7040',
  'DIN 6923': 'ISO 4161',
  'DIN 6924': 'ISO 7040',
};

const byScrew = indexBy(nuts, nut => `${nut.standard} ${nut.thread}`);
const byThread = groupBy(nuts, nut => nut.thread);

/** The nut of a standard for a thread: `nutFor('DIN 934', 'M3')`. */
export function nutFor(standard: string, thread: string): Nut | undefined {
  const same = sameAs[standard];
  return byScrew.get(`${standard} ${thread}`) ?? (same === undefined ? undefined : nutFor(same, thread));
}

/** All nuts for a thread. */
export const nutsOf = (thread: string): readonly Nut[] => byThread.get(thread) ?? [];

function diameterOf(thread: string): Um {
  return Number(thread.slice(1)) * 1000;
}
