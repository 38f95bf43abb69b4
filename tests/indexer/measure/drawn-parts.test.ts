import { describe, expect, test } from 'vitest';
import { figures } from '../../eval/measure.ts';
import { foreign, own } from '../../eval/measuring/noise.ts';

/** Parts drawn from the standards' tolerances, few enough for every run; `npm run eval -- measure` draws many. */
describe('parts drawn at random', { timeout: 30_000 }, () => {
  test("measured with the model's own noise are in the stated set, as surely as it says", () => {
    const { inSet, calibrationError, none, falseNone } = figures(120, own);
    expect(inSet).toBeGreaterThanOrEqual(0.99);
    expect(calibrationError).toBeLessThanOrEqual(0.02);
    expect(none).toBeGreaterThanOrEqual(0.85);
    expect(falseNone).toBeLessThanOrEqual(0.03);
  });

  test("measured with noise that is not the model's still are, and better than by the nearest nominal", () => {
    const { inSet, calibrationError, none, falseNone, right, nearestRight } = figures(120, foreign);
    expect(inSet).toBeGreaterThanOrEqual(0.97);
    expect(calibrationError).toBeLessThanOrEqual(0.04);
    expect(none).toBeGreaterThanOrEqual(0.85);
    expect(falseNone).toBeLessThanOrEqual(0.03);
    expect(right).toBeGreaterThan(nearestRight);
  });
});
