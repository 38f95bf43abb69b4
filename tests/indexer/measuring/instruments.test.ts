import { describe, expect, it } from 'vitest';
import { deviationOfMean, insideJawReading, jawBiases } from '../../../indexer/measuring/instruments.ts';

describe('insideJawReading', () => {
  // Geometry: a flat of width t bridges a chord, so the reading is the square root of D² - t².
  it.each([
    [3, 0.3, 2.985],
    [3, 0.5, 2.958],
    [3, 0.7, 2.917],
    [5, 0.3, 4.991],
    [5, 0.5, 4.975],
    [5, 0.7, 4.951],
    [8, 0.3, 7.994],
    [8, 0.5, 7.984],
    [8, 0.7, 7.969],
  ])('of a %d bore by a %d land is %d', (bore, land, reading) => {
    expect(insideJawReading(bore, land)).toBeCloseTo(reading, 3);
  });

  it('of a land wider than the bore is nothing', () => {
    expect(insideJawReading(0.5, 0.7)).toBe(0);
  });
});

it('jawBiases are one-sided and smaller in a larger bore', () => {
  const [small, large] = [jawBiases(3000, null), jawBiases(8000, null)];
  expect(Math.min(...small)).toBeGreaterThan(0);
  expect(Math.max(...large)).toBeLessThan(Math.max(...small));
});

it('repeating averages the hand out, not the zero of the instrument', () => {
  expect(deviationOfMean('calliper-outside', 1)).toBeGreaterThan(deviationOfMean('calliper-outside', 4));
  expect(deviationOfMean('calliper-outside', 1_000_000)).toBeCloseTo(10, 1);
});
