import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { categories, categoryNames, type Reading, read } from '../../indexer/index.ts';
import { toMm } from '../../indexer/units/length.ts';

const fieldOf = (text: string, { spans }: Reading, field: string) =>
  spans.filter(s => s.field === field).map(s => text.slice(s.start, s.end));

describe('the rules of a reading', () => {
  test('each field is found at its characters', () => {
    const text = '2x Bearing 5 × 11 × 4 ZZ, stainless';
    const reading = read(text);
    expect(reading).toMatchObject({
      size: 'bearing 5x11x4',
      qty: 2,
      attrs: { seal: 'two-shields', material: 'stainless' },
    });
    expect(fieldOf(text, reading, 'bore')).toEqual(['5']);
    expect(fieldOf(text, reading, 'od')).toEqual(['11']);
    expect(fieldOf(text, reading, 'material')).toEqual(['stainless']);
    expect(fieldOf(text, reading, 'qty')).toEqual(['2x']);
  });

  test('a designation settles dimensions and says so', () => {
    const text = 'Kugellager 623-2RS';
    const reading = read(text);
    expect(reading.size).toBe('bearing 3x10x4');
    expect(fieldOf(text, reading, 'designation')).toEqual(['623-2RS']);
    expect(fieldOf(text, reading, 'bore')).toEqual([]);
  });

  test('a designation never gives a width that the form decides: 688 is 4 open and 5 shielded (NSK catalogue)', () => {
    expect(read('bearing 688').dims).toEqual({ bore: 8, od: 16 });
    expect(read('bearing 688ZZ').dims).toEqual({ bore: 8, od: 16, width: 5 });
    expect(read('bearing 688 open').dims).toEqual({ bore: 8, od: 16, width: 4 });
  });

  test('what contradicts itself is put before a person', () => {
    for (const line of [
      'bearing 623ZZ 4x10x4',
      'washer ID 8 OD 5',
      'Senkschraube M3x8 ISO 4762',
      'M3/M4 screw',
      'pin 2.9-3.1 mm',
      'bearing 5.l x 8 x 2.5',
    ]) {
      const reading = read(line);
      expect(reading.review, line).toBe(true);
      expect(reading.notes.length, line).toBeGreaterThan(0);
    }
  });

  test('11 x 5 x 4 and 10 x 4 x 5 are read the only way that can be true', () => {
    expect(read('brg. 11 x 5 x 4').size).toBe('bearing 5x11x4');
    expect(read('bearing 10x4x5')).toMatchObject({ size: 'bearing 5x10x4', review: true });
  });

  test('the heading says what bare sizes are of; two kinds in it ask', () => {
    expect(read('50x67x7', { context: 'Ball Bearings' }).size).toBe('bearing 50x67x7');
    expect(read('m3x5x4.2', { context: 'Heat set thread insert' }).category).toBe('plain');
    expect(read('M4', { context: 'Nuts and washers' }).review).toBe(true);
  });

  test('columns named by the heading give quantity and length', () => {
    const reading = read('S01 | 3.5mm | 20mm | 14', { context: 'Screws: Item No. | Size | Length | Amount' });
    expect(reading).toMatchObject({ category: 'screw', dims: { dia: 3.5, length: 20 }, qty: 14 });
  });

  test('a document in inches reads bare numbers as inches', () => {
    expect(read('pin 0.125 x 0.5', { unit: 'in' }).size).toBe('pin 3.175x12.7');
  });

  test('folded signs keep their place in the text', () => {
    const text = 'ﾍﾞｱﾘﾝｸﾞ\u00a0５×１１×４';
    const reading = read(text);
    expect(reading.size).toBe('bearing 5x11x4');
    expect(fieldOf(text, reading, 'od')).toEqual(['１１']);
  });
});

const words = [
  'bearing',
  'Kugellager',
  'vis',
  'M3',
  'M3x8',
  '5x11x4',
  '608ZZ',
  'DIN 912',
  'Ø',
  '1/4-20',
  '½',
  '″',
  '|',
  '\t',
  '\n',
  '2x',
  '(4)',
  'シム',
  'O-ring',
  '-012',
  'screw',
  'for',
  '0,5',
  '.035',
  'x',
  '×',
  '…',
  '😀',
  'ID',
  'l',
  '~',
  '#',
  'ISO',
  'AS568',
  'e\u0301',
  'ﾞ',
  '\u00ad',
  'HK0810',
  'washer',
  '1e9',
  '00-3108-2',
  'BEARlNG',
  '5CREW',
];
const line = fc.oneof(
  {
    weight: 3,
    arbitrary: fc
      .array(fc.constantFrom(...words), { maxLength: 9 })
      .chain(parts => fc.constantFrom(' ', '', '  ', '    ').map(gap => parts.join(gap))),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
  {
    weight: 1,
    arbitrary: fc
      .array(fc.oneof(fc.constantFrom(...words), fc.string({ maxLength: 4 })), { maxLength: 9 })
      .map(parts => parts.join(' ')),
  },
);
const runs = 20_000;

describe('properties', () => {
  test('any line gives a sound reading, and its spans lie inside the text', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(line, text => {
        const reading = read(text);
        expect([...categoryNames, 'not-a-part', 'unsure']).toContain(reading.category);
        expect(reading.certainty).toBeGreaterThanOrEqual(0);
        expect(reading.certainty).toBeLessThanOrEqual(1);
        for (const { start, end } of reading.spans) {
          if (!(start >= 0 && start < end && end <= text.length))
            throw new Error(`span ${start} to ${end} of ${text.length}`);
        }
        for (const value of [...Object.values(reading.dims), ...Object.values(reading.implied)])
          if (typeof value === 'number' && !Number.isFinite(value))
            throw new Error('a dimension is no number');
        if (reading.category === 'unsure' || reading.certainty < 0.7)
          expect(reading.review || reading.category === 'not-a-part').toBe(true);
      }),
      { numRuns: runs },
    );
  });

  const meaning = ({ category, dims, attrs, qty, size }: Reading) => ({ category, dims, attrs, qty, size });
  const written = fc.constantFrom(
    ...[...categories].flatMap(([name, { sizes }]) => sizes.slice(0, 60).map(size => ({ name, size }))),
  );
  const sizeText = ({ name, size }: { name: string; size: Readonly<Record<string, number | string>> }) =>
    `${name} ${Object.values(size)
      .map(v => (typeof v === 'number' ? toMm(v) : v))
      .join(' x ')}`;

  test('capitals and small letters read alike', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(written, one => {
        const text = sizeText(one);
        expect(meaning(read(text.toUpperCase()))).toEqual(meaning(read(text.toLowerCase())));
      }),
      { numRuns: 2_000 },
    );
  });

  test('blanks around the sign, and blanks at the ends, change nothing', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(written, fc.constantFrom('x', ' x ', ' × ', '×', '*'), (one, sign) => {
        const text = sizeText(one);
        expect(meaning(read(` ${text.replaceAll(' x ', sign)} `))).toEqual(meaning(read(text)));
      }),
      { numRuns: 2_000 },
    );
  });
});
