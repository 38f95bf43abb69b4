import { describe, expect, test } from 'vitest';
import { read } from '../../indexer/index.ts';
import { mendFigures } from '../../indexer/reading/misread-figures.ts';

/** Lines that a careful person would not match silently, and what of them is not settled (common practice). */
const doubtful: [line: string, notGiven: string[]][] = [
  ['screw M3x0.5-8 or 10', ['length']],
  ['shaft 8mm or 5/16"', ['dia', 'length']],
  ['Cap screws M3 × 8, 10, 16', ['length']],
  ['shim 0.1 - 0.5 mm', ['thickness']],
  ['bearings 5x11x4, 5x11x5', ['width']],
  ['pins 3x8...3x12', ['length']],
  ['gears 20T/30T', ['teeth']],
  ['Bevel gear pair 16T/32T', ['teeth']],
  ['spring wire 8 OD 0.8', ['wire', 'od']],
  ['washer 3x7x12', []],
  ['washers 3.2 / 4.3 / 5.3', ['id', 'od', 'thickness']],
  ['washer ID 8 OD 5', ['id', 'od']],
  ['0-ring 12x2', []],
  ['BaII bearing 8x14x4', []],
  ['Washer or shim 5x8', []],
  ['M5 x 20mm SHCS / BHCS', []],
  ['screw M4x10 pan or countersunk head', []],
  ['Schraube M4x10 Linsenkopf oder Senkkopf', []],
  ['bearing 608 ZZ / 2RS', []],
  ['M3x0.5', ['length']],
  ['M10x1.25', ['length']],
];

/** What a scanner made of a line, what was printed, and which dimension is left to a person. */
const scanned: [line: string, printed: string, open: string][] = [
  ['M3xl2 SHCS', 'screw M3x0.5x12', 'length'],
  ['M4xIO button head screw', 'screw M4x0.7x10', 'length'],
  ['Screw M3xB', 'screw M3x0.5x8', 'length'],
  ['Screw M2,S x 6', 'screw M2.5x0.45x6', 'thread'],
  ['bearing 5.l x 8 x 2.5', 'bearing 5.1x8x2.5', 'bore'],
  ['Washer S.3x10x1', 'washer 5.3x10x1', 'id'],
  ['dowel pin 3 x l2', 'pin 3x12', 'length'],
  ['6O8ZZ', 'bearing 8x22x7', 'bore'],
  ['MR1O5ZZ', 'bearing 5x10x4', 'bore'],
];

describe('doubtful lines', () => {
  test.each(doubtful)('%s', (line, notGiven) => {
    const { review, dims, notes } = read(line);
    expect(review).toBe(true);
    expect(notes.length).toBeGreaterThan(0);
    for (const key of notGiven) expect(dims).not.toHaveProperty(key);
  });

  test.each(scanned)('%s is offered as %s', (line, printed, open) => {
    const { review, dims, alternatives, size } = read(line);
    expect(review).toBe(true);
    expect(dims).not.toHaveProperty(open);
    expect(size).not.toBe(printed);
    expect(alternatives[0]).toMatchObject({ size: printed });
  });

  test('letters that name a dimension or a part stay letters', () => {
    for (const text of [
      'pin d3 x L20',
      'SPOOL 20x8',
      'M3 x 8 S',
      '20 l oil',
      'B10 x 5',
      'KOOL 5 x 8',
      'BOX 5 x 10',
    ])
      expect(mendFigures(text)).toEqual({ text, places: [] });
  });

  test('two lines run together, marks alone, and the mark for the same again are left to a person', () => {
    for (const line of ['40 IDLER GEAR 36T 1 41 PINION 12T 1', '???', '?? see sketch', '"'])
      expect(read(line)).toMatchObject({ category: 'unsure', dims: {}, qty: null, review: true });
  });

  test('a needle clutch is wider than its outside diameter, as published: HF0612 is 6 x 10 x 12 (makers’ catalogues)', () => {
    expect(read('one way clutch 6x10x12').review).toBe(false);
  });
});
