import { describe, expect, test } from 'vitest';
import {
  type CategoryName,
  categories,
  compareArticles,
  compareSizes,
  designationsOf,
  easilyConfused,
  nearness,
  openOf,
  parseSize,
  read,
  type Size,
  writeItem,
  writeSize,
} from '../../indexer/index.ts';
import { toMm } from '../../indexer/units/length.ts';

const inMillimetres = (size: Readonly<Record<string, number | string>>) =>
  Object.fromEntries(
    Object.entries(size).map(([key, value]) => [key, typeof value === 'number' ? toMm(value) : value]),
  );

describe('every published size writes itself, parses, and reads back to itself', () => {
  for (const [name, definition] of categories) {
    if (definition.sizes.length === 0) continue;
    test(name, () => {
      for (const published of definition.sizes) {
        const dims = inMillimetres(published);
        const text = writeSize(name, dims);
        expect(text, JSON.stringify(dims)).not.toBeNull();
        const parsed = parseSize(text!);
        expect(parsed, text!).not.toBeNull();
        expect(writeSize(name, parsed!.dims, parsed!.implied)).toBe(text);
        expect({ ...parsed!.dims, ...parsed!.implied }).toEqual(dims);
        const reading = read(text!);
        expect([text, reading.category, reading.size]).toEqual([text, name, text]);
      }
    });
  }
});

test('writeSize is null where the dimensions do not make a size', () => {
  expect(writeSize('bearing', { bore: 5, od: 11 })).toBeNull();
  expect(writeSize('screw', { thread: 'M3' })).toBeNull();
  expect(writeSize('screw', { thread: 'M3', length: 8 })).toBeNull();
  expect(writeSize('plain', {})).toBeNull();
});

test('a coarse pitch of ISO 261 is implied and written: screw M2.5x0.45x6', () => {
  expect(writeSize('screw', { thread: 'M2.5', length: 6 }, { pitch: 0.45 })).toBe('screw M2.5x0.45x6');
  expect(parseSize('screw M2.5x0.45x6')).toEqual({
    category: 'screw',
    dims: { thread: 'M2.5', length: 6 },
    implied: { pitch: 0.45 },
  });
  expect(parseSize('screw M3x0.35x10')?.dims).toEqual({ thread: 'M3', pitch: 0.35, length: 10 });
});

test('parseSize takes nothing that is not canonical', () => {
  for (const text of [
    '',
    'bearing',
    'bearing 5x11',
    'bearing 5x11x',
    'bearing 5x11x4x2',
    'bearing -5x11x4',
    'wheel 5x11x4',
    'bearing 5X11X4',
    'bearing NaNx1x1',
    'bearing 0x11x4',
    'pin 3x1e3',
  ])
    expect(parseSize(text), text).toBeNull();
});

test('writeItem adds what makes another article, in the order of the category', () => {
  expect(
    writeItem('bearing', { bore: 5, od: 11, width: 4 }, {}, { material: 'stainless', seal: 'two-shields' }),
  ).toBe('bearing 5x11x4 two-shields stainless');
  expect(writeItem('nut', { thread: 'M3' }, { pitch: 0.5 }, { hand: 'left' })).toBe('nut M3x0.5 left-hand');
  expect(writeItem('screw', { thread: 'M3' }, {}, {})).toBeNull();
});

test('openOf names what a list does not state', () => {
  expect(openOf('retaining-ring', { dia: 5 }, {}, { type: 'e-clip' })).toEqual(['material']);
  expect(
    openOf(
      'bearing',
      { bore: 5, od: 11 },
      {},
      { seal: 'open', type: 'linear', flanged: true, clearance: 'C3', material: 'steel' },
    ),
  ).toEqual(['width']);
});

test('designationsOf: 5x11x4 is MR115, 9.246x1.778 is AS568-012 (NSK catalogue; AS568 table)', () => {
  expect(designationsOf('bearing', { bore: 5, od: 11, width: 4 })).toContain('MR115');
  expect(designationsOf('o-ring', { id: 9.246, cs: 1.778 })).toContain('AS568-012');
});

const size = (text: string): Size => parseSize(text)!;

test('compareSizes names each dimension that differs, in the order of the size', () => {
  expect(compareSizes(size('bearing 5x11x4'), size('bearing 5x11x3'))).toEqual([
    { dimension: 'width', label: 'width', a: 4, b: 3, difference: -1 },
  ]);
  expect(compareSizes(size('screw M3x0.5x8'), size('screw M3x0.5x8'))).toEqual([]);
  expect(compareSizes(size('nut M3x0.5'), size('nut 6-32')).at(0)).toMatchObject({
    dimension: 'thread',
    difference: null,
  });
});

