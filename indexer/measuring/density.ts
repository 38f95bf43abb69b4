import type { Limits } from '../standards/iso-965.ts';
import { normalBelow, normalDensity } from '../units/uncertain.ts';

/** Share of a normal error plus a one-sided exponential one (mean `wear`) below y; all in one unit. */
function below(y: number, deviation: number, wear: number): number {
  const z = y / deviation;
  if (z < -8) return 0;
  if (wear === 0) return normalBelow(z);
  const ratio = deviation / wear;
  // Wear that is lost in the noise only moves it.
  if (ratio > 6) return normalBelow((y - wear) / deviation);
  return normalBelow(z) - Math.exp(0.5 * ratio * ratio - y / wear) * normalBelow(z - ratio);
}

/**
 * Density of reading x from a part made evenly between its limits, then worn one way, then measured with a normal error.
 * All in micrometres, the density per micrometre. `wear` is the mean of an exponential amount: above nought the dimension
 * grows (a bore), below nought it shrinks (a shaft). `deviation` is above nought.
 */
export function readingDensity(x: number, made: Limits, wear: number, deviation: number): number {
  // What shrinks is what grows, seen in a mirror.
  const [value, min, max] = wear < 0 ? [-x, -made.max, -made.min] : [x, made.min, made.max];
  const amount = Math.abs(wear);
  const reach = 8 * deviation;
  if (value < min - reach || value > max + reach + 40 * amount) return 0;
  if (max - min < 0.05 * deviation) {
    const middle = value - (min + max) / 2;
    if (amount === 0) return normalDensity(middle / deviation) / deviation;
    const step = 0.02 * deviation;
    const rise = below(middle + step, deviation, amount) - below(middle - step, deviation, amount);
    return Math.max(0, rise / (2 * step));
  }
  const share = below(value - min, deviation, amount) - below(value - max, deviation, amount);
  return Math.max(0, share / (max - min));
}
