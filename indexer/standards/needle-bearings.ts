import type { Um } from '../units/length.ts';
import { defineTable, groupBy, indexBy, larger, unique } from './table.ts';

/**
 * Drawn-cup needle bearings (HK; BK with one end closed), machined needle bearings (NK) and drawn-cup one-way clutches: HF the
 * clutch alone, HFL with needle bearings beside it. `bore` is the shaft, which the rollers run on.
 *
 * Source: ISO 3245 outlines and makers' catalogues from memory, unverified. The name is type, shaft and width: HK0810 is
 * 8 x 12 x 10. A one-way clutch is no bearing: equal outlines do not make them interchangeable.
 */
const table = defineTable(
  'needle bearings and one-way clutches',
  "ISO 3245 and makers' catalogues from memory",
  ['designation: text', 'kind: text', 'bore: mm', 'od: mm', 'width: mm'],
  [
    ['HK0306', 'needle', 3, 6.5, 6],
    ['HK0408', 'needle', 4, 8, 8],
    ['HK0509', 'needle', 5, 9, 9],
    ['HK0607', 'needle', 6, 10, 7],
    ['HK0608', 'needle', 6, 10, 8],
    ['HK0609', 'needle', 6, 10, 9],
    ['HK0709', 'needle', 7, 11, 9],
    ['HK0808', 'needle', 8, 12, 8],
    ['HK0810', 'needle', 8, 12, 10],
    ['HK0908', 'needle', 9, 13, 8],
    ['HK0910', 'needle', 9, 13, 10],
    ['HK0912', 'needle', 9, 13, 12],
    ['HK1010', 'needle', 10, 14, 10],
    ['HK1012', 'needle', 10, 14, 12],
    ['HK1015', 'needle', 10, 14, 15],
    ['HK1210', 'needle', 12, 16, 10],
    ['HK1212', 'needle', 12, 18, 12],
    ['HK1312', 'needle', 13, 19, 12],
    ['HK1412', 'needle', 14, 20, 12],
    ['HK1416', 'needle', 14, 20, 16],
    ['HK1512', 'needle', 15, 21, 12],
    ['HK1516', 'needle', 15, 21, 16],
    ['HK1522', 'needle', 15, 21, 22],
    ['HK1612', 'needle', 16, 22, 12],
    ['HK1616', 'needle', 16, 22, 16],
    ['HK1622', 'needle', 16, 22, 22],
    ['HK1712', 'needle', 17, 23, 12],
    ['HK1812', 'needle', 18, 24, 12],
    ['HK1816', 'needle', 18, 24, 16],
    ['HK2010', 'needle', 20, 26, 10],
    ['HK2012', 'needle', 20, 26, 12],
    ['HK2016', 'needle', 20, 26, 16],
    ['HK2020', 'needle', 20, 26, 20],
    ['HK2030', 'needle', 20, 26, 30],
    ['HK2212', 'needle', 22, 28, 12],
    ['HK2216', 'needle', 22, 28, 16],
    ['HK2220', 'needle', 22, 28, 20],
    ['HK2512', 'needle', 25, 32, 12],
    ['HK2516', 'needle', 25, 32, 16],
    ['HK2520', 'needle', 25, 32, 20],
    ['HK2526', 'needle', 25, 32, 26],
    ['HK2816', 'needle', 28, 35, 16],
    ['HK2820', 'needle', 28, 35, 20],
    ['HK3012', 'needle', 30, 37, 12],
    ['HK3016', 'needle', 30, 37, 16],
    ['HK3020', 'needle', 30, 37, 20],
    ['HK3026', 'needle', 30, 37, 26],
    ['HK3512', 'needle', 35, 42, 12],
    ['HK3516', 'needle', 35, 42, 16],
    ['HK3520', 'needle', 35, 42, 20],
    ['HK4012', 'needle', 40, 47, 12],
    ['HK4016', 'needle', 40, 47, 16],
    ['HK4020', 'needle', 40, 47, 20],
    ['NK5/10', 'needle', 5, 10, 10],
    ['NK5/12', 'needle', 5, 10, 12],
    ['NK6/10', 'needle', 6, 12, 10],
    ['NK6/12', 'needle', 6, 12, 12],
    ['NK7/10', 'needle', 7, 14, 10],
    ['NK7/12', 'needle', 7, 14, 12],
    ['NK8/12', 'needle', 8, 15, 12],
    ['NK8/16', 'needle', 8, 15, 16],
    ['NK9/12', 'needle', 9, 16, 12],
    ['NK9/16', 'needle', 9, 16, 16],
    ['NK10/12', 'needle', 10, 17, 12],
    ['NK10/16', 'needle', 10, 17, 16],
    ['NK12/12', 'needle', 12, 19, 12],
    ['NK12/16', 'needle', 12, 19, 16],
    ['NK14/16', 'needle', 14, 22, 16],
    ['NK14/20', 'needle', 14, 22, 20],
    ['NK15/12', 'needle', 15, 23, 12],
    ['NK15/16', 'needle', 15, 23, 16],
    ['NK15/20', 'needle', 15, 23, 20],
    ['NK16/16', 'needle', 16, 24, 16],
    ['NK16/20', 'needle', 16, 24, 20],
    ['NK17/16', 'needle', 17, 25, 16],
    ['NK18/16', 'needle', 18, 26, 16],
    ['NK20/16', 'needle', 20, 28, 16],
    ['NK20/20', 'needle', 20, 28, 20],
    ['HF0406', 'one-way', 4, 8, 6],
    ['HFL0308', 'one-way', 3, 6.5, 8],
    ['HFL0408', 'one-way', 4, 8, 8],
    ['HFL0606', 'one-way', 6, 10, 6],
    ['HF0612', 'one-way', 6, 10, 12],
    ['HFL0615', 'one-way', 6, 10, 15],
    ['HF0812', 'one-way', 8, 12, 12],
    ['HFL0822', 'one-way', 8, 12, 22],
    ['HF1012', 'one-way', 10, 14, 12],
    ['HFL1022', 'one-way', 10, 14, 22],
    ['HF1216', 'one-way', 12, 18, 16],
    ['HFL1226', 'one-way', 12, 18, 26],
    ['HF1416', 'one-way', 14, 20, 16],
    ['HFL1426', 'one-way', 14, 20, 26],
    ['HF1616', 'one-way', 16, 22, 16],
    ['HFL1626', 'one-way', 16, 22, 26],
    ['HF1816', 'one-way', 18, 24, 16],
    ['HFL1826', 'one-way', 18, 24, 26],
    ['HF2016', 'one-way', 20, 26, 16],
    ['HFL2026', 'one-way', 20, 26, 26],
    ['HF2520', 'one-way', 25, 32, 20],
    ['HFL2530', 'one-way', 25, 32, 30],
    ['HF3020', 'one-way', 30, 37, 20],
    ['HFL3030', 'one-way', 30, 37, 30],
    ['HF3520', 'one-way', 35, 42, 20],
    ['HFL3530', 'one-way', 35, 42, 30],
  ],
  unique('designation'),
  larger('od', 'bore'),
  row =>
    row.od - row.bore >= 3500 && row.od - row.bore <= 8000 ? null : 'the shell is too thin or too thick',
  row => (numberOf(row) === row.designation ? null : 'the number does not mean this shaft and width'),
);

