import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BadMeasurement, type Measurement, measure } from '../../../indexer/measure.ts';
import { measurings } from '../../../indexer/measuring/categories.ts';

const screw = (...measurements: Measurement[]) => measure({ category: 'screw', measurements });
const bearing = (...measurements: Measurement[]) => measure({ category: 'bearing', measurements });
const over = (pitches: number, span: number, uncertainty = 0.05): Measurement => ({
  dimension: 'pitch',
  pitches,
  span,
  uncertainty,
});

describe('a screw', () => {
  it('of 2.93 ±0.03 with 10 pitches over 5.00 ±0.05 is M3x0.5 alone, neither 4-40 nor 5-40 (ISO 965, ASME B1.1)', () => {
    const answer = screw({ dimension: 'major', value: 2.93, uncertainty: 0.03 }, over(10, 5));
    expect(answer.cannotTellApart).toEqual(['screw M3x0.5']);
    expect(answer.candidates.map(each => each.size)).toEqual(['screw M3x0.5']);
  });

  it('of a sound M3 measures under nominal: 2.88 by calliper is M3 before anything else', () => {
    expect(screw({ dimension: 'major', value: 2.88 }, over(10, 5)).candidates[0]?.designation).toBe('M3');
  });

  // Look-alikes that a calliper and the pitches of a short screw do not part: worked out from both standards' limits.
  it.each([
    ['M2.5', '3-56', 2.44, 6, 2.71],
    ['M2.2', '2-56', 2.13, 6, 2.71],
    ['M4', '8-36', 3.99, 8, 5.62],
    ['M5', '10-32', 4.815, 8, 6.38],
  ])('%s and %s stay together', (metric, inch, major, pitches, span) => {
    const answer = screw({ dimension: 'major', value: major }, over(pitches, span));
    const told = answer.candidates.filter(each => answer.cannotTellApart.includes(each.size));
    expect(told.map(each => each.designation)).toEqual(expect.arrayContaining([metric, inch]));
    expect(answer.cautions.join(' ')).toContain('two systems');
  });

  it('of 2.48 ±0.03 and pitch 0.45 is M2.5 or M2.6', () => {
    const { cannotTellApart } = screw({ dimension: 'major', value: 2.48, uncertainty: 0.03 }, over(10, 4.5));
    expect(cannotTellApart).toEqual(expect.arrayContaining(['screw M2.5x0.45', 'screw M2.6x0.45']));
  });

  it.each([
    ['M3', '4-40', 2.86, over(3, 1.5), over(3, 1.905)],
    ['M3', 'M3x0.6', 2.92, over(5, 2.5), over(5, 3)],
    ['M3.5', '6-40', 3.42, over(5, 3), over(5, 3.175)],
    ['M6', '1/4-28', 5.98, over(4, 4), over(4, 3.63)],
  ])('%s and %s are parted by a few pitches', (one, other, major, asOne, asOther) => {
    const best = (pitch: Measurement) =>
      screw({ dimension: 'major', value: major }, pitch).candidates[0]?.designation;
    expect(best(asOne)).toBe(one);
    expect(best(asOther)).toBe(other);
  });

  it('of one diameter alone asks to count 10 pitches, with what they would show: 5.00 if M3', () => {
    const answer = screw({ dimension: 'major', value: 2.93 });
    expect(answer.next[0]).toMatchObject({ dimension: 'pitch', pitches: 10, expect: { M3: 5 } });
    expect(answer.next[0]?.why).toContain('5.00 if M3');
  });

  it('M2.5 or 3-56 would be parted by 29 pitches: 13.05 or 13.15, more thread than a short screw has', () => {
    const answer = screw({ dimension: 'major', value: 2.44, instrument: 'calliper-outside' }, over(6, 2.71), {
      dimension: 'length',
      values: [5.9, 5.88],
    });
    expect(answer.candidates[0]?.size).toBe('screw M2.5x0.45x6');
    expect(answer.cannotTellApart).toEqual(expect.arrayContaining(['screw M2.5x0.45x6', 'screw 3-56x6.35']));
    const count = answer.next.find(each => each.dimension === 'pitch');
    expect(count).toMatchObject({ pitches: 29, expect: { 'M2.5': 13.05, '3-56': 13.15 } });
    expect(count?.why).toContain('ask where the machine was made');
  });

  it('named a set screw has its key: 1.5 turns M3 (ISO 4026)', () => {
    const answer = measure({
      category: 'set-screw',
      measurements: [
        { dimension: 'major', value: 2.94 },
        { dimension: 'key', value: 1.5, uncertainty: 0.03 },
        { dimension: 'pitch', pitches: 5, span: 2.5 },
      ],
    });
    expect(answer.cannotTellApart).toEqual(['set-screw M3x0.5']);
  });

  it('plated may stand over its limits', () => {
    const request = {
      category: 'screw',
      measurements: [{ dimension: 'major', value: 3.005, instrument: 'micrometer' }, over(10, 5)],
    } as const;
    const probability = (plated: boolean) => {
      const answer = measure({ ...request, plated });
      return answer.candidates.find(each => each.designation === 'M3')?.probability ?? 0;
    };
    expect(probability(true)).toBeGreaterThan(0.9);
    expect(probability(true)).toBeGreaterThan(probability(false));
  });
});

