import { type BallBearing, type Basis, bearingLookup } from './ball-bearing.ts';
import { atLeast, defineTable, larger, unique } from './table.ts';

/**
 * Ball bearings of the R series (ABMA 12.2) and of the 1600 series, in millimetres as the catalogues print them: 3.967 is
 * the catalogues' 0.1562 in for 5/32, so a bore stated as 3.969 lies within 3 micrometres of it.
 *
 * Sources: NSK and FBJ catalogues, sizes above 12 mm bore checked against an open library. Where they differ: R14 open is
 * 9.525 wide (FBJ prints 9.252, a swap of figures: 3/8 in). FR3 open is 4.978 wide, unlike R3 open; FR6 open is 7.142 at NSK
 * and 5.558 at FBJ, not settled. R09, R3A and the 1600 series have one source, which
 * prints 1.125 for the 1-1/4 inch bore of 1654. Rows marked `memory` are from memory of the same catalogues.
 */
const table = defineTable(
  'R-series ball bearings',
  'NSK and FBJ catalogues; memory where marked',
  [
    'designation: text',
    'bore: mm',
    'od: mm',
    'widthOpen: mm?',
    'widthShielded: mm?',
    'flangeOdOpen: mm?',
    'flangeWidthOpen: mm?',
    'flangeOdShielded: mm?',
    'flangeWidthShielded: mm?',
    'basis: text',
  ],
  [
    ['R09', 1.016, 3.175, 1.191, null, null, null, null, null, 'catalogue'],
    ['R0', 1.191, 3.967, 1.588, 2.38, 5.156, 0.33, 5.156, 0.79, 'catalogue'],
    ['R1', 1.397, 4.762, 1.984, 2.779, 5.944, 0.58, 5.944, 0.79, 'catalogue'],
    ['R1-4', 1.984, 6.35, 2.38, 3.571, 7.518, 0.58, 7.518, 0.79, 'catalogue'],
    ['R133', 2.38, 4.762, 1.588, 2.38, 5.944, 0.46, 5.944, 0.79, 'memory'],
    ['R1-5', 2.38, 7.938, 2.779, 3.571, 9.119, 0.58, 9.119, 0.79, 'memory'],
    ['R144', 3.175, 6.35, 2.38, 2.779, 7.518, 0.58, 7.518, 0.79, 'catalogue'],
    ['R2-5', 3.175, 7.938, 2.779, 3.571, 9.119, 0.58, 9.119, 0.79, 'catalogue'],
    ['R2-6', 3.175, 9.525, 2.779, 3.571, 10.719, 0.58, 10.719, 0.79, 'memory'],
    ['R2', 3.175, 9.525, 3.967, 3.967, 11.176, 0.76, 11.176, 0.76, 'catalogue'],
    ['R2A', 3.175, 12.7, 4.366, 4.366, null, null, null, null, 'catalogue'],
    ['R155', 3.967, 7.938, 2.779, 3.175, 9.119, 0.58, 9.119, 0.91, 'catalogue'],
    ['R156', 4.762, 7.938, 2.779, 3.175, 9.119, 0.58, 9.119, 0.91, 'catalogue'],
    ['R166', 4.762, 9.525, 3.175, 3.175, 10.719, 0.58, 10.719, 0.79, 'memory'],
    ['R3', 4.762, 12.7, 3.967, 4.978, 14.351, 1.07, 14.351, 1.07, 'catalogue'],
    ['R3A', 4.762, 15.875, 4.978, 4.978, null, null, null, null, 'catalogue'],
    ['1601', 4.762, 17.462, 6.35, 6.35, null, null, null, null, 'single'],
    ['R168', 6.35, 9.525, 3.175, 3.175, 10.719, 0.58, 10.719, 0.91, 'memory'],
    ['R188', 6.35, 12.7, 3.175, 4.762, 13.894, 0.58, 13.894, 1.14, 'catalogue'],
    ['R4', 6.35, 15.875, 4.978, 4.978, 17.526, 1.07, 17.526, 1.07, 'catalogue'],
    ['1602', 6.35, 17.462, 6.35, 6.35, null, null, null, null, 'single'],
    ['R4A', 6.35, 19.05, 5.558, 7.142, null, null, null, null, 'catalogue'],
    ['R1810', 7.938, 12.7, 3.967, 3.967, 13.894, 0.79, 13.894, 0.79, 'catalogue'],
    ['1603', 7.938, 22.225, 7.142, 7.142, null, null, null, null, 'single'],
    ['1605', 7.938, 23.019, 7.938, 7.938, null, null, null, null, 'single'],
    ['R1038', 9.525, 15.875, 3.967, 3.967, null, null, null, null, 'memory'],
    ['R6', 9.525, 22.225, 5.558, 7.142, 24.613, 1.57, 24.613, 1.57, 'catalogue'],
    ['1604', 9.525, 22.225, 7.142, 7.142, null, null, null, null, 'single'],
    ['1606', 9.525, 23.019, 7.938, 7.938, null, null, null, null, 'single'],
    ['1614', 9.525, 28.575, 9.525, 9.525, null, null, null, null, 'single'],
    ['1607', 11.112, 23.019, 7.938, 7.938, null, null, null, null, 'single'],
    ['1615', 11.112, 28.575, 9.525, 9.525, null, null, null, null, 'single'],
    ['1620', 11.112, 34.925, 11.112, 11.112, null, null, null, null, 'single'],
    ['R1212', 12.7, 19.05, 3.967, 3.967, null, null, null, null, 'memory'],
    ['R8', 12.7, 28.575, 6.35, 7.938, 31.12, 1.575, 31.12, 1.575, 'catalogue'],
    ['1616', 12.7, 28.575, 9.525, 9.525, null, null, null, null, 'single'],
    ['1621', 12.7, 34.925, 11.112, 11.112, null, null, null, null, 'single'],
    ['1622', 14.288, 34.925, 11.112, 11.112, null, null, null, null, 'single'],
    ['R10', 15.875, 34.925, 7.142, 8.733, null, null, null, null, 'memory'],
    ['1623', 15.875, 34.925, 11.112, 11.112, null, null, null, null, 'single'],
    ['1628', 15.875, 41.275, 12.7, 12.7, null, null, null, null, 'single'],
    ['1633', 15.875, 44.45, 12.7, 12.7, null, null, null, null, 'single'],
    ['R12', 19.05, 41.275, 7.938, 11.113, null, null, null, null, 'catalogue'],
    ['1630', 19.05, 41.275, 12.7, 12.7, null, null, null, null, 'single'],
    ['1635', 19.05, 44.45, 12.7, 12.7, null, null, null, null, 'single'],
    ['1638', 19.05, 50.8, 14.288, 14.288, null, null, null, null, 'single'],
    ['R14', 22.225, 47.625, 9.525, 12.7, null, null, null, null, 'catalogue'],
    ['1640', 22.225, 50.8, 14.288, 14.288, null, null, null, null, 'single'],
    ['R16', 25.4, 50.8, 9.525, 12.7, null, null, null, null, 'catalogue'],
    ['1641', 25.4, 50.8, 14.288, 14.288, null, null, null, null, 'single'],
    ['R18', 28.575, 53.975, 9.525, 12.7, null, null, null, null, 'memory'],
    ['1652', 28.575, 63.5, 15.875, 15.875, null, null, null, null, 'single'],
    ['R20', 31.75, 57.15, 9.525, 12.7, null, null, null, null, 'memory'],
    ['1654', 31.75, 63.5, 15.875, 15.875, null, null, null, null, 'single'],
    ['R22', 34.925, 63.5, 11.112, 14.288, null, null, null, null, 'memory'],
    ['R24', 38.1, 66.675, 11.112, 14.288, null, null, null, null, 'memory'],
  ],
  unique('designation'),
  larger('od', 'bore'),
  atLeast('widthShielded', 'widthOpen'),
  larger('flangeOdOpen', 'od'),
  larger('flangeOdShielded', 'od'),
  larger('widthOpen', 'flangeWidthOpen'),
  larger('widthShielded', 'flangeWidthShielded'),
  (row, previous) => (previous && previous.bore > row.bore ? 'bore is below that of the row above' : null),
  row => (plainNumberFits(row.designation, row.bore) ? null : 'the number does not mean this bore'),
);

