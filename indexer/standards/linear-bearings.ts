import type { Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, larger, unique } from './table.ts';

/**
 * Linear ball bushings of the LM, long LM..L and European LME series, with seals (UU).
 *
 * Source: makers' catalogues from memory, unverified; LM8UU 8 x 15 x 24 is common practice. Flanged forms (LMF, LMK, LMH) have
 * the same bore, outside diameter and length.
 */
const table = defineTable(
  'linear ball bushings',
  "makers' catalogues from memory",
  ['designation: text', 'bore: mm', 'od: mm', 'length: mm'],
  [
    ['LM3UU', 3, 7, 10],
    ['LM4UU', 4, 8, 12],
    ['LM5UU', 5, 10, 15],
    ['LM6UU', 6, 12, 19],
    ['LM6LUU', 6, 12, 35],
    ['LM8SUU', 8, 15, 17],
    ['LM8UU', 8, 15, 24],
    ['LM8LUU', 8, 15, 45],
    ['LM10UU', 10, 19, 29],
    ['LM10LUU', 10, 19, 55],
    ['LM12UU', 12, 21, 30],
    ['LM12LUU', 12, 21, 57],
    ['LM13UU', 13, 23, 32],
    ['LM13LUU', 13, 23, 61],
    ['LM16UU', 16, 28, 37],
    ['LM16LUU', 16, 28, 70],
    ['LM20UU', 20, 32, 42],
    ['LM20LUU', 20, 32, 80],
    ['LM25UU', 25, 40, 59],
    ['LM25LUU', 25, 40, 112],
    ['LM30UU', 30, 45, 64],
    ['LM30LUU', 30, 45, 123],
    ['LM35UU', 35, 52, 70],
    ['LM40UU', 40, 60, 80],
    ['LM50UU', 50, 80, 100],
    ['LME5UU', 5, 12, 22],
    ['LME8UU', 8, 16, 25],
    ['LME12UU', 12, 22, 32],
    ['LME16UU', 16, 26, 36],
    ['LME20UU', 20, 32, 45],
    ['LME25UU', 25, 40, 58],
    ['LME30UU', 30, 47, 68],
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
