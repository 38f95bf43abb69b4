import { describe, expect, it } from 'vitest';
import { type Measurement, type MeasureRequest, measure } from '../../../indexer/measure.ts';

/** One loose part as it lies on the bench: what is measured, and what it must be named. */
type Case = readonly [
  what: string,
  category: MeasureRequest['category'],
  measurements: readonly Measurement[],
  size: string,
  more?: Partial<MeasureRequest>,
];

const read = (dimension: string, value: number, instrument?: Measurement['instrument']): Measurement => ({
  dimension,
  value,
  ...(instrument && { instrument }),
});
const pitches = (count: number, span: number): Measurement => ({ dimension: 'pitch', pitches: count, span });

// Readings are nominals of the published tables named, less wear, jaw bias and a calliper's doubt, as a bench gives them.
const cases: readonly Case[] = [
  ['608 (ISO 15)', 'bearing', [read('bore', 7.95), read('od', 21.99), read('width', 6.95)], 'bearing 8x22x7'],
  [
    '6800 (ISO 15)',
    'bearing',
    [read('bore', 9.96), read('od', 18.98), read('width', 4.93)],
    'bearing 10x19x5',
  ],
  [
    '6204 (ISO 15)',
    'bearing',
    [read('bore', 19.98), read('od', 46.98), read('width', 13.95)],
    'bearing 20x47x14',
  ],
  [
    'R188 with shields (ABMA 12.2)',
    'bearing',
    [read('bore', 6.31), read('od', 12.69), read('width', 4.73)],
    'bearing 6.35x12.7x4.762',
  ],
  [
    'R6 with shields, one size with 1604 (ABMA 12.2)',
    'bearing',
    [read('bore', 9.5), read('od', 22.21), read('width', 7.1)],
    'bearing 9.525x22.225x7.142',
  ],
  [
    '2x5 of 2.3 wide, its bore read low by a blunt pair of jaws',
    'bearing',
    [read('bore', 1.9), read('od', 4.99), read('width', 2.28)],
    'bearing 2x5x2.3',
  ],
  [
    'M3 set screw (ISO 4026)',
    'set-screw',
    [read('major', 2.93), pitches(5, 2.5), read('length', 3.9), read('key', 1.5)],
    'set-screw M3x0.5x4',
  ],
  [
    '8-32 set screw, 5/64 in key (ASME B18.3)',
    'set-screw',
    [read('major', 4.08), { dimension: 'pitch', threadsPerInch: 32 }, read('length', 6.3), read('key', 1.98)],
    'set-screw 8-32x6.35',
  ],
  ['2BA (BS 93)', 'screw', [read('major', 4.66), pitches(10, 8.1)], 'screw 2BA'],
  ['4BA (BS 93)', 'screw', [read('major', 3.55), pitches(8, 5.28)], 'screw 4BA'],
  ['8BA (BS 93)', 'screw', [read('major', 2.17), pitches(8, 3.44)], 'screw 8BA'],
  [
    '1/4-20 (ASME B1.1)',
    'screw',
    [read('major', 6.25), pitches(5, 6.35), read('length', 19)],
    'screw 1/4-20x19.05',
  ],
  [
    'M3 nut (ISO 4032)',
    'nut',
    [read('minor', 2.48), read('acrossFlats', 5.46), read('thickness', 2.35)],
    'nut M3x0.5',
  ],
  [
    '6BA nut (BS 57)',
    'nut',
    [read('minor', 2.2), read('acrossFlats', 4.88), read('thickness', 2.7)],
    'nut 6BA',
  ],
  [
    'older Japanese 4 mm nut, 8 across flats (a maker’s bulletin of 1967)',
    'nut',
    [read('minor', 3.2), { dimension: 'pitch', threadsPerInch: 34 }, read('acrossFlats', 7.9)],
    'nut M4x0.75',
  ],
  [
    'M4 washer (ISO 7089)',
    'washer',
    [read('id', 4.3), read('od', 8.95), read('thickness', 0.8)],
    'washer 4.3x9x0.8',
  ],
  [
    'M3 large washer (ISO 7093-1)',
    'washer',
    [read('id', 3.22), read('od', 8.9), read('thickness', 0.8)],
    'washer 3.2x9x0.8',
  ],
  [
    'M5 spring washer (DIN 127)',
    'washer',
    [read('id', 5.2), read('od', 9.1), read('thickness', 1.2)],
    'washer 5.1x9.2x1.2',
    { attrs: { type: 'spring' } },
  ],
  [
    'No 8 narrow washer (ASME B18.21.1)',
    'washer',
    [read('id', 4.75), read('od', 9.5), read('thickness', 1)],
    'washer 4.775x9.525x1.016',
  ],
  [
    'shim 8x14x0.2 (DIN 988)',
    'shim',
    [read('id', 8.08), read('od', 13.85), read('thickness', 0.199, 'micrometer')],
    'shim 8x14x0.2',
  ],
  [
    'ring on an 8 mm shaft, groove 7.6 (DIN 471)',
    'retaining-ring',
    [read('shaft', 7.98), read('groove', 7.58)],
    'retaining-ring 8',
  ],
  [
    'ring in a 22 mm bore, groove 23 (DIN 472)',
    'retaining-ring',
    [read('housing', 22.03), read('groove', 23)],
    'retaining-ring 22',
  ],
  [
    'E-clip 1.9 on a 3 mm shaft (DIN 6799)',
    'retaining-ring',
    [read('groove', 1.88), read('shaft', 2.98)],
    'retaining-ring 1.9',
  ],
  [
    'E-clip 2.5 on a 3.5 mm shaft (JIS B 2804)',
    'retaining-ring',
    [read('groove', 2.48), read('shaft', 3.5)],
    'retaining-ring 2.5',
  ],
  ['O-ring AS568-210', 'o-ring', [read('cs', 3.53), read('id', 18.6)], 'o-ring 18.644x3.531'],
  ['dowel 3 m6 (ISO 8734)', 'pin', [read('dia', 3.006, 'micrometer'), read('length', 15.9)], 'pin 3x16'],
  [
    'spring pin 3, free (ISO 8752)',
    'pin',
    [read('dia', 3.35), read('length', 20)],
    'pin 3x20',
    { attrs: { type: 'spring' } },
  ],
  [
    'dowel 1/8 in (ASME B18.8.2)',
    'pin',
    [read('dia', 3.18, 'micrometer'), read('length', 12.7)],
    'pin 3.175x12.7',
  ],
  ['ball 3/16 in (ISO 3290)', 'ball', [read('dia', 4.762, 'micrometer')], 'ball 4.763'],
  ['ball 5/32 in by calliper (ISO 3290)', 'ball', [read('dia', 3.965, 'micrometer')], 'ball 3.969'],
  [
    'bush 6x10x10 (ISO 2795)',
    'bushing',
    [read('id', 6.05), read('od', 10.03), read('length', 9.9)],
    'bushing 6x10x10',
  ],
  [
    'bush 1/4 x 3/8 x 1/2 in (dealers’ lists)',
    'bushing',
    [read('id', 6.36), read('od', 9.56), read('length', 12.7)],
    'bushing 6.35x9.525x12.7',
  ],
  [
    'E-ring of a 1/4 in shaft, groove 0.210 in (ASME B18.27, from memory)',
    'retaining-ring',
    [read('shaft', 6.34), read('groove', 5.31), read('thickness', 0.63)],
    'retaining-ring 5.334',
  ],
  [
    'ring over a 3/8 in shaft, groove 0.352 in (ASME B18.27, from memory)',
    'retaining-ring',
    [read('shaft', 9.51), read('groove', 8.93), read('thickness', 0.63)],
    'retaining-ring 9.525',
  ],
  [
    'bush 8x12x8, worn a tenth (ISO 2795)',
    'bushing',
    [read('id', 8.15), read('od', 12.03), read('length', 7.9)],
    'bushing 8x12x8',
    { condition: 'worn' },
  ],
];

