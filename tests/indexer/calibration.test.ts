import { expect, test } from 'vitest';
import { brier, brierOfBaseRate, calibrationError, calibrationPicture } from '../eval/calibration.ts';

// G. W. Brier, "Verification of forecasts expressed in terms of probability", Monthly Weather Review 78 (1950), for two outcomes
// and halved as is usual now: a forecast of 0.7 that comes true scores 0.09, one that does not 0.49.
test('brier: 0.7 that comes true scores 0.09, and 0.49 where it does not', () => {
  expect(brier([{ certainty: 0.7, right: true }])).toBeCloseTo(0.09);
  expect(brier([{ certainty: 0.7, right: false }])).toBeCloseTo(0.49);
  expect(brier([{ certainty: 1, right: true }])).toBe(0);
});

const nineOfTen = Array.from({ length: 10 }, (_, at) => ({ certainty: 0.9, right: at > 0 }));

test('nine of ten right, and 0.9 said of each: no error, and the score of the base rate', () => {
  expect(calibrationError(nineOfTen)).toBeCloseTo(0);
  expect(brier(nineOfTen)).toBeCloseTo(brierOfBaseRate(nineOfTen));
});

test('0.5 said where nine of ten are right is 0.4 off', () => {
  expect(calibrationError(nineOfTen.map(one => ({ ...one, certainty: 0.5 })))).toBeCloseTo(0.4);
  expect(calibrationPicture(nineOfTen)[0]).toMatch(/^0\.90 .* n {3}10 {2}said 0\.900 {2}right 0\.900$/);
});
