/** A value and its doubt, in one unit. `uncertainty` is the half-width that holds 95 in 100; nought is exact. */
export interface Uncertain {
  readonly value: number;
  readonly uncertainty: number;
}

/** Half-widths of a normal distribution that hold 95 in 100, in standard deviations. */
const ninetyFive = 1.959964;

/** The standard deviation behind a 95-in-100 half-width. */
export const deviationOf = (uncertainty: number): number => uncertainty / ninetyFive;

/** The 95-in-100 half-width of a standard deviation. */
export const uncertaintyOf = (deviation: number): number => deviation * ninetyFive;

/** Density of the standard normal distribution. */
export const normalDensity = (z: number): number => 0.3989422804014327 * Math.exp(-0.5 * z * z);

/**
 * Share of a standard normal distribution below z, with a relative error under 2e-7 in the tails too.
 * Source: the Chebyshev fit of erfc in Press and others, Numerical Recipes.
 */
export function normalBelow(z: number): number {
  const x = Math.abs(z) * Math.SQRT1_2;
  const t = 1 / (1 + 0.5 * x);
  let fit = -0.82215223 + t * 0.17087277;
  fit = -1.13520398 + t * (1.48851587 + t * fit);
  fit = -0.18628806 + t * (0.27886807 + t * fit);
  fit = 0.37409196 + t * (0.09678418 + t * fit);
  fit = -1.26551223 + t * (1.00002368 + t * fit);
  const tail = 0.5 * t * Math.exp(fit - x * x);
  return z > 0 ? 1 - tail : tail;
}

/** Mean of what a standard normal value moved by z has above nought: the integral of {@link normalBelow}. */
export const normalExcess = (z: number): number => z * normalBelow(z) + normalDensity(z);

/**
 * Chance that a value spread evenly from `least` to `greatest` is above another of this mean and standard deviation.
 * All in one unit; `greatest` not below `least`.
 */
export function chanceAbove(least: number, greatest: number, mean: number, deviation: number): number {
  if (deviation === 0) {
    if (greatest === least) return least > mean ? 1 : least < mean ? 0 : 0.5;
    return Math.min(1, Math.max(0, (greatest - mean) / (greatest - least)));
  }
  const [low, high] = [(least - mean) / deviation, (greatest - mean) / deviation];
  if (high - low < 1e-6) return normalBelow((low + high) / 2);
  return Math.min(1, Math.max(0, (normalExcess(high) - normalExcess(low)) / (high - low)));
}
