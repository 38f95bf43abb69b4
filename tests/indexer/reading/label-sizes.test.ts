import { describe, expect, test } from 'vitest';
import { read } from '../../../indexer/index.ts';

/** Lines composed after the ways that drawings and tables name their sizes (common practice). */
describe('sizes and what the line calls them', () => {
  test.each([
    ['Spring De=8 d=0,8 L0=24', { od: 8, wire: 0.8, length: 24 }],
    ['引張ばね 線径0.5 外径4', { wire: 0.5, od: 4 }],
    ['ワッシャー 内径5 外径10 厚さ0.5', { id: 5, od: 10, thickness: 0.5 }],
    ['Bearing D 16 d 5 B 5', { bore: 5, od: 16, width: 5 }],
    ['SPRING, .045 DIA WIRE, .48 O.D., 1.12 FREE LENGTH', { wire: 1.143, od: 12.192, length: 28.448 }],
    ['washer 9/32 ID, 3/4-inch OD', { id: 7.144, od: 19.05 }],
  ])('%s', (text, dims) => expect(read(text).dims).toEqual(dims));

  test.each([
    ['9 x 5 x 3 | 2', 'Bearings: OD x ID x W | qty', { bore: 5, od: 9, width: 3 }],
    ['6 × 0.5 × 25 | 2', 'Springs: OD x wire x length | qty', { od: 6, wire: 0.5, length: 25 }],
    ['Bearing | 26 | 10 | 8 | 2', 'Part | D | d | B | Qty', { bore: 10, od: 26, width: 8 }],
    ['0.8 | 9 | 30 | 2', 'Springs: wire Ø | outside Ø | free length | qty', { wire: 0.8, od: 9, length: 30 }],
  ])('%s under %s', (text, context, dims) => expect(read(text, { context }).dims).toEqual(dims));

  test('the letter behind a standard is its form: ISO 2341 forms A and B are without and with a hole', () => {
    expect(read('ISO 2341 - B - 6 x 30').dims).toEqual({ dia: 6, length: 30 });
  });

  test('a part number behind the reference is no size', () => {
    expect(read('27 38-1190 E-RING 6 3').dims).toEqual({ dia: 6 });
  });

  test('words that programs know are words like any other', () => {
    expect(read('pin 5 constructor x 3').category).toBe('pin');
  });
});