describe('a bearing', () => {
  // A repair tutorial's own readings of a 5x11x4 bearing: bore 4.93 to 5.00, outside 10.99, width 3.98.
  it.each([4.93, 4.95, 4.97, 5.0])('whose bore reads %d, outside 10.99, width 3.98, is 5x11x4', bore => {
    const answer = bearing(
      { dimension: 'bore', value: bore, instrument: 'calliper-inside' },
      { dimension: 'od', value: 10.99 },
      { dimension: 'width', value: 3.98 },
    );
    expect(answer.cannotTellApart).toEqual(['bearing 5x11x4']);
    expect(answer.candidates[0]?.designations).toContain('MR115');
  });

  it('whose bore inside jaws cannot part 5/16 in from 8 mm keeps both, and names the 8.0 pin and what would serve as one', () => {
    const answer = measure({
      category: 'bearing',
      measurements: [{ dimension: 'bore', value: 7.93, instrument: 'calliper-inside' }],
      known: [
        { size: 'pin 8x20', count: 3 },
        { size: 'pin 6x20', count: 9 },
      ],
    });
    const bores = new Set(
      answer.candidates.filter(c => answer.cannotTellApart.includes(c.size)).map(c => c.dims.bore),
    );
    expect(bores).toEqual(new Set([7.938, 8]));
    const pin = answer.next.find(each => each.instrument === 'pin');
    expect(pin).toMatchObject({ value: 8, own: ['pin 8x20'] });
  });

  it('that a 3.1 drill enters is 1/8 in, not 3 mm', () => {
    const answer = bearing(
      { dimension: 'bore', value: 3.1, instrument: 'calliper-inside' },
      { dimension: 'bore', value: 3.1, instrument: 'pin', goes: true },
    );
    expect(
      new Set(answer.candidates.filter(c => answer.cannotTellApart.includes(c.size)).map(c => c.dims.bore)),
    ).toEqual(new Set([3.175]));
  });

  it('of 4.76 bore that refuses a 5.0 shank is 3/16 in', () => {
    const answer = bearing(
      { dimension: 'bore', value: 4.74 },
      { dimension: 'bore', value: 5, instrument: 'pin', goes: false },
      { dimension: 'od', value: 12.69 },
    );
    expect(answer.candidates[0]?.dims.bore).toBe(4.762);
  });

  it('seen to be shielded is the wider form before the open one, which stays', () => {
    const of = (seal: string) =>
      measure({
        category: 'bearing',
        attrs: { seal },
        measurements: [
          { dimension: 'bore', value: 4.98 },
          { dimension: 'od', value: 11 },
        ],
      });
    expect(of('two-shields').candidates[0]?.size).not.toBe('bearing 5x11x3');
    expect(of('open').candidates[0]?.size).toBe('bearing 5x11x3');
    expect(of('two-shields').candidates.map(each => each.size)).toContain('bearing 5x11x3');
  });

  // Makers' catalogues: HK0810 is 8x12x10, F8-16M 8x16x5, LM8UU 8x15x24.
  it.each([
    ['needle', 'HK0810', 7.98, 11.99, 9.85],
    ['thrust', 'F8-16M', 7.97, 15.98, 4.97],
    ['linear', 'LM8UU', 7.96, 14.98, 23.9],
  ])(
    'seen to be a %s one is %s, and no ball bearing of the same outline',
    (type, number, bore, od, width) => {
      const request = {
        category: 'bearing',
        measurements: [
          { dimension: 'bore', value: bore },
          { dimension: 'od', value: od },
          { dimension: 'width', value: width },
        ],
      } as const;
      const { candidates } = measure({ ...request, attrs: { type } });
      expect(candidates[0]?.designation).toBe(number);
      expect(candidates.every(each => each.attrs.type === type)).toBe(true);
    },
  );

  it('whose kind nobody saw is a ball bearing where one is of that outline, else whatever is', () => {
    const of = (od: number, width: number) =>
      bearing(
        { dimension: 'bore', value: 7.98 },
        { dimension: 'od', value: od },
        { dimension: 'width', value: width },
      );
    // 688 with shields is 8x16x5, as is the thrust bearing F8-16M; no ball bearing is 8x12x10.
    expect(of(15.99, 4.97).cannotTellApart).toEqual(['bearing 8x16x5']);
    expect(of(15.99, 4.97).candidates[0]?.designation).toBe('688 shielded');
    expect(of(11.99, 9.9).candidates[0]?.designation).toBe('HK0810');
  });

  it('of a kind that no table has is none of these', () => {
    const answer = measure({
      category: 'bearing',
      attrs: { type: 'rod-end' },
      measurements: [{ dimension: 'bore', value: 8 }],
    });
    expect(answer.candidates).toEqual([]);
    expect(answer.noneOfThese).toBe(1);
    expect(answer.cautions.join(' ')).toContain('No table here knows a type "rod-end"');
  });

  it('of sizes no maker lists is none of these', () => {
    const answer = bearing(
      { dimension: 'bore', value: 5.4 },
      { dimension: 'od', value: 11.4 },
      { dimension: 'width', value: 3.3 },
    );
    expect(answer.noneOfThese).toBeGreaterThan(0.9);
    expect(answer.cautions.join(' ')).toContain('No size known here');
  });
});

