import { describe, expect, it } from 'vitest';
import { ballDiameters, inchBalls, metricBalls, usualInchBalls } from '../../../indexer/standards/balls.ts';

describe('balls', () => {
  // ISO 3290-1 as ball makers print it, mm.
  it.each([
    ['1/32', 0.79375],
    ['1/16', 1.5875],
    ['3/32', 2.38125],
    ['1/8', 3.175],
    ['5/32', 3.96875],
    ['3/16', 4.7625],
    ['7/32', 5.55625],
    ['1/4', 6.35],
    ['5/16', 7.9375],
    ['1', 25.4],
  ])('of %s inch measure %d', (fraction, mm) => {
    expect(
      Math.abs(inchBalls.find(ball => ball.fraction === fraction)!.diameter - mm * 1000),
    ).toBeLessThanOrEqual(0.51);
  });

  it('are listed once, smallest first, metric and inch together', () => {
    expect(new Set(ballDiameters).size).toBe(ballDiameters.length);
    expect([...ballDiameters].sort((a, b) => a - b)).toEqual(ballDiameters);
    expect(ballDiameters.length).toBe(metricBalls.length + inchBalls.length);
  });

  it('of the usual inch sizes lie near no metric one but 5/32 and 3/16, 31 and 262 µm off', () => {
    const gaps = usualInchBalls.map(size => Math.min(...metricBalls.map(metric => Math.abs(metric - size))));
    expect(gaps.map(gap => gap < 40)).toEqual([false, true, false, false, false]);
  });
});
