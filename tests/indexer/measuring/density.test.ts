import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readingDensity } from '../../../indexer/measuring/density.ts';

const integral = (density: (x: number) => number, from: number, to: number, step: number) => {
  let sum = 0;
  for (let x = from + step / 2; x < to; x += step) sum += density(x) * step;
  return sum;
};

/** The same, made, worn and measured point by point. */
function plainly(x: number, min: number, max: number, wear: number, deviation: number): number {
  const points = 400;
  let sum = 0;
  for (let m = 0; m < points; m++)
    for (let w = 0; w < points; w++) {
      const made = min + ((m + 0.5) / points) * (max - min);
      const worn = made - Math.log(1 - (w + 0.5) / points) * wear;
      const z = (x - worn) / deviation;
      sum += Math.exp(-0.5 * z * z) / (deviation * Math.sqrt(2 * Math.PI));
    }
  return sum / points ** 2;
}

describe('readingDensity', () => {
  it('sums to one over all readings, whatever limits, wear and noise', () => {
    fc.assert(
      fc.property(
        fc.record({
          width: fc.constantFrom(0, 8, 50, 120),
          wear: fc.constantFrom(-20, -5, -0.5, 0, 2, 15),
          deviation: fc.constantFrom(2, 15, 40),
        }),
        ({ width, wear, deviation }) => {
          const made = { min: 5000, max: 5000 + width };
          const sum = integral(x => readingDensity(x, made, wear, deviation), 4000, 6200, 0.5);
          expect(sum).toBeCloseTo(1, 2);
        },
      ),
      { numRuns: 40 },
    );
  });

  it.each([
    [4990, 20, 15],
    [5030, 20, 15],
    [5090, 20, 5],
    [5010, 3, 5],
  ])('of %d with wear %d and noise %d equals the plain sum', (x, wear, deviation) => {
    const plain = plainly(x, 4992, 5020, wear, deviation);
    expect(readingDensity(x, { min: 4992, max: 5020 }, wear, deviation) / plain).toBeCloseTo(1, 1);
  });

  it('wear moves a bore up and a shaft down', () => {
    const made = { min: 5000, max: 5010 };
    expect(readingDensity(5040, made, 10, 5)).toBeGreaterThan(readingDensity(4970, made, 10, 5) * 100);
    expect(readingDensity(4970, made, -10, 5)).toBeGreaterThan(readingDensity(5040, made, -10, 5) * 100);
  });
});