it('a nut that a 3.2 pin enters and a 3.5 one does not is near 4 mm, whatever slips', () => {
  const { cannotTellApart } = measure({
    category: 'nut',
    measurements: [
      { dimension: 'minor', value: 3.2, instrument: 'pin', goes: true },
      { dimension: 'minor', value: 3.5, instrument: 'pin', goes: false },
    ],
  });
  expect(cannotTellApart).toContain('nut M4x0.7');
  expect(cannotTellApart.join(' ')).not.toMatch(/M12|M3x0\.5|M6x1/);
});

describe('a retaining ring', () => {
  it('for a 5 mm shaft with a 4 mm groove is the E-clip 4 (DIN 6799)', () => {
    const answer = measure({
      category: 'retaining-ring',
      attrs: { type: 'e-clip' },
      measurements: [
        { dimension: 'shaft', value: 5 },
        { dimension: 'groove', value: 3.98 },
      ],
    });
    expect(answer.cannotTellApart).toEqual(['retaining-ring 4']);
  });

  it('is named by its shaft, never by the free ring: 9.3 free, 1.0 thick is the ring 10 (DIN 471)', () => {
    const answer = measure({
      category: 'retaining-ring',
      attrs: { type: 'external' },
      measurements: [
        { dimension: 'freeDiameter', value: 9.35, uncertainty: 0.05 },
        { dimension: 'groove', value: 9.58 },
        { dimension: 'thickness', value: 0.98 },
      ],
    });
    expect(answer.candidates[0]?.size).toBe('retaining-ring 10');
  });

  it('tells two types of one size apart by name', () => {
    const answer = measure({
      category: 'retaining-ring',
      measurements: [{ dimension: 'thickness', value: 0.69 }],
    });
    expect(answer.cannotTellApart).toEqual(
      expect.arrayContaining(['retaining-ring 6 external', 'retaining-ring 6 e-clip']),
    );
  });
});

it('an O-ring says the squeeze of each size in its groove', () => {
  const answer = measure({
    category: 'o-ring',
    measurements: [
      { dimension: 'groove', value: 10.3 },
      { dimension: 'glandDepth', value: 1.7 },
    ],
  });
  expect(answer.candidates.find(each => each.size === 'o-ring 10x2')?.reasons.join(' ')).toContain(
    'Squeeze 15 %',
  );
});

it('a spring has a rate with an honest range, and only sizes the workshop knows', () => {
  const answer = measure({
    category: 'spring',
    attrs: { ends: 'closed' },
    measurements: [
      { dimension: 'wire', value: 0.5, uncertainty: 0.02 },
      { dimension: 'od', value: 5 },
      { dimension: 'coils', value: 10 },
    ],
    known: [{ size: 'spring 0.5x5x20', count: 2 }],
  });
  const [rate] = answer.follows;
  // 79.3 GPa x 0.5^4 / (8 x 4.5^3 x 8), and 15 to 17 % for 0.02 of the wire (a spring maker's page).
  expect(rate?.value).toBeCloseTo(0.85, 2);
  expect(1 - rate!.least / rate!.value).toBeGreaterThan(0.14);
  expect(rate!.most / rate!.value - 1).toBeGreaterThan(0.16);
  expect(answer.candidates.map(each => each.size)).toEqual(['spring 0.5x5x20']);
});

