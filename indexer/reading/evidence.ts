/**
 * What speaks for and against a reading, and how much: log-odds that category and dimensions are right. The certainty is the
 * logistic of their sum, so a script may fit the weights to lines with known answers.
 */
export const weights: Readonly<Record<string, number>> = {
  base: 0,
  // what says the category
  noun: 2.6,
  'noun-from-heading': 1.4,
  standard: 2.4,
  'sure-designation': 2.8,
  'bare-designation': 1.2,
  'thread-and-length': 2,
  'thread-alone': 0.4,
  'known-plain-noun': 2.7,
  'unknown-words-only': 1.5,
  'sheet-words': 2.6,
  'nothing-known': 0.2,
  // what says the dimensions
  designation: 0.8,
  agrees: 0.8,
  suffix: 0.3,
  listed: 0.8,
  'three-sizes': 0.2,
  'two-sizes': 0.1,
  labelled: 0.2,
  thread: 0.4,
  'no-sizes': 0.2,
  // what speaks against
  'one-size': -0.4,
  'loose-size': -0.8,
  swapped: -0.8,
  unlisted: -0.5,
  contradiction: -2.4,
  'unknown-behind': -1.1,
  'unknown-first': -1,
  'other-noun': -0.3,
  'thread-for-diameter': -0.3,
  review: -1.6,
  'sizes-unused': -0.7,
};

/** The certainty that features give, 0 to 1, to two decimals. */
export function certaintyOf(features: Iterable<string>): number {
  let sum = weights['base']!;
  for (const feature of features) {
    const weight = weights[feature];
    if (weight === undefined) throw new Error(`No weight for the feature "${feature}".`);
    sum += weight;
  }
  return Math.round(100 / (1 + Math.exp(-sum))) / 100;
}