/** A plain R number counts its bore in sixteenths of an inch: R4 is 1/4 in. R0, R1 and numbers with more figures do not. */
function plainNumberFits(designation: string, bore: number): boolean {
  const sixteenths = /^R([2-8]|1[02468]|2[024])A?$/.exec(designation)?.[1];
  return sixteenths === undefined || Math.abs(bore - (Number(sixteenths) * 25_400) / 16) <= 1;
}

/** All published sizes, smallest bore first; lengths in micrometres. */
export const inchBearings: readonly BallBearing[] = table.rows.map(row => ({
  ...row,
  basis: row.basis as Basis,
}));

/** Other numbers that makers print for the same bearing (NSK). */
const printedOtherwise = { R4B: 'R4', R4AA: 'R4A', R168B: 'R168' } as const;

const lookup = bearingLookup(
  inchBearings,
  new Map(
    Object.entries(printedOtherwise).map(([other, designation]) => [
      other,
      inchBearings.find(bearing => bearing.designation === designation)!,
    ]),
  ),
);

/** The bearing of a bare R or 1600 number in capitals, as `R188`. */
export const inchBearingByDesignation = lookup.byDesignation;

/** Bearings of a bore, outside diameter and, where given, width (micrometres), each with the forms that have that width. */
export const inchBearingsByDims = lookup.byDims;

/** Bearings of a bore in micrometres, thinnest first. */
export const inchBearingsByBore = lookup.byBore;
