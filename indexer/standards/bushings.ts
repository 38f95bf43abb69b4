import { mm, type Um } from '../units/length.ts';
import { defineTable, larger, rising } from './table.ts';

/**
 * Plain bushings: sintered (ISO 2795, formerly DIN 1850-3) and wrapped (ISO 3547), by inside and outside diameter, with the
 * lengths they are made in. Source: memory of both standards, unverified.
 */
const table = defineTable(
  'plain bushings',
  'ISO 2795 and ISO 3547 from memory, unverified',
  ['standard: text', 'id: mm', 'od: mm', 'lengths: text'],
  [
    ['ISO 2795', 1, 3, '1 2'],
    ['ISO 2795', 1.5, 4, '1 2'],
    ['ISO 2795', 2, 5, '2 3'],
    ['ISO 2795', 2.5, 6, '3'],
    ['ISO 2795', 3, 6, '4'],
    ['ISO 2795', 4, 8, '3 4 6'],
    ['ISO 2795', 5, 9, '4 5 8'],
    ['ISO 2795', 6, 10, '4 6 10'],
    ['ISO 2795', 7, 11, '5 8 10'],
    ['ISO 2795', 8, 12, '6 8 12'],
    ['ISO 2795', 9, 14, '6 10 14'],
    ['ISO 2795', 10, 14, '8 10 16'],
    ['ISO 2795', 10, 16, '8 10 16'],
    ['ISO 2795', 12, 16, '8 12 20'],
    ['ISO 2795', 12, 18, '8 12 20'],
    ['ISO 2795', 14, 18, '10 14 20'],
    ['ISO 2795', 14, 20, '10 14 20'],
    ['ISO 2795', 15, 19, '10 15 25'],
    ['ISO 2795', 15, 21, '10 15 25'],
    ['ISO 2795', 16, 20, '12 16 25'],
    ['ISO 2795', 16, 22, '12 16 25'],
    ['ISO 2795', 18, 22, '12 18 30'],
    ['ISO 2795', 18, 24, '12 18 30'],
    ['ISO 2795', 20, 24, '15 20 25'],
    ['ISO 2795', 20, 26, '15 20 25'],
    ['ISO 3547', 2, 3.5, '3 5'],
    ['ISO 3547', 3, 4.5, '3 5 6'],
    ['ISO 3547', 4, 5.5, '3 4 6 10'],
    ['ISO 3547', 5, 7, '5 8 10'],
    ['ISO 3547', 6, 8, '6 8 10'],
    ['ISO 3547', 7, 9, '10 12'],
    ['ISO 3547', 8, 10, '6 8 10 12'],
    ['ISO 3547', 10, 12, '6 8 10 12 15 20'],
    ['ISO 3547', 12, 14, '8 10 12 15 20 25'],
    ['ISO 3547', 13, 15, '10 20'],
    ['ISO 3547', 14, 16, '10 12 15 20 25'],
    ['ISO 3547', 15, 17, '10 12 15 20 25'],
    ['ISO 3547', 16, 18, '10 12 15 20 25'],
    ['ISO 3547', 18, 20, '15 20 25'],
    ['ISO 3547', 20, 23, '10 15 20 25 30'],
  ],
  larger('od', 'id'),
  rising(['id', 'od'], ['standard']),
  // A wrapped bushing is rolled from strip: 0.75 to 1 mm thick up to 18 mm, 1.5 from 20 mm.
  row =>
    row.standard !== 'ISO 3547' || [1500, 2000, 3000].includes(row.od - row.id)
      ? null
      : 'no strip is that thick',
);

/** A plain bushing; lengths in micrometres. */
export interface Bushing {
  readonly standard: 'ISO 2795' | 'ISO 3547';
  readonly id: Um;
  readonly od: Um;
  readonly length: Um;
}

/** All bushings, one for each length, by standard and size. */
export const bushings: readonly Bushing[] = table.rows.flatMap(({ standard, id, od, lengths }) =>
  lengths
    .split(' ')
    .map(length => ({ standard: standard as Bushing['standard'], id, od, length: mm(Number(length)) })),
);
