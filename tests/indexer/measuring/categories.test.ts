import { describe, expect, it } from 'vitest';
import { squeeze } from '../../../indexer/categories/o-ring/measuring.ts';
import { rateRange, springRate } from '../../../indexer/categories/spring/rate.ts';
import { measurings } from '../../../indexer/measuring/categories.ts';
import { limitsOf } from '../../../indexer/measuring/limits.ts';

describe.each([...measurings.values()])('$category', measuring => {
  const whole = measuring.candidates(new Set(['length']));

  it('writes a size for every published candidate, and reads it back', () => {
    for (const { dims } of whole) {
      const text = measuring.write(dims, {});
      expect(text, JSON.stringify(dims)).not.toBeNull();
      const parsed = measuring.parse(text!)!;
      expect({ ...parsed.implied, ...parsed.dims }).toMatchObject(dims);
    }
  });

  it('has limits in order for what it says it measures, each with its source', () => {
    const keys = new Set(measuring.measurable.map(each => each.key));
    for (const candidate of whole)
      for (const key of Object.keys(candidate.made)) {
        expect(keys).toContain(key);
        for (const made of limitsOf(candidate, key, {})) {
          expect(made.min, `${key} of ${JSON.stringify(candidate.dims)}`).toBeLessThanOrEqual(made.max);
          expect(made.min).toBeGreaterThan(0);
          expect(made.source).not.toBe('');
        }
      }
  });
});

const madeOf = (category: 'screw', designation: string, key: string) => {
  const all = measurings.get(category)!.candidates(new Set());
  return limitsOf(all.find(each => each.designations[0] === designation)!, key, {})[0]!;
};

describe('outside diameter of sound screws', () => {
  // ISO 965 class 6g as suppliers' tables print it; ASME B1.1 class 2A by its formulas.
  it.each([
    ['M1.6', 1.496, 1.581],
    ['M2', 1.886, 1.981],
    ['M2.5', 2.38, 2.48],
    ['M3', 2.874, 2.98],
    ['M4', 3.838, 3.978],
    ['M5', 4.826, 4.976],
    ['M6', 5.794, 5.974],
    ['2-56', 2.065, 2.169],
    ['3-56', 2.393, 2.497],
    ['4-40', 2.695, 2.824],
    ['5-40', 3.025, 3.155],
    ['8-36', 4.006, 4.145],
    ['10-32', 4.651, 4.803],
  ])('%s: %d to %d', (designation, min, max) => {
    const made = madeOf('screw', designation, 'major');
    expect(Math.abs(made.min / 1000 - min)).toBeLessThanOrEqual(0.001);
    expect(Math.abs(made.max / 1000 - max)).toBeLessThanOrEqual(0.001);
  });
});

describe('springRate', () => {
  it('of wire .063, mean .430, 18.75 coils at 11.7e6 psi is 15.45 lbf/in (a course solution)', () => {
    expect(springRate({ wire: 0.063, mean: 0.43, active: 18.75 }, 11.7e6)).toBeCloseTo(15.45, 1);
  });

  it('of copper wire 1 mm, mean 10 mm, 50 coils at 43.2 GPa is 108 N/m (a physics text)', () => {
    expect(1000 * springRate({ wire: 1, mean: 10, active: 50 }, 43_200)).toBeCloseTo(108, 5);
  });

  it('varies by -6.2 to +6.5 % for 0.001 in of the 0.063 wire (worked out from the formula)', () => {
    const coil = { wire: 0.063, mean: 0.43, active: 18.75 };
    const rate = springRate(coil, 11.7e6);
    const { least, most } = rateRange(coil, { wire: 0.001, mean: 0, active: 0 }, 11.7e6);
    expect(100 * (least / rate - 1)).toBeCloseTo(-6.2, 1);
    expect(100 * (most / rate - 1)).toBeCloseTo(6.5, 1);
  });

  it('of 0.3 wire known to 0.02 is not worth better than a quarter (spring makers)', () => {
    const coil = { wire: 0.3, mean: 3, active: 8 };
    const rate = springRate(coil, 79_300);
    const { least, most } = rateRange(coil, { wire: 0.02, mean: 0, active: 0 }, 79_300);
    expect(100 * (least / rate - 1)).toBeCloseTo(-24, 0);
    expect(100 * (most / rate - 1)).toBeCloseTo(30, -0.5);
  });
});

it('a 2.0 cord in a groove 1.7 deep is squeezed 15 % (O-ring guide)', () => {
  expect(squeeze(2, 1.7)).toBeCloseTo(15, 9);
});
