import type { Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, larger, unique } from './table.ts';

/**
 * Thrust bearings: miniature grooved (F..-..M), single direction (ISO 104, 511 to 514) and needle cages (AXK, without their
 * washers). They carry load along the shaft alone: equal outlines do not make one a radial bearing.
 *
 * Sources: 511 to 514 in two to five makers' catalogues (FBJ, SKF, NSK, NKE, KYK); F and AXK from memory, unverified.
 */
const table = defineTable(
  'thrust bearings',
  'ISO 104 in makers’ catalogues; F and AXK from memory',
  ['designation: text', 'bore: mm', 'od: mm', 'height: mm'],
  [
    ['F2-6M', 2, 6, 3],
    ['F3-8M', 3, 8, 3.5],
    ['F4-9M', 4, 9, 4],
    ['F4-10M', 4, 10, 4],
    ['F5-10M', 5, 10, 4],
    ['F5-11M', 5, 11, 4.5],
    ['F5-12M', 5, 12, 4],
    ['F6-11M', 6, 11, 4.5],
    ['F6-12M', 6, 12, 4.5],
    ['F6-14M', 6, 14, 5],
    ['F7-13M', 7, 13, 4.5],
    ['F7-15M', 7, 15, 5],
    ['F8-16M', 8, 16, 5],
    ['F8-19M', 8, 19, 7],
    ['F9-17M', 9, 17, 5],
    ['F9-20M', 9, 20, 7],
    ['F10-18M', 10, 18, 5.5],
    ['51100', 10, 24, 9],
    ['51101', 12, 26, 9],
    ['51102', 15, 28, 9],
    ['51103', 17, 30, 9],
    ['51104', 20, 35, 10],
    ['51105', 25, 42, 11],
    ['51106', 30, 47, 11],
    ['51107', 35, 52, 12],
    ['51108', 40, 60, 13],
    ['51109', 45, 65, 14],
    ['51110', 50, 70, 14],
    ['51200', 10, 26, 11],
    ['51201', 12, 28, 11],
    ['51202', 15, 32, 12],
    ['51203', 17, 35, 12],
    ['51204', 20, 40, 14],
    ['51205', 25, 47, 15],
    ['51206', 30, 52, 16],
    ['51207', 35, 62, 18],
    ['51208', 40, 68, 19],
    ['51209', 45, 73, 20],
    ['51210', 50, 78, 22],
    ['51305', 25, 52, 18],
    ['51306', 30, 60, 21],
    ['51307', 35, 68, 24],
    ['51308', 40, 78, 26],
    ['51309', 45, 85, 28],
    ['51310', 50, 95, 31],
    ['51405', 25, 60, 24],
    ['51406', 30, 70, 28],
    ['51407', 35, 80, 32],
    ['51408', 40, 90, 36],
    ['51409', 45, 100, 39],
    ['51410', 50, 110, 43],
    ['AXK0414', 4, 14, 2],
    ['AXK0515', 5, 15, 2],
    ['AXK0619', 6, 19, 2],
    ['AXK0821', 8, 21, 2],
    ['AXK1024', 10, 24, 2],
    ['AXK1226', 12, 26, 2],
    ['AXK1528', 15, 28, 2],
    ['AXK1730', 17, 30, 2],
    ['AXK2035', 20, 35, 2],
    ['AXK2542', 25, 42, 2],
    ['AXK3047', 30, 47, 2],
    ['AXK3552', 35, 52, 2],
    ['AXK4060', 40, 60, 3],
    ['AXK4565', 45, 65, 3],
    ['AXK5070', 50, 70, 3],
  ],
  unique('designation'),
  larger('od', 'bore'),
  larger('od', 'height'),
  row => (numberFits(row) ? null : 'the number does not mean these diameters'),
);

/** F3-8M is 3 x 8, AXK0821 is 8 x 21, 51104 has the bore code of ISO 15: 20. */
function numberFits({ designation, bore, od }: { designation: string; bore: Um; od: Um }): boolean {
  const named = /^F([\d.]+)-(\d+)M$/.exec(designation) ?? /^AXK(\d\d)(\d\d)$/.exec(designation);
  if (named) return Number(named[1]) * 1000 === bore && Number(named[2]) * 1000 === od;
  const code = Number(designation.slice(-2));
  return bore === ([10, 12, 15, 17][code] ?? code * 5) * 1000;
}

/** A thrust bearing; lengths in micrometres. */
export type ThrustBearing = (typeof table.rows)[number];

/** All thrust bearings. */
export const thrustBearings: readonly ThrustBearing[] = table.rows;

const byDesignation = indexBy(thrustBearings, bearing => bearing.designation);
const byDims = groupBy(thrustBearings, bearing => `${bearing.bore}x${bearing.od}x${bearing.height}`);

/** The thrust bearing of a number in capitals, with or without a cage suffix: `F8-16M`, `51100`, `AXK0821TN`. */
export const thrustBearing = (designation: string): ThrustBearing | undefined =>
  byDesignation.get(designation.replace(/(?:TN|TV)$/, ''));

/** Thrust bearings of a bore, outside diameter and height, in micrometres. */
export const thrustBearingsByDims = (bore: Um, od: Um, height: Um): readonly ThrustBearing[] =>
  byDims.get(`${bore}x${od}x${height}`) ?? [];
