import type { Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, larger, unique } from './table.ts';

/**
 * Linear ball bushings of the LM, long LM..L and European LME series, with seals (UU).
 *
 * Sources: LM in the catalogues of two makers (THK, FBJ), LME in one (FBJ), long LM..L from memory, unverified. Flanged forms (LMF, LMK, LMH) have
 * the same bore, outside diameter and length.
 */
const table = defineTable(
  'linear ball bushings',
  'THK and FBJ catalogues; long ones from memory',
  ['designation: text', 'bore: mm', 'od: mm', 'length: mm'],
  [
    ['LM3UU', 3, 7, 10],
    ['LM4UU', 4, 8, 12],
    ['LM5UU', 5, 10, 15],
    ['LM6UU', 6, 12, 19],
    ['LM8SUU', 8, 15, 17],
    ['LM8UU', 8, 15, 24],
    ['LM10UU', 10, 19, 29],
    ['LM12UU', 12, 21, 30],
    ['LM13UU', 13, 23, 32],
    ['LM16UU', 16, 28, 37],
    ['LM20UU', 20, 32, 42],
    ['LM25UU', 25, 40, 59],
    ['LM30UU', 30, 45, 64],
    ['LM35UU', 35, 52, 70],
    ['LM40UU', 40, 60, 80],
    ['LM50UU', 50, 80, 100],
    ['LM60UU', 60, 90, 110],
    ['LM6LUU', 6, 12, 35],
    ['LM8LUU', 8, 15, 45],
    ['LM10LUU', 10, 19, 55],
    ['LM12LUU', 12, 21, 57],
    ['LM13LUU', 13, 23, 61],
    ['LM16LUU', 16, 28, 70],
    ['LM20LUU', 20, 32, 80],
    ['LM25LUU', 25, 40, 112],
    ['LM30LUU', 30, 45, 123],
    ['LM35LUU', 35, 52, 135],
    ['LM40LUU', 40, 60, 151],
    ['LM50LUU', 50, 80, 192],
    ['LME5UU', 5, 12, 22],
    ['LME8UU', 8, 16, 25],
    ['LME12UU', 12, 22, 32],
    ['LME16UU', 16, 26, 36],
    ['LME20UU', 20, 32, 45],
    ['LME25UU', 25, 40, 58],
    ['LME30UU', 30, 47, 68],
    ['LME40UU', 40, 62, 80],
    ['LME50UU', 50, 75, 100],
    ['LME60UU', 60, 90, 125],
  ],
  unique('designation'),
  larger('od', 'bore'),
  larger('length', 'bore'),
  row =>
    Number(/\d+/.exec(row.designation)![0]) * 1000 === row.bore ? null : 'the number does not mean this bore',
);

/** A linear ball bushing; lengths in micrometres. */
export type LinearBearing = (typeof table.rows)[number];

/** All linear ball bushings. */
export const linearBearings: readonly LinearBearing[] = table.rows;

const byDesignation = indexBy(linearBearings, bearing => bearing.designation.replace('UU', ''));
const byDims = groupBy(linearBearings, bearing => `${bearing.bore}x${bearing.od}x${bearing.length}`);

/** The bushing of a number, with or without UU, flange letter or dash: `LM8UU`, `LMF8UU`, `LM-8`. */
export function linearBearing(designation: string): LinearBearing | undefined {
  const plain = designation.replace(/[-\s]/g, '').replace(/^LM([FKHT])(?=\d)/, 'LM');
  return byDesignation.get(plain.replace(/UU(?:OP|AJ)?$/, ''));
}

/** The bushings of a bore, outside diameter and length, in micrometres. */
export const linearBearingsByDims = (bore: Um, od: Um, length: Um): readonly LinearBearing[] =>
  byDims.get(`${bore}x${od}x${length}`) ?? [];
