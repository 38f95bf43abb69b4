import { describe, expect, it } from 'vitest';
import {
  linearBearing,
  linearBearings,
  linearBearingsByDims,
} from '../../../indexer/standards/linear-bearings.ts';
import {
  needleBearing,
  needleBearings,
  needleBearingsByDims,
} from '../../../indexer/standards/needle-bearings.ts';
import { sphericalBearing } from '../../../indexer/standards/spherical-bearings.ts';
import {
  thrustBearing,
  thrustBearings,
  thrustBearingsByDims,
} from '../../../indexer/standards/thrust-bearings.ts';

const um = (...mm: number[]) => mm.map(value => Math.round(value * 1000));

describe('linearBearing', () => {
  // Makers' catalogues, mm: bore, outside diameter, length.
  it.each([
    ['LM3UU', 3, 7, 10],
    ['LM6UU', 6, 12, 19],
    ['LM8UU', 8, 15, 24],
    ['LM10UU', 10, 19, 29],
    ['LM12UU', 12, 21, 30],
    ['LM8LUU', 8, 15, 45],
    ['LME8UU', 8, 16, 25],
    ['LM60UU', 60, 90, 110],
    ['LME40UU', 40, 62, 80],
  ])('%s is %d x %d x %d', (designation, bore, od, length) => {
    const bearing = linearBearing(designation)!;
    expect([bearing.bore, bearing.od, bearing.length]).toEqual(um(bore, od, length));
  });

  it('is known without UU, with a flange letter and with a dash', () => {
    for (const other of ['LM8', 'LMF8UU', 'LM-8', 'LMH8'])
      expect(linearBearing(other)?.designation, other).toBe('LM8UU');
    expect(linearBearing('LM7UU')).toBeUndefined();
  });
});

describe('sphericalBearing', () => {
  // ISO 12240-1 series E as makers print it (FBJ; 8 mm as other makers list GE8E), mm: bore, outside, inner and outer width.
  it.each([
    [8, 16, 8, 5],
    [10, 19, 9, 6],
    [17, 30, 14, 10],
    [25, 42, 20, 16],
    [50, 75, 35, 28],
  ])('of bore %d is %d outside, %d and %d wide', (bore, od, width, outer) => {
    const bearing = sphericalBearing(bore * 1000)!;
    expect([bearing.od, bearing.width, bearing.outer]).toEqual(um(od, width, outer));
  });
});

describe('needleBearing', () => {
  // ISO 3245 outlines as makers print them, mm; HF and HFL are one-way clutches.
  it.each([
    ['HK0408', 4, 8, 8, 'needle'],
    ['HK0608', 6, 10, 8, 'needle'],
    ['HK0810', 8, 12, 10, 'needle'],
    ['HK1212', 12, 18, 12, 'needle'],
    ['HK2520', 25, 32, 20, 'needle'],
    ['NK8/12', 8, 15, 12, 'needle'],
    ['HK1210', 12, 16, 10, 'needle'],
    ['HK3232', 32, 39, 32, 'needle'],
    ['NK20/16', 20, 28, 16, 'needle'],
    ['NK35/30', 35, 45, 30, 'needle'],
    ['K5x8x10', 5, 8, 10, 'needle'],
    ['K20x26x20', 20, 26, 20, 'needle'],
    ['HF0612', 6, 10, 12, 'one-way'],
    ['HF1012', 10, 14, 12, 'one-way'],
    ['HFL0822', 8, 12, 22, 'one-way'],
    ['HFL3530', 35, 42, 30, 'one-way'],
  ])('%s is %d x %d x %d, %s', (designation, bore, od, width, kind) => {
    const bearing = needleBearing(designation)!;
    expect([bearing.bore, bearing.od, bearing.width, bearing.kind]).toEqual([...um(bore, od, width), kind]);
  });

  it('is known with blanks, and with one end closed', () => {
    expect(needleBearing('HK 08 10')).toBe(needleBearing('HK0810'));
    expect(needleBearing('BK0810')).toMatchObject({
      designation: 'BK0810',
      bore: 8000,
      od: 12_000,
      width: 10_000,
    });
    expect(needleBearing('HK0811')).toBeUndefined();
  });

  it('shares outlines between bearings and one-way clutches: the kind must part them', () => {
    const kinds = needleBearingsByDims(...(um(20, 26, 16) as [number, number, number])).map(
      ({ kind }) => kind,
    );
    expect(new Set(kinds)).toEqual(new Set(['needle', 'one-way']));
  });
});

describe('thrustBearing', () => {
  // ISO 104 and makers' catalogues, mm.
  it.each([
    ['F3-8M', 3, 8, 3.5],
    ['F8-16M', 8, 16, 5],
    ['51100', 10, 24, 9],
    ['51104', 20, 35, 10],
    ['51200', 10, 26, 11],
    ['AXK0821TN', 8, 21, 2],
  ])('%s is %d x %d x %d', (designation, bore, od, height) => {
    const bearing = thrustBearing(designation)!;
    expect([bearing.bore, bearing.od, bearing.height]).toEqual(um(bore, od, height));
  });
});

describe('the look-ups', () => {
  it('lead from every bearing back to itself', () => {
    for (const it of linearBearings) {
      expect(linearBearing(it.designation)).toBe(it);
      expect(linearBearingsByDims(it.bore, it.od, it.length)).toContain(it);
    }
    for (const it of needleBearings) {
      expect(needleBearing(it.designation)).toBe(it);
      expect(needleBearingsByDims(it.bore, it.od, it.width)).toContain(it);
    }
    for (const it of thrustBearings) {
      expect(thrustBearing(it.designation)).toBe(it);
      expect(thrustBearingsByDims(it.bore, it.od, it.height)).toContain(it);
    }
  });
});
