import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fit as bearingsFor } from '../../../indexer/fit.ts';
import { BadMeasurement } from '../../../indexer/measuring/request.ts';
import { deepGrooveBearings } from '../../../indexer/standards/iso-15.ts';

const onShaft = (nominal: number, toleranceClass: string) =>
  bearingsFor({ shaft: { nominal, class: toleranceClass } }).candidates[0]?.onShaft;

describe('a bearing of the normal class on a shaft', () => {
  // Bearing makers' table of resulting fits, bore 0/-8: greatest clearance and greatest interference in micrometres, shafts 3 to 6
  // and 6 to 10 mm; k6 worked out from +1/+9 of ISO 286.
  it.each([
    [5, 'g6', 12, 4],
    [5, 'h6', 8, 8],
    [5, 'js6', 4, 12],
    [5, 'j6', 2, 14],
    [5, 'k6', 0, 17],
    [8, 'g6', 14, 3],
    [8, 'h6', 9, 8],
    [8, 'js6', 4.5, 12.5],
    [8, 'j6', 2, 15],
  ])('%d mm %s: clearance %d, interference %d', (nominal, toleranceClass, clearance, interference) => {
    const fitted = onShaft(nominal, toleranceClass);
    expect(fitted?.clearanceMax).toBeCloseTo(clearance / 1000, 6);
    expect(fitted?.interferenceMax).toBeCloseTo(interference / 1000, 6);
  });

  it('k6 is a press fit of 1 to 17 with no chance of clearance', () => {
    expect(onShaft(5, 'k6')).toMatchObject({
      kind: 'interference',
      interferenceMin: 0.001,
      clearanceProbability: 0,
    });
  });

  // k6 of 10 to 18 mm is +1/+12, of 18 to 30 mm +2/+15, m6 of 3 to 6 mm +4/+12 (ISO 286-2); bores 0/-8 and above 18 mm 0/-10 (ISO 492).
  it.each([
    [12, 'k6', 0, 20],
    [12, 'g6', 17, 2],
    [15, 'h6', 11, 8],
    [17, 'js6', 5.5, 13.5],
    [20, 'k6', 0, 25],
    [25, 'js6', 6.5, 16.5],
    [25, 'h6', 13, 10],
    [30, 'g6', 20, 3],
    [40, 'k6', 0, 30],
    [5, 'm6', 0, 20],
  ])(
    '%d mm %s: clearance %d, interference %d (ISO 286-2 and ISO 492)',
    (nominal, toleranceClass, clearance, interference) => {
      const fitted = onShaft(nominal, toleranceClass);
      expect(fitted?.clearanceMax).toBeCloseTo(clearance / 1000, 6);
      expect(fitted?.interferenceMax).toBeCloseTo(interference / 1000, 6);
    },
  );

  it('h6 is as often loose as tight', () => {
    expect(onShaft(5, 'h6')?.clearanceProbability).toBeCloseTo(0.5, 2);
  });
});

describe('a bearing of the normal class in a housing', () => {
  // Worked out from ISO 286 H7 0/+15, 0/+18, 0/+21 and outside diameter 0/-8, 0/-8, 0/-9 (ISO 492); N7 10 to 18 mm -5/-23.
  it.each([
    [10, 'H7', 23, 0],
    [16, 'H7', 26, 0],
    [22, 'H7', 30, 0],
    [16, 'N7', 3, 23],
    // Above 50 mm: H7 0/+30 to 80, 0/+35 to 120; N7 -9/-39, J7 +18/-12; outsides 0/-13 to 80, 0/-15 to 120.
    [52, 'H7', 43, 0],
    [62, 'H7', 43, 0],
    [90, 'H7', 50, 0],
    [52, 'N7', 4, 39],
    [62, 'J7', 31, 12],
  ])('%d mm %s: clearance %d, interference %d', (nominal, toleranceClass, clearance, interference) => {
    const fitted = bearingsFor({ housing: { nominal, class: toleranceClass } }).candidates[0]?.inHousing;
    expect(fitted?.clearanceMax).toBeCloseTo(clearance / 1000, 6);
    expect(fitted?.interferenceMax).toBeCloseTo(interference / 1000, 6);
  });
});

