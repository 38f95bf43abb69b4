import { describe, expect, it } from 'vitest';
import { widthOf } from '../../../indexer/standards/ball-bearing.ts';
import {
  inchBearingByDesignation,
  inchBearings,
  inchBearingsByBore,
  inchBearingsByDims,
} from '../../../indexer/standards/inch-bearings.ts';

/** Fractions of an inch: bore, outside diameter, open and shielded width (ABMA 12.2 sizes as NSK prints them). */
const published: [string, number, number, number, number][] = [
  ['R1-4', 5 / 64, 1 / 4, 3 / 32, 9 / 64],
  ['R133', 3 / 32, 3 / 16, 1 / 16, 3 / 32],
  ['R144', 1 / 8, 1 / 4, 3 / 32, 7 / 64],
  ['R2', 1 / 8, 3 / 8, 5 / 32, 5 / 32],
  ['R2-6', 1 / 8, 3 / 8, 7 / 64, 9 / 64],
  ['R155', 5 / 32, 5 / 16, 7 / 64, 1 / 8],
  ['R156', 3 / 16, 5 / 16, 7 / 64, 1 / 8],
  ['R166', 3 / 16, 3 / 8, 1 / 8, 1 / 8],
  ['R3', 3 / 16, 1 / 2, 5 / 32, 0.196],
  ['R168', 1 / 4, 3 / 8, 1 / 8, 1 / 8],
  ['R188', 1 / 4, 1 / 2, 1 / 8, 3 / 16],
  ['R4', 1 / 4, 5 / 8, 0.196, 0.196],
  ['R6', 3 / 8, 7 / 8, 7 / 32, 9 / 32],
  ['R8', 1 / 2, 1 + 1 / 8, 1 / 4, 5 / 16],
  ['R10', 5 / 8, 1 + 3 / 8, 9 / 32, 11 / 32],
  ['R16', 1, 2, 3 / 8, 1 / 2],
  ['1616', 1 / 2, 1 + 1 / 8, 3 / 8, 3 / 8],
  ['1628', 5 / 8, 1 + 5 / 8, 1 / 2, 1 / 2],
];

describe('inchBearingByDesignation', () => {
  it.each(published)('knows %s within 3 µm of its inches', (designation, bore, od, open, shielded) => {
    const bearing = inchBearingByDesignation(designation)!;
    const got = [bearing.bore, bearing.od, bearing.widthOpen, bearing.widthShielded];
    [bore, od, open, shielded].forEach((inches, at) => {
      // Catalogues cut fractions to four decimals of an inch: 0.0001 in is 2.5 µm.
      expect(Math.abs(got[at]! - inches * 25_400)).toBeLessThanOrEqual(3.1);
    });
  });

  it('knows the numbers a maker prints with another letter', () => {
    expect(inchBearingByDesignation('R4B')).toBe(inchBearingByDesignation('R4'));
    expect(inchBearingByDesignation('R4AA')).toBe(inchBearingByDesignation('R4A'));
  });

  it('takes 9.525 for the open R14, 3/8 in: one catalogue prints 9.252, a swap of figures', () => {
    expect(inchBearingByDesignation('R14')!.widthOpen).toBe(9525);
  });

  it('does not know a metric number', () => {
    expect(inchBearingByDesignation('608')).toBeUndefined();
  });
});

describe('the look-ups', () => {
  it('lead from every row back to itself', () => {
    for (const bearing of inchBearings) {
      const form = bearing.widthOpen === null ? 'shielded' : 'open';
      const hits = inchBearingsByDims(bearing.bore, bearing.od, widthOf(bearing, form)!);
      expect(
        hits.map(hit => hit.bearing),
        bearing.designation,
      ).toContain(bearing);
      expect(inchBearingsByBore(bearing.bore)).toContain(bearing);
      expect(inchBearingByDesignation(bearing.designation)).toBe(bearing);
    }
  });
});
