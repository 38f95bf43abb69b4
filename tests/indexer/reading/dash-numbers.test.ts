import { describe, expect, test } from 'vitest';
import { read } from '../../../indexer/index.ts';

/** AS568: -010 is 0.239 x 0.070 in, -210 is 0.734 x 0.139 in; the military standards take over its dash numbers. */
describe('dash numbers of O-rings', () => {
  test.each([
    ['PACKING, PREFORMED, MS28775-010', undefined, { id: 6.071, cs: 1.778 }],
    ['2-210 NBR', 'O-RINGS', { id: 18.644, cs: 3.531 }],
  ])('%s', (text, context, dims) =>
    expect(read(text, context ? { context } : {})).toMatchObject({ category: 'o-ring', dims, review: false }),
  );

  test('two numbers without the word are no ring', () => expect(read('2-210').category).not.toBe('o-ring'));
});

/** Common practice of parts lists. */
describe('figures that are no sizes', () => {
  test.each([
    ['12 41-2207-B CIRCLIP 6MM 1 2 -', { dia: 6 }],
    ['Pinion gear 24T 48P', { teeth: 24 }],
    ['Gleitlager LM6UU (12 × 19 mm)', { bore: 6, od: 12, width: 19 }],
    ['Fächerscheibe A 5,3 DIN 6797', { id: 5.3 }],
  ])('%s', (text, dims) => expect(read(text).dims).toEqual(dims));
});