describe('a measured shaft and housing', () => {
  const answer = bearingsFor({
    shaft: { value: 4.996, uncertainty: 0.004 },
    housing: { value: 11.01 },
    width: { value: 4, uncertainty: 0 },
  });

  it('4.996 ±0.004 with an 11 housing, 4 wide, takes 5x11x4 on h6, loose or tight by 8 at most', () => {
    expect(answer.candidates.map(each => each.size)).toEqual(['bearing 5x11x4']);
    expect(answer.candidates[0]).toMatchObject({
      designations: ['MR115'],
      shaftClass: 'h6',
      onShaft: { kind: 'transition', clearanceMax: 0.008, interferenceMax: 0.008, clearanceProbability: 0.5 },
      widthGap: { min: 0, max: 0.12 },
    });
  });

  it('says what it took, with the doubt of each seat', () => {
    expect(answer.taken.map(each => [each.seat, each.instrument])).toEqual([
      ['shaft', 'calliper-outside'],
      ['housing', 'calliper-inside'],
      ['width', 'calliper-depth'],
    ]);
    expect(answer.taken[0]).toMatchObject({ value: 4.996, uncertainty: 0.004 });
    // Inside jaws read under a bore, so it is taken for more than was read.
    expect(answer.taken[1]!.value).toBeGreaterThan(11.01);
  });

  it('says that a calliper is coarser than a fit', () => {
    expect(answer.cautions.join(' ')).toContain('wider than a fit');
  });

  it.each([
    [4.992, 'g6'],
    [4.996, 'h6'],
    [5.0, 'js6'],
    [5.005, 'k6'],
    [5.008, 'm6'],
  ])('%d by micrometer passes for %s', (value, toleranceClass) => {
    const [first] = bearingsFor({ shaft: { value, instrument: 'micrometer' } }).candidates;
    expect(first?.shaftClass).toBe(toleranceClass);
  });

  it('4.98 by calliper takes 5 mm bearings alone', () => {
    expect(new Set(bearingsFor({ shaft: { value: 4.98 } }).candidates.map(each => each.dims.bore))).toEqual(
      new Set([5]),
    );
  });

  it('7.93 is 5/16 in before a worn 8, and says so', () => {
    const inch = bearingsFor({ shaft: { value: 7.93, instrument: 'micrometer' } });
    expect(inch.candidates[0]?.dims.bore).toBe(7.938);
    expect(inch.candidates[0]?.reasons).toContain('An inch bearing: bore 5/16 in.');
    expect(inch.candidates.some(each => each.dims.bore === 8)).toBe(true);
    expect(inch.cautions.join(' ')).toContain('Inch and metric');
  });

  it('a shaft 0.06 under is worn, and passes for no usual class', () => {
    const [first] = bearingsFor({
      shaft: { value: 9.94, instrument: 'micrometer' },
      housing: { value: 26 },
    }).candidates;
    expect(first).toMatchObject({ size: 'bearing 10x26x8', shaftClass: null });
    expect(first?.reasons.join(' ')).toContain('worn');
  });

  it('says what hand-assembled mechanisms want: by finger where it is loose, none where it is a press', () => {
    const words = (toleranceClass: string) =>
      bearingsFor({ shaft: { nominal: 5, class: toleranceClass } }).candidates[0]?.reasons.join(' ');
    expect(words('f7')).toContain('slips on by finger');
    expect(words('h6')).toContain('by finger or wants a light push');
    expect(words('m6')).toContain('hand-assembled mechanisms want none');
  });

  it('warns of a press where one is likely, not where a calliper is coarse', () => {
    const cautions = (value: number, instrument: 'micrometer' | 'calliper-outside') =>
      bearingsFor({ shaft: { value, instrument } }).cautions.join(' ');
    expect(cautions(5.01, 'micrometer')).toContain('A press can take all the play');
    expect(cautions(4.98, 'calliper-outside')).not.toContain('A press can take');
  });

  it('nothing sits on a shaft between sizes', () => {
    const nothing = bearingsFor({
      shaft: { value: 5.4, instrument: 'micrometer' },
      housing: { value: 11.4 },
    });
    expect(nothing.candidates).toEqual([]);
    expect(nothing.cautions.join(' ')).toContain('No ball bearing');
  });

  it('an inch shaft is named also where no inch bearing fits its housing', () => {
    // 3/8 in is 9.525 mm; 26 mm is the outside of metric bearings alone.
    const { candidates, cautions } = bearingsFor({
      shaft: { value: 9.52, instrument: 'micrometer' },
      housing: { value: 26, instrument: 'micrometer' },
    });
    expect(candidates).toEqual([]);
    expect(cautions).toContain('The shaft passes for an inch one, 3/8 in.');
  });
});

describe('the play that is left', () => {
  it('of MC3 is 0.005 to 0.010 before fitting: 0.04 to 0.10 end play (a bearing maker)', () => {
    const [first] = bearingsFor({ shaft: { nominal: 5, class: 'f7' }, clearance: 'MC3' }).candidates;
    expect(first?.play).toMatchObject({
      group: 'MC3',
      min: 0.005,
      max: 0.01,
      axial: { min: 0.04, max: 0.1 },
      state: 'free',
    });
  });

  it('of a miniature group is not told for a bore of 12 mm, and why is', () => {
    const [first] = bearingsFor({ shaft: { nominal: 12, class: 'js5' }, clearance: 'MC5' }).candidates;
    expect(first?.play).toBeNull();
    expect(first?.reasons).toContain('MC5 is no group of play of this bore: it has C2, CN, C3, C4.');
    expect(first).toMatchObject({ shaftClass: 'js5', shaftCouldBe: [] });
  });

  it('of a group that there is none of is refused, with those there are', () => {
    try {
      bearingsFor({ shaft: { nominal: 5, class: 'h6' }, clearance: 'C9' });
      expect.unreachable();
    } catch (error) {
      expect((error as BadMeasurement).place).toBe('clearance');
      expect((error as BadMeasurement).remedy).toContain('MC3');
    }
  });

  it('of C3 is 0.008 to 0.023: C3 is not MC3', () => {
    const [first] = bearingsFor({ shaft: { nominal: 5, class: 'f7' }, clearance: 'C3' }).candidates;
    expect(first?.play).toMatchObject({ group: 'C3', min: 0.008, max: 0.023 });
  });

  it('is gone where a press takes more than it', () => {
    const [first] = bearingsFor({ shaft: { nominal: 5, class: 'p6' }, clearance: 'MC1' }).candidates;
    expect(first?.play?.state).toBe('preloaded');
  });
});