describe('a loose part is named', () => {
  const named = cases.map(([what, category, measurements, size, more]) => ({
    what,
    size,
    request: { category, measurements, ...more },
  }));

  it.each(named)('$what', ({ size, request }) => {
    const answer = measure(request);
    expect(answer.candidates[0]?.size).toBe(size);
    expect(answer.cannotTellApart.every(each => each.startsWith(size))).toBe(true);
    expect(answer.noneOfThese).toBeLessThan(0.1);
  });
});

describe('heads, keys and hexagons of inch screws weigh as much as metric ones', () => {
  it('a pan head of 5.5 on 2.76 mm is 4-40 or 4-48, as ASME B18.6.3 has it', () => {
    const answer = measure({
      category: 'screw',
      attrs: { head: 'pan' },
      measurements: [read('major', 2.76), read('headDiameter', 5.45)],
    });
    expect(answer.cannotTellApart).toEqual(expect.arrayContaining(['screw 4-40', 'screw 4-48']));
    expect(answer.cannotTellApart.join(' ')).not.toContain('M3');
  });

  it('M6 and 0BA, of one pitch and nearly one diameter, are parted across the flats of their heads: 10 or 10.5', () => {
    const request: MeasureRequest = {
      category: 'screw',
      attrs: { head: 'hex' },
      measurements: [read('major', 5.95), pitches(5, 5)],
    };
    const { next } = measure(request);
    expect(next[0]).toMatchObject({ dimension: 'acrossFlats' });
    const flats = (value: number) =>
      measure({ ...request, measurements: [...request.measurements, read('acrossFlats', value)] })
        .candidates[0]?.designation;
    expect(flats(9.9)).toBe('M6');
    expect(flats(10.45)).toBe('0BA');
  });

  it('a key of 2 mm does not turn an M20', () => {
    const { candidates } = measure({ category: 'screw', measurements: [read('key', 2)] });
    expect(candidates.some(each => each.designation === 'M20')).toBe(false);
    expect(candidates.some(each => each.designation === 'M3')).toBe(true);
  });

  it('what no limit tells of is not proposed as the next measurement', () => {
    const { next } = measure({ category: 'screw', measurements: [read('major', 5.95), pitches(5, 5)] });
    expect(next.map(each => each.dimension)).not.toContain('headDiameter');
    expect(next.map(each => each.dimension)).not.toContain('key');
  });
});

