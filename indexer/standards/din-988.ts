import { mm, type Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, larger, rising } from './table.ts';

/**
 * DIN 988 shim rings: inside and outside diameters, and the thicknesses they are made in.
 *
 * Sources: diameters marked `library` from an open CAD file, the rest and the whole list of thicknesses from memory,
 * unverified. 0.1 to 0.5 and 1.0 are what is usually stocked (common practice).
 */
const table = defineTable(
  'DIN 988 shim rings',
  'an open CAD file; memory where marked',
  ['id: mm', 'od: mm', 'basis: text'],
  [
    [3, 6, 'library'],
    [4, 8, 'library'],
    [5, 10, 'library'],
    [6, 12, 'memory'],
    [7, 13, 'library'],
    [8, 14, 'library'],
    [9, 15, 'memory'],
    [10, 16, 'library'],
    [11, 17, 'memory'],
    [12, 18, 'library'],
    [13, 19, 'memory'],
    [14, 20, 'memory'],
    [15, 21, 'library'],
    [15, 22, 'memory'],
    [16, 22, 'library'],
    [17, 24, 'memory'],
    [18, 25, 'memory'],
    [19, 26, 'memory'],
    [20, 28, 'library'],
    [22, 30, 'memory'],
    [22, 32, 'memory'],
    [25, 35, 'memory'],
    [25, 36, 'memory'],
    [26, 37, 'memory'],
    [28, 40, 'memory'],
    [30, 42, 'memory'],
    [32, 45, 'memory'],
    [35, 45, 'memory'],
    [36, 45, 'memory'],
    [37, 47, 'memory'],
    [40, 50, 'memory'],
    [42, 52, 'memory'],
    [45, 55, 'memory'],
    [45, 56, 'memory'],
    [48, 60, 'memory'],
    [50, 62, 'memory'],
  ],
  rising(['id', 'od']),
  larger('od', 'id'),
);

/** A shim ring of DIN 988; lengths in micrometres. */
export type ShimRing = (typeof table.rows)[number];

/** All shim rings, smallest first. */
export const shimRings: readonly ShimRing[] = table.rows;

/** Thicknesses in micrometres, thinnest first (DIN 988, from memory). */
export const shimThicknesses: readonly Um[] = [
  0.1, 0.15, 0.2, 0.25, 0.3, 0.5, 1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2,
].map(mm);

/** The thicknesses usually on the shelf, in micrometres (common practice). */
export const stockedShimThicknesses: readonly Um[] = [0.1, 0.15, 0.2, 0.3, 0.5, 1].map(mm);

const byDims = indexBy(shimRings, ring => `${ring.id}x${ring.od}`);
const byId = groupBy(shimRings, ring => ring.id);

/** The shim ring of an inside and outside diameter, in micrometres. */
export const shimRing = (id: Um, od: Um): ShimRing | undefined => byDims.get(`${id}x${od}`);

/** The shim rings that fit a shaft, in micrometres, narrowest first. */
export const shimRingsForShaft = (id: Um): readonly ShimRing[] => byId.get(id) ?? [];