/** The number that a kind, shaft and width make, with the letters the row has. */
function numberOf({ designation, bore, width }: { designation: string; bore: Um; width: Um }): string {
  const letters = /^[A-Z]+/.exec(designation)![0];
  if (letters === 'NK') return `NK${bore / 1000}/${width / 1000}`;
  return letters + [bore, width].map(um => String(um / 1000).padStart(2, '0')).join('');
}

/** A needle bearing or a one-way clutch; lengths in micrometres. */
export interface NeedleBearing {
  readonly designation: string;
  readonly kind: 'needle' | 'one-way';
  /** Shaft, under the rollers. */
  readonly bore: Um;
  readonly od: Um;
  readonly width: Um;
}

/** All needle bearings, then all one-way clutches. */
export const needleBearings: readonly NeedleBearing[] = table.rows.map(row => ({
  ...row,
  kind: row.kind as NeedleBearing['kind'],
}));

const byDesignation = indexBy(needleBearings, bearing => bearing.designation);
const byDims = groupBy(needleBearings, bearing => `${bearing.bore}x${bearing.od}x${bearing.width}`);

/** The bearing or clutch of a number, blanks and dashes apart: `HK0810`, `HK 08 10`, `BK0810`, `HFL0822`, `NK8/12`. */
export function needleBearing(designation: string): NeedleBearing | undefined {
  const plain = designation.replace(/[\s-]/g, '');
  const own = byDesignation.get(plain);
  if (own || !plain.startsWith('BK')) return own;
  const open = byDesignation.get(`HK${plain.slice(2)}`);
  return open && { ...open, designation: plain };
}

/** Bearings and clutches of a shaft, outside diameter and width, in micrometres. */
export const needleBearingsByDims = (bore: Um, od: Um, width: Um): readonly NeedleBearing[] =>
  byDims.get(`${bore}x${od}x${width}`) ?? [];
