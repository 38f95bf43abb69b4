import { describe, expect, it } from 'vitest';
import {
  inchLengthLimits,
  lengthLimits,
  screwLengths,
  tappingLengthLimits,
} from '../../../indexer/standards/iso-4759.ts';

describe('lengthLimits', () => {
  // Length limits of ISO 7045 and ISO 4762 as suppliers' tables print them, mm.
  it.each([
    [3, 2.8, 3.2],
    [4, 3.76, 4.24],
    [5, 4.76, 5.24],
    [6, 5.76, 6.24],
    [8, 7.71, 8.29],
    [10, 9.71, 10.29],
    [12, 11.65, 12.35],
    [16, 15.65, 16.35],
    [20, 19.58, 20.42],
    [25, 24.58, 25.42],
    [40, 39.5, 40.5],
    [60, 59.4, 60.6],
  ])('of a %d mm screw are %d to %d', (length, min, max) => {
    expect(lengthLimits(length * 1000)).toEqual({ min: Math.round(min * 1000), max: Math.round(max * 1000) });
  });

  it('are wider from grade A to C', () => {
    const widths = (['A', 'B', 'C'] as const).map(grade => {
      const { min, max } = lengthLimits(20_000, grade)!;
      return max - min;
    });
    expect(widths).toEqual([840, 2100, 4200]);
  });

  it('are null above 120 mm', () => {
    expect(lengthLimits(120_001)).toBeNull();
  });

  it('never overlap for two screw lengths from 3 mm up that stand 1 mm or more apart', () => {
    const lengths = screwLengths.filter(length => length >= 3000);
    lengths.slice(1).forEach((length, at) => {
      expect(lengthLimits(length)!.min).toBeGreaterThan(lengthLimits(lengths[at]!)!.max);
    });
  });
});

describe('other screws', () => {
  it('tapping screws may be 0.8 mm off up to 25 mm and 1.3 above', () => {
    expect(tappingLengthLimits(25_000)).toEqual({ min: 24_200, max: 25_800 });
    expect(tappingLengthLimits(30_000)).toEqual({ min: 28_700, max: 31_300 });
  });

  it('inch screws may be 0.02 in short up to half an inch, 0.03 up to one (commercial tolerance, a supplier)', () => {
    expect(inchLengthLimits(12_700)).toEqual({ min: 12_192, max: 12_700 });
    expect(inchLengthLimits(19_050)).toEqual({ min: 18_288, max: 19_050 });
    expect(inchLengthLimits(25_401)).toBeNull();
  });
});
