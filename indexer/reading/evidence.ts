import { weights } from './evidence-weights.ts';

/** What speaks for or against a reading, by name, and what each means. Their weights are fitted to labelled lines. */
export const evidence = {
  noun: 'a known noun names the part',
  standard: 'a standard says what it is',
  'sure-designation': 'a designation that only one category has',
  'bare-designation': 'nothing but a number that a bearing has too',
  'noun-from-heading': 'only the heading names the part',
  'thread-and-length': 'a thread and a length, without a name',
  'thread-alone': 'a thread and a describing word, without a name',
  'guessed-plain': 'words that no dictionary holds, taken for a part of no measured kind',
  'sheet-words': 'words of a sheet, not of a part',
  'sheet-word': 'such a word stands beside the name of a part',
  'other-noun': 'the name of another part stands in the line too',
  'plain-other-noun': 'a part of no measured kind, beside the name of one',
  'plain-sized': 'a part of no measured kind, beside a thread or a size of several numbers',
  'plain-unknown-words': 'a part of no measured kind, beside words that nobody knows',
  'plain-unknown-behind': 'such words stand behind its name',
  'unknown-word': 'one word that no dictionary holds',
  'unknown-words': 'several of them',
  'unknown-behind': 'unknown words stand behind the name, and may be what the part is',
  'unknown-first': 'unknown words stand in front of it',
  'name-alone': 'a name without any size',
  complete: 'every dimension that makes the size is given',
  incomplete: 'sizes are printed, and a dimension is still open',
  'size-left': 'a size is printed that no dimension came from',
  'figure-left': 'a figure is printed that nothing explains',
  designation: 'a designation or standard defines the dimensions',
  listed: 'the sizes are a published one',
  agrees: 'printed sizes and designation say the same',
  'loose-size': 'a size stands apart, and may be another dimension',
  swapped: 'the sizes are printed in the unusual order',
  'one-size': 'one size, of which the kind of part decides what it is',
  'thread-for-diameter': 'M8 of a smooth part, taken as 8 mm',
  review: 'something in the line contradicts itself or is in doubt',
} as const;

/** What speaks for and against one reading, each by its name and once. They are few: a list is searched sooner than a set is made. */
export class Features {
  readonly names: string[];

  constructor(names: readonly string[] = []) {
    this.names = [...names];
  }

  has(name: string): boolean {
    return this.names.includes(name);
  }

  add(name: string): void {
    if (!this.has(name)) this.names.push(name);
  }
}

/**
 * The certainty that features give, 0 to 1, to two decimals: the logistic of the sum of their weights. A feature without
 * a weight says nothing.
 */
export function certaintyOf(features: readonly string[]): number {
  let sum = weights['base'] ?? 0;
  for (const feature of features) sum += weights[feature] ?? 0;
  return Math.round(100 / (1 + Math.exp(-sum))) / 100;
}
