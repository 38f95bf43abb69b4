import type { Um } from '../units/length.ts';
import { atLeast, defineTable, indexBy, larger, rising } from './table.ts';

/**
 * Spherical plain bearings of dimension series E (ISO 12240-1, formerly DIN 648): `width` is that of the inner ring, `outer` that of
 * the outer one. GE8E, GE8ES and GE8C have one outline.
 *
 * Sources: 10 mm up in one maker's catalogue (FBJ, series GE and GE-C alike); below from memory.
 */
const table = defineTable(
  'ISO 12240-1 spherical plain bearings',
  'FBJ catalogue from 10 mm up; below from memory',
  ['bore: mm', 'od: mm', 'width: mm', 'outer: mm'],
  [
    [4, 12, 5, 3],
    [5, 14, 6, 4],
    [6, 14, 6, 4],
    [8, 16, 8, 5],
    [10, 19, 9, 6],
    [12, 22, 10, 7],
    [15, 26, 12, 9],
    [17, 30, 14, 10],
    [20, 35, 16, 12],
    [25, 42, 20, 16],
    [30, 47, 22, 18],
    [35, 55, 25, 20],
    [40, 62, 28, 22],
    [45, 68, 32, 25],
    [50, 75, 35, 28],
  ],
  rising(['bore']),
  larger('od', 'bore'),
  larger('width', 'outer'),
  atLeast('bore', 'outer'),
);

/** A spherical plain bearing; lengths in micrometres. */
export type SphericalBearing = (typeof table.rows)[number];

/** All spherical plain bearings, smallest first. */
export const sphericalBearings: readonly SphericalBearing[] = table.rows;

const byBore = indexBy(sphericalBearings, bearing => bearing.bore);

/** The spherical plain bearing of series E on a bore in micrometres. */
export const sphericalBearing = (bore: Um): SphericalBearing | undefined => byBore.get(bore);