describe('a gap beside the bearing', () => {
  it('is filled on the ring that a DIN 988 shim clears: 6202 by 15x21', () => {
    const [first] = bearingsFor({
      shaft: { value: 15, instrument: 'micrometer' },
      housing: { value: 35.01 },
      width: { value: 11.5, uncertainty: 0.02 },
    }).candidates;
    expect(first?.size).toBe('bearing 15x35x11');
    const [inner] = first!.shims;
    expect(inner).toMatchObject({ ring: 'inner', standard: 'DIN 988', id: 15, od: 21 });
    expect(inner!.leaves.min).toBeGreaterThanOrEqual(0);
  });

  it('of a 5x11 bearing has no DIN 988 ring: 5x10 would rub on the outer one', () => {
    const [first] = bearingsFor({
      shaft: { nominal: 5, class: 'h6' },
      housing: { nominal: 11, class: 'H7' },
      width: { value: 4.5, uncertainty: 0.01 },
    }).candidates;
    expect(first?.shims[0]).toMatchObject({ ring: 'inner', standard: null, id: 5, od: 7 });
  });

  it('wider than any bearing of the seats still names the one that goes, with its shims', () => {
    const { candidates } = bearingsFor({
      shaft: { nominal: 17, class: 'h6' },
      housing: { nominal: 35, class: 'H7' },
      width: { value: 11.4, uncertainty: 0.02 },
    });
    // 6003 is 17x35x10 alone: 1.4 mm are left, and at most 1.5 with the ring's own tolerance.
    expect(candidates.map(each => each.size)).toEqual(['bearing 17x35x10']);
    expect(candidates[0]?.widthGap?.max).toBeCloseTo(1.54, 2);
    expect(candidates[0]?.shims[0]?.leaves.min).toBeGreaterThanOrEqual(0);
  });

  it('of a place as narrow as the narrowest of its size may hold it, or may not', () => {
    const [first] = bearingsFor({
      shaft: { nominal: 5, class: 'h6' },
      housing: { nominal: 11, class: 'H7' },
      width: { value: 3.9, uncertainty: 0.01 },
    }).candidates;
    expect(first?.size).toBe('bearing 5x11x4');
    expect(first?.reasons.join(' ')).toContain('measure the bearing’s own width');
  });

  it('that closes on the bearing is never forced', () => {
    const [first] = bearingsFor({
      shaft: { nominal: 8, class: 'h6' },
      housing: { nominal: 22, class: 'H7' },
      width: { value: 6.95, uncertainty: 0.02 },
    }).candidates;
    expect(first?.widthGap?.min).toBeLessThan(0);
    expect(first?.reasons.join(' ')).toContain('never force the cover');
  });
});

it('every ISO 15 bearing is found again from seats of its own size', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...deepGrooveBearings.filter(each => each.bore <= 30_000 && each.bore >= 1000)),
      bearing => {
        const width = bearing.widthShielded ?? bearing.widthOpen!;
        const { candidates } = bearingsFor({
          shaft: { value: bearing.bore / 1000 - 0.004, uncertainty: 0.004 },
          housing: { value: bearing.od / 1000 + 0.008, uncertainty: 0.006 },
          width: { value: width / 1000, uncertainty: 0.01 },
        });
        const wanted = { bore: bearing.bore / 1000, od: bearing.od / 1000, width: width / 1000 };
        expect(candidates.map(each => each.dims)).toContainEqual(wanted);
      },
    ),
    { numRuns: 100 },
  );
});

describe('what cannot be answered names its place', () => {
  it.each([
    ['shaft', {}],
    ['shaft', { shaft: {} }],
    ['shaft', { shaft: { value: -5 } }],
    ['shaft.class', { shaft: { nominal: 5, class: 'zz9' } }],
    ['housing.instrument', { housing: { value: 5, instrument: 'pin' } }],
    ['width.uncertainty', { shaft: { value: 5 }, width: { value: 4, uncertainty: -1 } }],
  ] as const)('%s', (place, request) => {
    try {
      bearingsFor(request);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(BadMeasurement);
      expect((error as BadMeasurement).place).toBe(place);
    }
  });
});