describe('what is minded', () => {
  const cautionsOf = (request: MeasureRequest) => measure(request).cautions.join(' ');

  it('clips and springs fly', () => {
    expect(cautionsOf({ category: 'retaining-ring', measurements: [read('shaft', 8)] })).toContain(
      'eye protection',
    );
    expect(cautionsOf({ category: 'spring', measurements: [read('wire', 0.5)] })).toContain('eye protection');
    expect(cautionsOf({ category: 'washer', measurements: [read('id', 3.2)] })).not.toContain(
      'eye protection',
    );
  });

  it('a spring that no list has is said to be named by nothing', () => {
    const cautions = cautionsOf({ category: 'spring', measurements: [read('wire', 0.5)] });
    expect(cautions).toContain('nothing to name it by');
  });

  it('a head by a name that no table has is said, with the names they have', () => {
    const cautions = cautionsOf({
      category: 'screw',
      attrs: { head: 'cap' },
      measurements: [read('major', 2.93)],
    });
    expect(cautions).toContain('No table here knows a head "cap"');
    expect(cautions).toContain('socket-cap');
  });

  it('two readings of a cord count by the larger, as a used ring is flattened (O-ring guides)', () => {
    const answer = measure({
      category: 'o-ring',
      measurements: [{ dimension: 'cs', values: [2.45, 2.61] }, read('id', 20.4)],
    });
    expect(answer.taken[0]?.value).toBe(2.61);
    expect(answer.cautions.join(' ')).toContain('flattened');
  });
});

it('a rate is told to three figures, with the material it was reckoned for', () => {
  // A course's solved spring: wire 0.063 in, mean 0.430 in, 18.75 coils of 20.75 working. In steel of 79.3 GPa in place of its 80.67.
  const { follows } = measure({
    category: 'spring',
    attrs: { ends: 'closed' },
    measurements: [
      { dimension: 'wire', value: 1.6002, uncertainty: 0.0254 },
      { dimension: 'od', value: 12.5222, uncertainty: 0 },
      { dimension: 'coils', value: 20.75, uncertainty: 0 },
    ],
  });
  expect(follows[0]).toMatchObject({ value: 2.66, unit: 'N/mm' });
  expect(follows[0]!.value * (80.67 / 79.3)).toBeCloseTo(2.706, 2);
  expect(follows[0]!.why).toContain('no material is stated');
});
