import { dimKeysOf } from '../categories/index.ts';
import type { CategoryName, Dims, Reading } from '../reading/reading.ts';
import { itemOf, writeSize } from '../size.ts';

/** Marks and words that stand for those of the line above, in seven languages (common practice of printed lists). */
const words = [
  'ditto',
  'dito',
  'dto\\.?',
  'do\\.',
  'do(?=\\s*$)',
  'idem',
  'ídem',
  'id\\.',
  'same(?:\\s+as\\s+(?:above|before))?',
  'as\\s+above',
  'wie\\s+(?:oben|vor(?:her|stehend)?|zuvor)',
  's\\.\\s?o\\.',
  'w\\.\\s?o\\.',
  '(?:le\\s+|la\\s+)?même(?:\\s+(?:que\\s+)?ci-dessus)?',
  'comme\\s+ci-dessus',
  'come\\s+sopra',
  'c\\.\\s?s\\.',
  '(?:igual\\s+)?que\\s+(?:el|la)?\\s*anterior',
  'als\\s+boven',
  'zie\\s+boven',
  '同上',
  '〃',
  '[-–—]?\\s?[″”“"]\\s?[-–—]?',
  "''",
  ',,',
];
const ditto = new RegExp(
  `^\\s*(?:(?:${words.join('|')})(?=$|[\\s,;:]|(?<=[〃同上])))+(?:[\\s,;:]+(?:〃|″|”|"|'')(?=$|[\\s,;:]))*[\\s,;:]*`,
  'iu',
);

/** Where the marks end that a line begins with for the words of the line above; 0 where it begins otherwise. */
export const dittoEnd = (text: string): number => ditto.exec(text)?.[0].length ?? 0;

/** The same text with its ditto marks as blanks, so that every place in it stays. */
export const withoutDitto = (text: string, end: number): string => ' '.repeat(end) + text.slice(end);

/** A reading whose line begins with ditto marks, filled from the one above; what the line itself states stands. */
export function fillFromAbove(own: Reading, above: Reading, isBare: boolean): Reading {
  if (above.category === 'not-a-part' || above.category === 'unsure') return own;
  if (isBare)
    return { ...above, qty: own.qty, spans: [], notes: [...above.notes, 'all of it from the line above'] };
  if (own.category !== above.category)
    return own.category === 'unsure' || own.category === 'not-a-part'
      ? {
          ...own,
          category: 'plain',
          review: true,
          notes: ['a ditto mark, and words that are not understood'],
        }
      : own;
  const category = above.category as CategoryName;
  const attrs = { ...above.attrs, ...own.attrs };
  const dims = fillDims(own, above, category);
  const implied =
    own.dims['thread'] === undefined && dims['thread'] !== undefined ? above.implied : own.implied;
  const size = writeSize(category, dims, implied);
  const filled = Object.keys(dims).length > Object.keys(own.dims).length;
  return {
    ...own,
    dims,
    attrs,
    implied,
    size,
    item: size === null ? null : itemOf(size, category, attrs),
    // Sizes put together of two lines are right only where both are, and the mark was meant so.
    certainty: Math.min(own.certainty, above.certainty),
    review: own.review || filled,
    notes: [
      ...own.notes,
      filled ? 'name and some sizes from the line above' : 'name and kind from the line above',
    ],
  };
}

/** The sizes stated, and those of the line above for which the line states none. */
function fillDims(own: Reading, above: Reading, category: CategoryName): Dims {
  const dims: Dims = {};
  for (const key of dimKeysOf(category)) {
    // A pitch belongs to its thread.
    const from =
      key === 'pitch' && own.dims['thread'] !== undefined ? own.dims : { ...above.dims, ...own.dims };
    const value = from[key];
    if (value !== undefined) dims[key] = value;
  }
  return dims;
}
