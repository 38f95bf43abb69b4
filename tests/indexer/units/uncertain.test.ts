import { describe, expect, it } from 'vitest';
import {
  chanceAbove,
  deviationOf,
  normalBelow,
  normalExcess,
  uncertaintyOf,
} from '../../../indexer/units/uncertain.ts';

describe('normalBelow', () => {
  // The table of the standard normal distribution that every handbook of statistics prints.
  it.each([
    [-3, 0.00135],
    [-1.96, 0.025],
    [-1, 0.15866],
    [0, 0.5],
    [0.5, 0.69146],
    [1.645, 0.95002],
    [2.326, 0.98999],
  ])('of %d is %d', (z, share) => {
    expect(normalBelow(z)).toBeCloseTo(share, 5);
  });

  it('keeps its relative precision far out: 9.866e-10 at -6', () => {
    expect(normalBelow(-6) / 9.865876e-10).toBeCloseTo(1, 5);
  });
});

describe('normalExcess', () => {
  it('is the integral of normalBelow', () => {
    const step = 0.001;
    let sum = 0;
    for (let z = -9 + step / 2; z < 1; z += step) sum += normalBelow(z) * step;
    expect(normalExcess(1)).toBeCloseTo(sum, 5);
  });
});

describe('chanceAbove', () => {
  it('is a half for an interval about the mean', () => {
    expect(chanceAbove(-4, 4, 0, 3)).toBeCloseTo(0.5, 6);
  });

  it('of an exact other value is the part of the interval above it', () => {
    expect(chanceAbove(0, 8, 2, 0)).toBe(0.75);
    expect(chanceAbove(0, 8, 9, 0)).toBe(0);
    expect(chanceAbove(5, 5, 5, 0)).toBe(0.5);
  });

  it('of one value is the normal share', () => {
    expect(chanceAbove(1.96, 1.96, 0, 1)).toBeCloseTo(0.975, 4);
  });
});

it('an uncertainty holds 95 in 100', () => {
  expect(normalBelow(30 / deviationOf(30)) - normalBelow(-30 / deviationOf(30))).toBeCloseTo(0.95, 5);
  expect(uncertaintyOf(deviationOf(0.03))).toBeCloseTo(0.03, 9);
});
