import type { Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, larger, unique } from './table.ts';

/**
 * Washers by the size of their screw: ISO 7089 and its relations, the older DIN ones, spring and toothed lock washers.
 *
 * `d1` is the hole (its minimum, the nominal), `d2` the outside diameter (its maximum), `h` the nominal thickness with limits.
 *
 * Sources: rows marked `libraries` stand in open CAD libraries, most in two to four of them; `memory` is from memory of the
 * standard; of `mixed` ones the diameters and the thickness stand in one library, the limits are from memory. Where they differ: hole of ISO 7089 M10 is 10.5 (one gives 10); ISO 7093-1 M5 is 1 thick (two give 1.2, which is
 * DIN 9021, a row of its own: not settled); ISO 7092 M12 is 2 thick as in DIN 433 (one gives 2.5: not settled),
 * M36 58 or 60 wide (60 taken, two of three); DIN 6797 M2.5 and M3.5 are 0.4 and 0.5 thick from memory (one gives 0.3 and 0.4).
 * DIN rows that equal the ISO ones are not repeated: DIN 125-A and -B, 433 and 9021 fall back on ISO 7089, 7090, 7092 and 7093-1.
 */
const table = defineTable(
  'washers',
  'ISO 7089 to 7094, DIN 125, 127, 433, 6797, 6798, 7980 and 9021 as open CAD libraries quote them; memory where marked',
  [
    'standard: text',
    'type: text',
    'form: text',
    'thread: text',
    'd1: mm',
    'd2: mm',
    'h: mm',
    'hMin: mm',
    'hMax: mm',
    'basis: text',
  ],
  [
    ['ISO 7089', 'flat', 'normal', 'M1.6', 1.7, 4, 0.3, 0.25, 0.35, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M2', 2.2, 5, 0.3, 0.25, 0.35, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M2.5', 2.7, 6, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M3', 3.2, 7, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M3.5', 3.7, 8, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M4', 4.3, 9, 0.8, 0.7, 0.9, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M5', 5.3, 10, 1, 0.9, 1.1, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M6', 6.4, 12, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M8', 8.4, 16, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M10', 10.5, 20, 2, 1.8, 2.2, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M12', 13, 24, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M14', 15, 28, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M16', 17, 30, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M18', 19, 34, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M20', 21, 37, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M22', 23, 39, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M24', 25, 44, 4, 3.7, 4.3, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M27', 28, 50, 4, 3.7, 4.3, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M30', 31, 56, 4, 3.7, 4.3, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M33', 34, 60, 5, 4.4, 5.6, 'libraries'],
    ['ISO 7089', 'flat', 'normal', 'M36', 37, 66, 5, 4.4, 5.6, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M5', 5.3, 10, 1, 0.9, 1.1, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M6', 6.4, 12, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M8', 8.4, 16, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M10', 10.5, 20, 2, 1.8, 2.2, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M12', 13, 24, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M14', 15, 28, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M16', 17, 30, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M18', 19, 34, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M20', 21, 37, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M22', 23, 39, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M24', 25, 44, 4, 3.7, 4.3, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M27', 28, 50, 4, 3.7, 4.3, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M30', 31, 56, 4, 3.7, 4.3, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M33', 34, 60, 5, 4.4, 5.6, 'libraries'],
    ['ISO 7090', 'flat', 'normal, chamfered', 'M36', 37, 66, 5, 4.4, 5.6, 'libraries'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M1.6', 1.8, 4, 0.3, 0.2, 0.4, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M2', 2.4, 5, 0.3, 0.2, 0.4, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M2.5', 2.9, 6, 0.5, 0.4, 0.6, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M3', 3.4, 7, 0.5, 0.4, 0.6, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M4', 4.5, 9, 0.8, 0.6, 1, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M5', 5.5, 10, 1, 0.8, 1.2, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M6', 6.6, 12, 1.6, 1.3, 1.9, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M8', 9, 16, 1.6, 1.3, 1.9, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M10', 11, 20, 2, 1.7, 2.3, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M12', 13.5, 24, 2.5, 2.2, 2.8, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M14', 15.5, 28, 2.5, 2.2, 2.8, 'memory'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M16', 17.5, 30, 3, 2.4, 3.6, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M18', 20, 34, 3, 2.4, 3.6, 'memory'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M20', 22, 37, 3, 2.4, 3.6, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M22', 24, 39, 3, 2.4, 3.6, 'memory'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M24', 26, 44, 4, 3.4, 4.6, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M27', 30, 50, 4, 3.4, 4.6, 'memory'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M30', 33, 56, 4, 3.4, 4.6, 'mixed'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M33', 36, 60, 5, 4, 6, 'memory'],
    ['ISO 7091', 'flat', 'normal, coarse', 'M36', 39, 66, 5, 4, 6, 'mixed'],
    ['ISO 7092', 'flat', 'small', 'M1.6', 1.7, 3.5, 0.3, 0.25, 0.35, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M2', 2.2, 4.5, 0.3, 0.25, 0.35, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M2.5', 2.7, 5, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M3', 3.2, 6, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M3.5', 3.7, 7, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M4', 4.3, 8, 0.5, 0.45, 0.55, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M5', 5.3, 9, 1, 0.9, 1.1, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M6', 6.4, 11, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M8', 8.4, 15, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M10', 10.5, 18, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M12', 13, 20, 2, 1.8, 2.2, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M14', 15, 24, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M16', 17, 28, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M18', 19, 30, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M20', 21, 34, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M22', 23, 37, 3, 2.7, 3.3, 'memory'],
    ['ISO 7092', 'flat', 'small', 'M24', 25, 39, 4, 3.7, 4.3, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M27', 28, 44, 4, 3.7, 4.3, 'memory'],
    ['ISO 7092', 'flat', 'small', 'M30', 31, 50, 4, 3.7, 4.3, 'libraries'],
    ['ISO 7092', 'flat', 'small', 'M33', 34, 56, 5, 4.4, 5.6, 'memory'],
    ['ISO 7092', 'flat', 'small', 'M36', 37, 60, 5, 4.4, 5.6, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M2.5', 2.7, 8, 0.8, 0.7, 0.9, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M3', 3.2, 9, 0.8, 0.7, 0.9, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M3.5', 3.7, 11, 0.8, 0.7, 0.9, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M4', 4.3, 12, 1, 0.9, 1.1, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M5', 5.3, 15, 1, 0.9, 1.1, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M6', 6.4, 18, 1.6, 1.4, 1.8, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M8', 8.4, 24, 2, 1.8, 2.2, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M10', 10.5, 30, 2.5, 2.3, 2.7, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M12', 13, 37, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M14', 15, 44, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M16', 17, 50, 3, 2.7, 3.3, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M18', 19, 56, 4, 3.7, 4.3, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M20', 21, 60, 4, 3.7, 4.3, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M22', 23, 66, 5, 4.4, 5.6, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M24', 25, 72, 5, 4.4, 5.6, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M27', 30, 85, 6, 5.4, 6.6, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M30', 33, 92, 6, 5.4, 6.6, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M33', 36, 105, 6, 5.4, 6.6, 'libraries'],
    ['ISO 7093-1', 'flat', 'large', 'M36', 39, 110, 8, 7, 9, 'libraries'],
    ['ISO 7094', 'flat', 'extra large', 'M5', 5.5, 18, 2, 1.7, 2.3, 'memory'],
    ['ISO 7094', 'flat', 'extra large', 'M6', 6.6, 22, 2, 1.7, 2.3, 'memory'],
    ['ISO 7094', 'flat', 'extra large', 'M8', 9, 28, 3, 2.4, 3.6, 'memory'],
    ['ISO 7094', 'flat', 'extra large', 'M10', 11, 34, 3, 2.4, 3.6, 'memory'],
    ['ISO 7094', 'flat', 'extra large', 'M12', 13.5, 44, 4, 3.4, 4.6, 'mixed'],
    ['ISO 7094', 'flat', 'extra large', 'M14', 15.5, 50, 4, 3.4, 4.6, 'mixed'],
    ['ISO 7094', 'flat', 'extra large', 'M16', 17.5, 56, 5, 4, 6, 'mixed'],
    ['ISO 7094', 'flat', 'extra large', 'M18', 20, 60, 5, 4, 6, 'mixed'],
    ['ISO 7094', 'flat', 'extra large', 'M20', 22, 72, 6, 5, 7, 'mixed'],
    ['ISO 7094', 'flat', 'extra large', 'M22', 24, 80, 6, 5, 7, 'mixed'],
    ['ISO 7094', 'flat', 'extra large', 'M24', 26, 85, 6, 5, 7, 'mixed'],
    ['ISO 7094', 'flat', 'extra large', 'M27', 30, 98, 6, 5, 7, 'mixed'],
    ['ISO 7094', 'flat', 'extra large', 'M30', 33, 105, 6, 5, 7, 'mixed'],
    ['ISO 7094', 'flat', 'extra large', 'M33', 36, 115, 8, 6.8, 9.2, 'mixed'],
    ['ISO 7094', 'flat', 'extra large', 'M36', 39, 125, 8, 6.8, 9.2, 'mixed'],
    ['DIN 125-A', 'flat', 'normal', 'M1', 1.1, 3, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M1.2', 1.3, 3.5, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M1.4', 1.5, 4, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M1.7', 1.8, 4.5, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M2.2', 2.4, 6, 0.5, 0.45, 0.55, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M2.3', 2.5, 6, 0.5, 0.45, 0.55, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M2.6', 2.8, 7, 0.5, 0.45, 0.55, 'libraries'],
    ['DIN 125-A', 'flat', 'normal', 'M7', 7.4, 14, 1.6, 1.4, 1.8, 'libraries'],
    ['DIN 433', 'flat', 'small', 'M1', 1.1, 2.5, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 433', 'flat', 'small', 'M1.2', 1.3, 3, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 433', 'flat', 'small', 'M1.4', 1.5, 3, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 433', 'flat', 'small', 'M1.7', 1.8, 4, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 433', 'flat', 'small', 'M1.8', 1.9, 4, 0.3, 0.25, 0.35, 'libraries'],
    ['DIN 433', 'flat', 'small', 'M2.3', 2.5, 5, 0.5, 0.45, 0.55, 'libraries'],
    ['DIN 433', 'flat', 'small', 'M2.6', 2.8, 5.5, 0.5, 0.45, 0.55, 'libraries'],
    ['DIN 9021', 'flat', 'large', 'M5', 5.3, 15, 1.2, 1, 1.4, 'libraries'],
    ['DIN 9021', 'flat', 'large', 'M7', 7.4, 22, 2, 1.8, 2.2, 'libraries'],
    ['DIN 9021', 'flat', 'large', 'M12', 13, 37, 3, 2.7, 3.3, 'libraries'],
    ['DIN 9021', 'flat', 'large', 'M18', 20, 56, 4, 3.7, 4.3, 'libraries'],
    ['DIN 9021', 'flat', 'large', 'M20', 22, 60, 4, 3.7, 4.3, 'libraries'],
    ['DIN 9021', 'flat', 'large', 'M24', 26, 72, 5, 4.4, 5.6, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M2', 2.1, 4.4, 0.5, 0.4, 0.6, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M2.2', 2.3, 4.8, 0.6, 0.5, 0.7, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M2.5', 2.6, 5.1, 0.6, 0.5, 0.7, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M3', 3.1, 6.2, 0.8, 0.7, 0.9, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M3.5', 3.6, 6.7, 0.8, 0.7, 0.9, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M4', 4.1, 7.6, 0.9, 0.8, 1, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M5', 5.1, 9.2, 1.2, 1.1, 1.3, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M6', 6.1, 11.8, 1.6, 1.5, 1.7, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M7', 7.1, 12.8, 1.6, 1.5, 1.7, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M8', 8.1, 14.8, 2, 1.9, 2.1, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M10', 10.2, 18.1, 2.2, 2.05, 2.35, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M12', 12.2, 21.1, 2.5, 2.35, 2.65, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M14', 14.2, 24.1, 3, 2.8, 3.2, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M16', 16.2, 27.4, 3.5, 3.3, 3.7, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M18', 18.2, 29.4, 3.5, 3.3, 3.7, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M20', 20.2, 33.6, 4, 3.8, 4.2, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M22', 22.5, 35.9, 4, 3.8, 4.2, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M24', 24.5, 40, 5, 4.8, 5.2, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M27', 27.5, 43, 5, 4.8, 5.2, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M30', 30.5, 48.2, 6, 5.8, 6.2, 'memory'],
    ['DIN 127-B', 'spring', 'split', 'M36', 36.5, 58.2, 6, 5.8, 6.2, 'memory'],
    ['DIN 7980', 'spring', 'split, for cap screws', 'M3', 3.1, 5.6, 1, 0.9, 1.1, 'memory'],
    ['DIN 7980', 'spring', 'split, for cap screws', 'M4', 4.1, 7, 1.2, 1.1, 1.3, 'memory'],
    ['DIN 7980', 'spring', 'split, for cap screws', 'M5', 5.1, 8.8, 1.6, 1.5, 1.7, 'memory'],
    ['DIN 7980', 'spring', 'split, for cap screws', 'M6', 6.1, 9.9, 1.6, 1.5, 1.7, 'memory'],
    ['DIN 7980', 'spring', 'split, for cap screws', 'M8', 8.1, 12.7, 2, 1.9, 2.1, 'memory'],
    ['DIN 7980', 'spring', 'split, for cap screws', 'M10', 10.2, 16, 2.5, 2.35, 2.65, 'memory'],
    ['DIN 7980', 'spring', 'split, for cap screws', 'M12', 12.2, 18, 2.5, 2.35, 2.65, 'memory'],
    ['DIN 7980', 'spring', 'split, for cap screws', 'M14', 14.2, 21.1, 3, 2.8, 3.2, 'memory'],
    ['DIN 7980', 'spring', 'split, for cap screws', 'M16', 16.2, 24.4, 3.5, 3.3, 3.7, 'memory'],
    ['DIN 7980', 'spring', 'split, for cap screws', 'M20', 20.2, 30.6, 4.5, 4.3, 4.7, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M2', 2.2, 4.5, 0.3, 0.27, 0.33, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M2.5', 2.7, 5.5, 0.4, 0.36, 0.44, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M3', 3.2, 6, 0.4, 0.36, 0.44, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M3.5', 3.7, 7, 0.5, 0.46, 0.54, 'memory'],
    ['DIN 6797-A', 'star', 'external teeth', 'M4', 4.3, 8, 0.5, 0.46, 0.54, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M5', 5.3, 10, 0.6, 0.55, 0.65, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M6', 6.4, 11, 0.7, 0.65, 0.75, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M7', 7.4, 12.5, 0.8, 0.74, 0.86, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M8', 8.4, 15, 0.8, 0.74, 0.86, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M10', 10.5, 18, 0.9, 0.84, 0.96, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M12', 13, 20.5, 1, 0.94, 1.06, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M14', 15, 24, 1, 0.94, 1.06, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M16', 17, 26, 1.2, 1.14, 1.26, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M18', 19, 30, 1.4, 1.34, 1.46, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M20', 21, 33, 1.4, 1.34, 1.46, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M22', 23, 36, 1.5, 1.44, 1.56, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M24', 25, 38, 1.5, 1.44, 1.56, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M27', 28, 44, 1.6, 1.54, 1.66, 'mixed'],
    ['DIN 6797-A', 'star', 'external teeth', 'M30', 31, 48, 1.6, 1.54, 1.66, 'mixed'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M2', 2.2, 4.5, 0.3, 0.27, 0.33, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M2.5', 2.7, 5.5, 0.4, 0.36, 0.44, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M3', 3.2, 6, 0.4, 0.36, 0.44, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M3.5', 3.7, 7, 0.5, 0.46, 0.54, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M4', 4.3, 8, 0.5, 0.46, 0.54, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M5', 5.3, 10, 0.6, 0.55, 0.65, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M6', 6.4, 11, 0.7, 0.65, 0.75, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M7', 7.4, 12.5, 0.8, 0.74, 0.86, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M8', 8.4, 15, 0.8, 0.74, 0.86, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M10', 10.5, 18, 0.9, 0.84, 0.96, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M12', 13, 20.5, 1, 0.94, 1.06, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M14', 15, 24, 1, 0.94, 1.06, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M16', 17, 26, 1.2, 1.14, 1.26, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M18', 19, 30, 1.4, 1.34, 1.46, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M20', 21, 33, 1.4, 1.34, 1.46, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M22', 23, 36, 1.5, 1.44, 1.56, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M24', 25, 38, 1.5, 1.44, 1.56, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M27', 28, 44, 1.6, 1.54, 1.66, 'memory'],
    ['DIN 6798-A', 'star', 'serrated, external', 'M30', 31, 48, 1.6, 1.54, 1.66, 'memory'],
  ],
  unique('standard', 'thread'),
  larger('d2', 'd1'),
  larger('h', 'hMin'),
  larger('hMax', 'h'),
  row => (row.d1 > Number(row.thread.slice(1)) * 1000 ? null : 'the hole does not let its screw through'),
  row =>
    row.d1 < Number(row.thread.slice(1)) * (row.form.endsWith('coarse') ? 1210 : 1130)
      ? null
      : 'the hole is too wide for its screw',
  row => (row.d2 - row.d1 > row.h ? null : 'thicker than its ring is wide'),
  row => (row.h - row.hMin === row.hMax - row.h ? null : 'the limits do not lie evenly about the thickness'),
  row => (row.hMax - row.h <= Math.max(100, row.h * 0.25) ? null : 'the limits are too wide'),
  (row, previous) =>
    previous?.standard === row.standard && (previous.d2 > row.d2 || previous.h > row.h)
      ? 'narrower or thinner than the washer of a smaller screw'
      : null,
  (row, previous) =>
    previous?.standard === row.standard && previous.d1 >= row.d1
      ? 'hole does not rise within the standard'
      : null,
);

/** A washer; lengths in micrometres. */
export interface Washer {
  readonly standard: string;
  readonly type: 'flat' | 'spring' | 'star';
  readonly form: string;
  /** The screw it is for, as `M3`. */
  readonly thread: string;
  /** Hole: nominal and minimum. */
  readonly d1: Um;
  /** Outside diameter: nominal and maximum. */
  readonly d2: Um;
  /** Thickness: nominal. */
  readonly h: Um;
  readonly hMin: Um;
  readonly hMax: Um;
  readonly basis: string;
}

/** All washers, by standard and size. */
export const washers: readonly Washer[] = table.rows.map(row => ({
  ...row,
  type: row.type as Washer['type'],
}));

/** ISO standards whose rows an older DIN number shares where it has none of its own. */
const sameAs: Readonly<Record<string, string>> = {
  'DIN 125': 'DIN 125-A',
  'DIN 125-A': 'ISO 7089',
  'DIN 125-B': 'ISO 7090',
  'DIN 433': 'ISO 7092',
  'DIN 9021': 'ISO 7093-1',
  'ISO 7093': 'ISO 7093-1',
  'DIN 126': 'ISO 7091',
  'DIN 127': 'DIN 127-B',
  'DIN 6797': 'DIN 6797-A',
  'DIN 6798': 'DIN 6798-A',
};

const byScrew = indexBy(washers, washer => `${washer.standard} ${washer.thread}`);
const byHole = groupBy(washers, washer => washer.d1);

/** The washer of a standard for a screw: `washerFor('DIN 125', 'M4')`. An older DIN number falls back on its ISO successor. */
export function washerFor(standard: string, thread: string): Washer | undefined {
  const same = sameAs[standard];
  return byScrew.get(`${standard} ${thread}`) ?? (same === undefined ? undefined : washerFor(same, thread));
}

/** The washer of a standard named by its hole, as `DIN 125 A 4,3` does; hole in micrometres. */
export function washerWithHole(standard: string, d1: Um): Washer | undefined {
  const own = byHole.get(d1)?.find(washer => washer.standard === standard);
  const same = sameAs[standard];
  return own ?? (same === undefined ? undefined : washerWithHole(same, d1));
}

/** The washers of a hole and outside diameter and, where given, thickness, in micrometres. */
export const washersByDims = (d1: Um, d2: Um, h?: Um): readonly Washer[] =>
  (byHole.get(d1) ?? []).filter(washer => washer.d2 === d2 && (h === undefined || washer.h === h));
