import { describe, expect, it } from 'vitest';
import { fitBetween } from '../../../indexer/fitting/clearance.ts';
import { playAfter, remainingPlay } from '../../../indexer/fitting/play.ts';
import { shimsFor, stack } from '../../../indexer/fitting/shims.ts';
import { axialPlay, radialPlay } from '../../../indexer/standards/iso-5753.ts';
import { inchName, inchShaft } from '../../../indexer/units/inch-name.ts';

describe('remainingPlay', () => {
  // A bearing maker's worked example: 0.0002 in of play less 0.8 x 0.0003 in of interference leaves -0.00004 in.
  it('of 0.0002 in under 0.0003 in of interference is -0.00004 in', () => {
    expect(remainingPlay(0.0002, 0.0003)).toBeCloseTo(-0.00004, 9);
  });

  it('of 5.1 under 7.6 µm is -1.0 µm: preloaded', () => {
    expect(remainingPlay(5.1, 7.6)).toBeCloseTo(-1, 1);
    expect(playAfter({ min: 5.1, max: 5.1 }, { min: 7.6, max: 7.6 }, { min: 0, max: 0 }).state).toBe(
      'preloaded',
    );
  });
});

describe('radialPlay', () => {
  // Two bearing makers' handbooks, bores to 10 mm.
  it.each([
    ['C2', 0, 7],
    ['CN', 2, 13],
    ['C3', 8, 23],
    ['C4', 14, 29],
    ['MC1', 0, 5],
    ['MC3', 5, 10],
    ['MC5', 13, 20],
    ['MC6', 20, 28],
  ])('%s is %d to %d µm', (group, min, max) => {
    expect(radialPlay(group, 8000)).toEqual({ min, max });
  });

  it('has no miniature group from 10 mm, and nothing above 50 mm', () => {
    expect(radialPlay('MC3', 10_000)).toBeNull();
    expect(radialPlay('C3', 51_000)).toBeNull();
    expect(radialPlay('C9', 8000)).toBeNull();
  });

  it('is 8 to 10 times as much along the shaft', () => {
    expect(axialPlay({ min: 5, max: 10 })).toEqual({ min: 40, max: 100 });
  });
});

it('fitBetween keeps clearance and interference apart, both positive', () => {
  expect(fitBetween({ min: 10_000, max: 10_015 }, { min: 9985, max: 9995 }, 1)).toEqual({
    kind: 'clearance',
    clearanceMin: 0.005,
    clearanceMax: 0.03,
    interferenceMin: 0,
    interferenceMax: 0,
    clearanceProbability: 1,
  });
});

describe('stack', () => {
  it.each([
    [0, 120, []],
    [400, 520, [200, 150]],
    [50, 600, []],
    [1000, 1100, [500, 300, 150]],
  ] as const)('of a gap from %d to %d µm is %j', (least, most, thicknesses) => {
    expect(stack(least, most)).toEqual(thicknesses);
  });

  it('never closes the gap', () => {
    for (let least = 0; least < 3000; least += 37) {
      const total = stack(least, least + 150).reduce((sum, each) => sum + each, 0);
      expect(total).toBeLessThanOrEqual(least);
    }
  });
});

it('shimsFor an inner ring takes a ring of DIN 988 only where it stays off the outer one', () => {
  const ring = (bore: number, od: number) => shimsFor({ bore, od }, { min: 400, max: 520 })[0];
  expect(ring(20_000, 47_000)).toMatchObject({ standard: 'DIN 988', id: 20, od: 28 });
  expect(ring(8000, 22_000)).toMatchObject({ standard: null, id: 8 });
});

it.each([
  [4762, '3/16'],
  [3967, '5/32'],
  [3969, '5/32'],
  [7938, '5/16'],
  [12_700, '1/2'],
  [25_400, '1'],
  [28_575, '1 1/8'],
  [5000, null],
  [8000, null],
  [2300, null],
])('inchName of %d µm is %s', (um, name) => {
  expect(inchName(um)).toBe(name);
});

it.each([
  // 5/16 in is 7.9375 mm, 3/8 in 9.525 mm, 3/16 in 4.7625 mm.
  [7930, 6, '5/16'],
  [9518, 6, '3/8'],
  [4750, 30, '3/16'],
  [7990, 6, null],
  [4996, 4, null],
  // A calliper does not part 3/4 in, 19.05 mm, from a 19 mm shaft.
  [19_020, 36, null],
])('inchShaft of %d µm, known to %d, is %s', (um, doubt, name) => {
  expect(inchShaft(um, doubt)).toBe(name);
});
