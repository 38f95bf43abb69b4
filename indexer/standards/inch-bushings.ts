import { inch, type Um } from '../units/length.ts';
import { defineTable, larger, unique } from './table.ts';

/**
 * Plain sintered bushings of inch shafts, by inside and outside diameter, with the lengths that are stocked. Source: memory of
 * bearing dealers' lists, unverified.
 */
const table = defineTable(
  'inch bushings',
  'dealers’ lists from memory, unverified',
  ['id: inch', 'od: inch', 'lengths: text'],
  [
    [1 / 8, 3 / 16, '2 3 4 6'],
    [1 / 8, 1 / 4, '2 3 4 6'],
    [3 / 16, 1 / 4, '3 4 6 8'],
    [3 / 16, 5 / 16, '3 4 6 8'],
    [1 / 4, 5 / 16, '4 6 8 12'],
    [1 / 4, 3 / 8, '4 6 8 12 16'],
    [5 / 16, 3 / 8, '4 6 8 12'],
    [5 / 16, 7 / 16, '4 6 8 12 16'],
    [3 / 8, 1 / 2, '4 6 8 12 16'],
    [3 / 8, 9 / 16, '6 8 12 16'],
    [7 / 16, 9 / 16, '6 8 12 16'],
    [1 / 2, 5 / 8, '6 8 12 16 20'],
    [1 / 2, 3 / 4, '8 12 16 20'],
    [5 / 8, 3 / 4, '8 12 16 20'],
    [5 / 8, 7 / 8, '8 12 16 20'],
    [3 / 4, 7 / 8, '8 12 16 20'],
    [3 / 4, 1, '8 12 16 20'],
  ],
  larger('od', 'id'),
  unique('id', 'od'),
);

/** A bushing of an inch shaft; lengths in micrometres. */
export interface InchBushing {
  readonly id: Um;
  readonly od: Um;
  readonly length: Um;
}

/** All inch bushings, each length by itself; lengths are told in sixteenths. */
export const inchBushings: readonly InchBushing[] = table.rows.flatMap(({ id, od, lengths }) =>
  lengths.split(' ').map(sixteenths => ({ id, od, length: inch(Number(sixteenths) / 16) })),
);
