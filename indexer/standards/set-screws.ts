import type { Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, larger, rising } from './table.ts';

/**
 * Hexagon socket set screws: flat point ISO 4026 (DIN 913), cone 4027 (914), dog 4028 (915), cup 4029 (916).
 *
 * Sources: keys from an open CAD library and suppliers' pages (one library gives 1.5 for the M2.5 cup point; 1.3 is right);
 * point diameters and ranges of lengths from memory, unverified. `flat` and `dog` share the point diameter; the cup's is
 * smaller, though some pages print the dog's for it. M1.4, M1.8, M14, M18 and M22 are
 * sold but outside the standards.
 */
const table = defineTable(
  'ISO 4026 to 4029 set screws',
  'open CAD library and suppliers’ pages; cone and cup points and lengths from memory',
  [
    'thread: text',
    'key: mm',
    'flat: mm?',
    'cone: mm?',
    'cup: mm?',
    'lengthMin: mm',
    'lengthMax: mm',
    'inStandard: number',
  ],
  [
    ['M1.4', 0.7, null, null, null, 2, 6, 0],
    ['M1.6', 0.7, 0.8, 0.4, 0.8, 2, 8, 1],
    ['M1.8', 0.7, null, null, null, 2, 8, 0],
    ['M2', 0.9, 1, 0.5, 1, 2, 10, 1],
    ['M2.5', 1.3, 1.5, 0.65, 1.2, 2.5, 12, 1],
    ['M3', 1.5, 2, 0.75, 1.4, 3, 16, 1],
    ['M4', 2, 2.5, 1, 2, 4, 20, 1],
    ['M5', 2.5, 3.5, 1.25, 2.5, 5, 25, 1],
    ['M6', 3, 4, 1.5, 3, 6, 30, 1],
    ['M8', 4, 5.5, 2, 5, 8, 40, 1],
    ['M10', 5, 7, 2.5, 6, 10, 50, 1],
    ['M12', 6, 8.5, 3, 8, 12, 60, 1],
    ['M14', 6, 10, null, null, 14, 60, 0],
    ['M16', 8, 12, 4, 10, 16, 60, 1],
    ['M18', 10, 13, null, null, 18, 60, 0],
    ['M20', 10, 15, 5, 14, 20, 60, 1],
    ['M22', 12, 17, null, null, 20, 60, 0],
    ['M24', 12, 18, 6, 16, 25, 60, 1],
  ],
  (row, previous) =>
    previous && previous.key > row.key ? 'key is smaller than that of a smaller thread' : null,
  row => (row.key < Number(row.thread.slice(1)) * 600 ? null : 'key is too large for the thread'),
  row => ((row.flat ?? 0) < Number(row.thread.slice(1)) * 1000 ? null : 'point is thicker than the thread'),
  larger('flat', 'cone'),
  larger('lengthMax', 'lengthMin'),
  rising(['lengthMax', 'thread']),
);

/** The point of a set screw. */
export type Point = 'flat' | 'cone' | 'dog' | 'cup';

/** Standards by point: ISO, and the DIN before it. */
export const setScrewStandards: Readonly<Record<Point, readonly [iso: string, din: string]>> = {
  flat: ['ISO 4026', 'DIN 913'],
  cone: ['ISO 4027', 'DIN 914'],
  dog: ['ISO 4028', 'DIN 915'],
  cup: ['ISO 4029', 'DIN 916'],
};

/** A set screw's thread with its key and points; lengths in micrometres, the same for all four points. */
export type SetScrew = (typeof table.rows)[number];

/** All set screws, smallest first. */
export const setScrews: readonly SetScrew[] = table.rows;

const byThread = indexBy(setScrews, screw => screw.thread);
const byKey = groupBy(setScrews, screw => screw.key);

/** The set screw of a thread, `M3`. */
export const setScrew = (thread: string): SetScrew | undefined => byThread.get(thread);

/** The set screws that a key in micrometres turns, those of the standards first. */
export const setScrewsForKey = (key: Um): readonly SetScrew[] =>
  [...(byKey.get(key) ?? [])].sort((a, b) => b.inStandard - a.inStandard);

/** Diameter of the point in micrometres, or null where unknown: a dog point is as thick as the flat one. */
export const pointDiameter = (screw: SetScrew, point: Point): Um | null =>
  screw[point === 'dog' ? 'flat' : point];
