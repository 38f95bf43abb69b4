import type { DifferenceAnswer } from '../../api/answers/index.ts';

/** Words for more and less of a dimension; any other is larger and smaller. */
const comparatives: Record<string, [more: string, less: string]> = {
  width: ['wider', 'narrower'],
  length: ['longer', 'shorter'],
  thickness: ['thicker', 'thinner'],
};

/** How a second size differs from a first, in a few words: `1.0 wider`, `outside diameter 1.0 smaller`. */
export function differenceWords({ dimension, label, a, b, difference }: DifferenceAnswer): string {
  if (difference === null) return `${label.toLowerCase()} ${b} instead of ${a}`;
  const amount = amountWords(Math.abs(difference));
  const pair = comparatives[dimension];
  if (pair) return `${amount} ${difference > 0 ? pair[0] : pair[1]}`;
  return `${label.toLowerCase()} ${amount} ${difference > 0 ? 'larger' : 'smaller'}`;
}

/** One decimal at least, three at most. */
function amountWords(amount: number): string {
  const written = String(Math.round(amount * 1000) / 1000);
  return written.includes('.') ? written : `${written}.0`;
}
