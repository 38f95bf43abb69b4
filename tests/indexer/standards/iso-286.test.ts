import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deviations, toleranceOf } from '../../../indexer/standards/iso-286.ts';

describe('toleranceOf', () => {
  // ISO 286-1 table 1 as handbooks print it: grade, size in mm, tolerance in µm.
  it.each([
    [5, 5, 5],
    [6, 5, 8],
    [7, 5, 12],
    [6, 8, 9],
    [7, 8, 15],
    [6, 15, 11],
    [7, 15, 18],
    [6, 25, 13],
    [7, 25, 21],
    [8, 40, 39],
    [11, 10, 90],
    [14, 5, 300],
    [15, 5, 480],
  ])('of IT%d at %d mm is %d µm', (grade, size, tolerance) => {
    expect(toleranceOf(grade, size * 1000)).toBe(tolerance);
  });

  it('changes just above the end of a range: 3, 6 and 10 mm belong to the range that ends there', () => {
    expect([3000, 3001, 6000, 6001, 10_000, 10_001].map(size => toleranceOf(7, size))).toEqual([
      10, 12, 12, 15, 15, 18,
    ]);
  });

  it('is null for nought, for a negative size, above 120 mm and for a grade outside 4 to 17', () => {
    expect([
      toleranceOf(7, 0),
      toleranceOf(7, -1),
      toleranceOf(7, 120_001),
      toleranceOf(3, 5000),
      toleranceOf(18, 5000),
    ]).toEqual([null, null, null, null, null]);
  });
});

describe('deviations', () => {
  // ISO 286-2 as makers' fit tables print it (NSK, JIS B 0401): class, size in mm, upper and lower deviation in µm.
  it.each<[string, number, number, number]>([
    ['h6', 5, 0, -8],
    ['g6', 5, -4, -12],
    ['js5', 5, 2.5, -2.5],
    ['js6', 5, 4, -4],
    ['j5', 5, 3, -2],
    ['j6', 8, 7, -2],
    ['k6', 5, 9, 1],
    ['k5', 25, 11, 2],
    ['m6', 3, 8, 2],
    ['n6', 8, 19, 10],
    ['p6', 15, 29, 18],
    ['f7', 8, -13, -28],
    ['h9', 10, 0, -36],
    ['k8', 5, 18, 0],
    ['H7', 16, 18, 0],
    ['H8', 3, 14, 0],
    ['G7', 12, 24, 6],
    ['F8', 20, 53, 20],
    ['JS7', 16, 9, -9],
    ['J7', 16, 10, -8],
    ['K7', 3, 0, -10],
    ['K7', 8, 5, -10],
    ['K6', 16, 2, -9],
    ['M7', 16, 0, -18],
    ['M8', 8, 1, -21],
    ['N7', 16, -5, -23],
    ['N6', 25, -11, -24],
    ['P7', 16, -11, -29],
    ['P6', 40, -21, -37],
    ['N9', 5, 0, -30],
    ['s6', 10, 32, 23],
    ['e8', 5, -20, -38],
  ])('of %s at %d mm are %d and %d', (toleranceClass, size, upper, lower) => {
    expect(deviations(toleranceClass, size * 1000)).toEqual({ upper, lower });
  });

  it('takes h6 of 10 to 18 mm as 11 and IT9 of 3 to 6 mm as 30: a page has 12, a program 20', () => {
    expect(deviations('h6', 15_000)).toEqual({ upper: 0, lower: -11 });
    expect(toleranceOf(9, 5000)).toBe(30);
  });

  it.each(['H', 'x6', 'h', 'hh6', 'H3', 'i6', 'L7', 'jS6', '7H', '', 'K9', 'j8'])(
    'has no class %j',
    toleranceClass => {
      expect(deviations(toleranceClass, 5000)).toBeNull();
    },
  );

  it('ends at 120 mm', () => {
    expect(deviations('h6', 120_001)).toBeNull();
  });

  const size = fc.integer({ min: 1, max: 120_000 });
  const grade = fc.integer({ min: 5, max: 11 });

  it('spans the tolerance of its grade, for every letter and size', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...'defghjkmnprsDEFGHJKMNPRS', 'js', 'JS'),
        grade,
        size,
        (letter, n, nominal) => {
          const found = deviations(`${letter}${n}`, nominal);
          if (found) expect(found.upper - found.lower).toBe(toleranceOf(n, nominal));
        },
      ),
    );
  });

  it('of d to h and D to H mirror each other', () => {
    fc.assert(
      fc.property(fc.constantFrom(...'defgh'), grade, size, (letter, n, nominal) => {
        const [shaft, hole] = [
          deviations(letter + n, nominal)!,
          deviations(letter.toUpperCase() + n, nominal)!,
        ];
        expect(hole.upper + shaft.lower).toBe(0);
        expect(hole.lower + shaft.upper).toBe(0);
      }),
    );
  });

  it('make H7/p6 and P7/h6 the same fit above 3 mm (ISO 286-1, the reason of the delta rule)', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...'kmnprs'),
        fc.integer({ min: 3001, max: 120_000 }),
        (letter, nominal) => {
          const [basicHole, shaft] = [deviations('H7', nominal)!, deviations(`${letter}6`, nominal)!];
          const [hole, basicShaft] = [
            deviations(`${letter.toUpperCase()}7`, nominal)!,
            deviations('h6', nominal)!,
          ];
          expect(hole.upper - basicShaft.lower).toBe(basicHole.upper - shaft.lower);
          expect(hole.lower - basicShaft.upper).toBe(basicHole.lower - shaft.upper);
        },
      ),
    );
  });
});
