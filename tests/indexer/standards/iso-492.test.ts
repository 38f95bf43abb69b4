import { describe, expect, it } from 'vitest';
import { deviations } from '../../../indexer/standards/iso-286.ts';
import { type BearingClass, bearingTolerances } from '../../../indexer/standards/iso-492.ts';

describe('bearingTolerances', () => {
  // ISO 492 as bearing makers print it: class, bore, outside diameter, then the lower deviations in µm.
  it.each<[BearingClass, number, number, number, number, number]>([
    ['normal', 2, 5, -8, -8, -40],
    ['normal', 5, 11, -8, -8, -120],
    ['normal', 15, 32, -8, -11, -120],
    ['normal', 20, 42, -10, -11, -120],
    ['normal', 40, 68, -12, -13, -120],
    ['class6', 5, 11, -7, -7, -120],
    ['class5', 5, 11, -5, -5, -40],
    ['class5', 20, 42, -6, -7, -120],
  ])('of %s at %d x %d are %d, %d and %d', (toleranceClass, bore, od, ...lower) => {
    const found = bearingTolerances({ bore: bore * 1000, od: od * 1000 }, toleranceClass)!;
    expect([found.bore, found.od, found.width]).toEqual(lower);
  });

  it('takes a bore at the end of a range to that range', () => {
    expect(bearingTolerances({ bore: 2500, od: 6000 })!.width).toBe(-40);
    expect(bearingTolerances({ bore: 2501, od: 6000 })!.width).toBe(-120);
  });

  it('is null outside the tables', () => {
    expect(bearingTolerances({ bore: 55_000, od: 80_000 })).toBeNull();
    expect(bearingTolerances({ bore: 50_000, od: 151_000 })).toBeNull();
  });
});

describe('a 5 mm bearing on its shaft', () => {
  // Greatest clearance and greatest interference in µm, as a bearing handbook prints them for a normal bore of 5 mm.
  it.each([
    ['g6', 12, 4],
    ['h6', 8, 8],
    ['js6', 4, 12],
    ['j6', 2, 14],
  ])('of %s has up to %d clearance and %d interference', (toleranceClass, clearance, interference) => {
    const { bore } = bearingTolerances({ bore: 5000, od: 11_000 })!;
    const shaft = deviations(toleranceClass, 5000)!;
    expect([0 - shaft.lower, shaft.upper - bore]).toEqual([clearance, interference]);
  });
});
