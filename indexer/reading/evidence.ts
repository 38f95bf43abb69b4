import { weights } from './evidence-weights.ts';

/**
 * The certainty that features give, 0 to 1, to two decimals: the logistic of the sum of their weights. A feature without
 * a weight was not seen when they were fitted, and says nothing.
 */
export function certaintyOf(features: Iterable<string>): number {
  let sum = weights['base'] ?? 0;
  for (const feature of features) sum += weights[feature] ?? 0;
  return Math.round(100 / (1 + Math.exp(-sum))) / 100;
}