describe('what a workshop knows', () => {
  const measurements = [
    { dimension: 'major', value: 2.44 },
    over(6, 2.71),
    { dimension: 'length', value: 6.05 },
  ];
  const probability = (size: string, known: { size: string; count: number }[]) =>
    measure({ category: 'screw', measurements, known }).candidates.find(each => each.size === size)
      ?.probability ?? 0;

  it('makes its own sizes more likely', () => {
    const known = [{ size: 'screw 3-56x6.35', count: 40 }];
    expect(probability('screw 3-56x6.35', known)).toBeGreaterThan(probability('screw 3-56x6.35', []));
  });

  it('can never hide a size that the measurements allow', () => {
    const answer = measure({
      category: 'screw',
      measurements,
      known: [{ size: 'screw M2.5x0.45x6', count: 1_000_000 }],
    });
    expect(answer.cannotTellApart).toContain('screw 3-56x6.35');
    const rare = answer.candidates.find(each => each.size === 'screw 3-56x6.35');
    expect(rare?.likelihood).toBeGreaterThan(0.1);
  });

  it('adds a size that no table has', () => {
    const answer = measure({
      category: 'washer',
      measurements: [
        { dimension: 'id', value: 8.15 },
        { dimension: 'od', value: 22 },
        { dimension: 'thickness', value: 1.49 },
      ],
      known: [{ size: 'washer 8.2x22x1.5', count: 1 }],
    });
    expect(answer.cannotTellApart).toEqual(['washer 8.2x22x1.5']);
  });
});

describe('always', () => {
  it('probabilities sum to one, the stated set is among the candidates, and nothing throws', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...[...measurings.values()].filter(each => each.category !== 'spring')),
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 }),
        fc.integer({ min: 1, max: 4 }),
        ({ category, measurable }, where, count) => {
          const measurements = measurable.slice(0, count).map(({ key, range: [least, most] }, at) => ({
            dimension: key,
            value: (least * (most / least) ** where[at]!) / 1000,
          }));
          const answer = measure({ category, measurements });
          const sum = answer.candidates.reduce((all, each) => all + each.probability, answer.noneOfThese);
          expect(sum).toBeCloseTo(1, 3);
          expect(answer.next.every(each => each.settles > 0 && each.settles <= 1)).toBe(true);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('readings that differ all round speak of wear', () => {
    const answer = bearing({ dimension: 'od', values: [10.99, 10.94, 10.97] });
    expect(answer.cautions.join(' ')).toContain('differ by 0.05 mm');
  });

  it('readings of inside jaws differ in a sound bore: 4.93 to 5.00 says nothing of wear', () => {
    const bore = (...values: number[]) =>
      bearing({ dimension: 'bore', values, instrument: 'calliper-inside' }).cautions.join(' ');
    expect(bore(4.93, 5)).not.toContain('differ');
    expect(bore(4.88, 5)).toContain('differ by 0.12 mm');
  });

  it('says the doubt it took for an instrument', () => {
    expect(bearing({ dimension: 'od', value: 11 }).taken[0]).toMatchObject({
      instrument: 'calliper-outside',
      value: 11,
    });
    expect(bearing({ dimension: 'od', value: 11, uncertainty: 0.004 }).taken[0]?.uncertainty).toBe(0.004);
  });

  it("defers to the maker's part where someone could be hurt", () => {
    const answer = measure({
      category: 'ball',
      measurements: [{ dimension: 'dia', value: 3.17 }],
      duty: 'load-holding',
    });
    expect(answer.cautions[0]).toContain('maker’s part only');
  });
});

describe('what cannot be answered names its place and remedy', () => {
  it.each([
    ['category', { category: 'seal', measurements: [{ dimension: 'id', value: 3 }] }],
    ['measurements', { category: 'ball', measurements: [] }],
    ['measurements.0.dimension', { category: 'ball', measurements: [{ dimension: 'bore', value: 3 }] }],
    ['measurements.0', { category: 'ball', measurements: [{ dimension: 'dia' }] }],
    ['measurements.0', { category: 'ball', measurements: [{ dimension: 'dia', value: 0 }] }],
    [
      'measurements.0.goes',
      { category: 'bearing', measurements: [{ dimension: 'bore', value: 5, instrument: 'pin' }] },
    ],
    [
      'measurements.0.instrument',
      { category: 'bearing', measurements: [{ dimension: 'od', value: 5, instrument: 'pin', goes: true }] },
    ],
    [
      'measurements.0.instrument',
      { category: 'bearing', measurements: [{ dimension: 'od', value: 5, instrument: 'thread-gauge' }] },
    ],
    ['measurements.0', { category: 'screw', measurements: [{ dimension: 'pitch', pitches: 0, span: 5 }] }],
    ['measurements.0', { category: 'screw', measurements: [{ dimension: 'major', pitches: 3, span: 5 }] }],
    [
      'measurements.0.uncertainty',
      { category: 'ball', measurements: [{ dimension: 'dia', value: 3, uncertainty: -1 }] },
    ],
  ] as const)('%s', (place, request) => {
    try {
      measure(request);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(BadMeasurement);
      expect((error as BadMeasurement).place).toBe(place);
      expect((error as BadMeasurement).remedy).not.toBe('');
    }
  });
});
