import { inch, mm, type Um } from '../units/length.ts';

/**
 * Nominal diameters of balls (ISO 3290-1), from memory: the metric ones, and the inch ones in sixty-fourths. Grade 25 is
 * ample for loose balls in small mechanisms (common practice).
 */

/** Metric balls, in micrometres, smallest first. */
export const metricBalls: readonly Um[] = [
  0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8, 8.5, 9, 9.5,
  10, 10.5, 11, 11.5, 12, 12.5, 13, 14, 15, 16, 17, 18, 19, 20, 22, 24, 25,
].map(mm);

/** Sixty-fourths of an inch that balls are made in. */
const sixtyFourths = [
  1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 22, 24, 26, 28, 30, 32, 34, 36, 38,
  40, 44, 48, 56, 64,
];

/** A ball of an inch size. */
export interface InchBall {
  /** As it is called: `5/32`. */
  readonly fraction: string;
  readonly diameter: Um;
}

/** Inch balls, smallest first; diameters in micrometres. */
export const inchBalls: readonly InchBall[] = sixtyFourths.map(n => ({
  fraction: fraction(n, 64),
  diameter: inch(n / 64),
}));

function fraction(top: number, bottom: number): string {
  if (bottom === 1) return String(top);
  return top % 2 === 0 ? fraction(top / 2, bottom / 2) : `${top}/${bottom}`;
}

/** All published ball diameters in micrometres, smallest first. */
export const ballDiameters: readonly Um[] = [
  ...new Set([...metricBalls, ...inchBalls.map(ball => ball.diameter)]),
].sort((a, b) => a - b);

/** The usual inch sizes of hubs, steering and older mechanisms, in micrometres (common practice). */
export const usualInchBalls: readonly Um[] = ['1/8', '5/32', '3/16', '7/32', '1/4'].map(
  name => inchBalls.find(ball => ball.fraction === name)!.diameter,
);