describe('compareArticles', () => {
  const article = (text: string) => {
    const { category, dims, implied, attrs } = read(text);
    return { category: category as CategoryName, dims, implied, attrs };
  };
  const standing = (a: string, b: string) =>
    Object.fromEntries(compareArticles(article(a), article(b)).map(row => [row.key, row.standing]));

  test('names every dimension and attribute, the same ones too, and takes open for no equal', () =>
    expect(standing('ball bearing 5x11x4 ZZ', 'ball bearing 5x11x3')).toEqual({
      bore: 'same',
      od: 'same',
      width: 'differs',
      seal: 'open',
    }));
  // ISO 261: the coarse pitch of M3 is 0.5, of M2.5 0.45.
  test('a pitch that only the standard gives is compared as well', () => {
    const rows = compareArticles(article('pan head screw M3x8'), article('countersunk screw M2.5x8'));
    expect(rows.find(row => row.key === 'pitch')).toMatchObject({ a: 0.5, b: 0.45, difference: -0.05 });
    expect(rows.find(row => row.key === 'head')).toMatchObject({ standing: 'differs', kind: 'attribute' });
  });
  test('two kinds of part share nothing to compare', () =>
    expect(compareArticles(article('bearing 5x11x4'), article('screw M3x8'))).toEqual([]));
});

test('nearness: nought for equal sizes, null across categories, and symmetric', () => {
  expect(nearness(size('pin 3x12'), size('pin 3x12'))).toBe(0);
  expect(nearness(size('pin 3x12'), size('shaft 3x12'))).toBeNull();
  expect(nearness(size('pin 3x12'), size('pin 6x16'))).toBe(5);
  expect(nearness(size('pin 6x16'), size('pin 3x12'))).toBe(5);
});

test.each([
  // One dimension alone differs.
  ['bearing 5x11x4', 'bearing 5x11x3', true],
  ['bearing 5x11x4', 'bearing 5x13x4', true],
  ['screw M3x0.5x8', 'screw M3x0.5x10', true],
  // The coarse pitch of ISO 261 follows its thread: 0.5 for M3, 0.45 for M2.5.
  ['screw M3x0.5x8', 'screw M2.5x0.45x8', true],
  ['screw M3x0.5x8', 'screw M2.5x0.45x6', false],
  // 3/16" x 3/8" x 1/8" is 4.762 x 9.525 x 3.175: within tenths of no 5x11x4, but of 4.9x9.7x3.2 it is.
  ['bearing 4.762x9.525x3.175', 'bearing 4.9x9.7x3.2', true],
  ['bearing 4.762x9.525x3.175', 'bearing 5x11x4', false],
  ['bearing 5x11x4', 'bearing 7x11x3', false],
  ['pin 3x12', 'pin 6x16', false],
  ['pin 3x12', 'shaft 3x12', false],
  // However many stock sizes lie between, a length out of all proportion is no neighbour.
  ['bearing 5x11x4', 'bearing 5x11x40', false],
  ['bearing 8x22x7', 'bearing 8x22x11', true],
  ['screw M3x0.5x8', 'screw M3x0.5x20', false],
  ['screw M3x0.5x8', 'screw M8x1.25x8', false],
  // ASME B1.1: no. 4 is 2.845, no. 5 3.175, no. 10 4.826; M3 and M5 are soon taken for them.
  ['screw M3x0.5x8', 'screw 4-40x8', true],
  ['screw M5x0.8x10', 'screw 10-32x10', true],
  ['nut M5x0.8', 'nut 10-32', true],
  ['nut M5x0.8', 'nut M3x0.5', false],
  // Makers' older 0.6 pitch on M3 beside the 0.5 of ISO 261.
  ['screw M3x0.5x8', 'screw M3x0.6x8', true],
  ['washer 3.2x7x0.5', 'washer 3.2x7x0.8', true],
  ['washer 3.2x7x0.5', 'washer 3.2x7x3', false],
  ['o-ring 10x2', 'o-ring 10x1.5', true],
  ['o-ring 10x2', 'o-ring 40x2', false],
  ['retaining-ring 8', 'retaining-ring 9', true],
  ['retaining-ring 8', 'retaining-ring 30', false],
])('%s and %s are easily taken for each other: %s', (a, b, confused) => {
  expect(easilyConfused(size(a), size(b))).toBe(confused);
  expect(easilyConfused(size(b), size(a))).toBe(confused);
});
