import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Article } from '../../indexer/categories/judge.ts';
import { read } from '../../indexer/index.ts';
import { notAnApproval, verdict } from '../../indexer/verdict.ts';

const article = (text: string): Article => {
  const { category, dims, implied, attrs } = read(text);
  if (category === 'unsure' || category === 'not-a-part') throw new Error(`not a part: ${text}`);
  return { category, dims, implied, attrs };
};

const ordinary = { duty: 'ordinary', samePart: false } as const;
const judged = (candidate: string, wanted: string) => verdict(article(candidate), article(wanted), ordinary);

/** candidate, wanted, verdict, and a word of the first reason. Sources: trade practice unless named. */
const cases: [string, string, 'fits' | 'fits-with-care' | 'does-not-fit', string][] = [
  ['Ball bearing 5x11x4 ZZ', 'Ball bearing 5x11x4 ZZ', 'fits', 'Same size'],
  ['Ball bearing 5x11x5 ZZ', 'Ball bearing 5x11x4 ZZ', 'does-not-fit', 'Width 1 more'],
  ['Ball bearing 5x11x3 ZZ', 'Ball bearing 5x11x4 ZZ', 'fits-with-care', 'Width 1 less'],
  ['Ball bearing 5x10x4 ZZ', 'Ball bearing 5x11x4 ZZ', 'does-not-fit', 'Outside diameter 1 less'],
  ['Ball bearing 4x11x4 ZZ', 'Ball bearing 5x11x4 ZZ', 'does-not-fit', 'Bore 1 less'],
  ['Ball bearing 5x11x4 2RS', 'Ball bearing 5x11x4 ZZ', 'fits-with-care', 'contact seals rub'],
  ['Ball bearing 5x11x4', 'Ball bearing 5x11x4 ZZ', 'fits-with-care', 'not stated'],
  ['one-way clutch 8x12x12', 'needle bearing 8x12x12', 'does-not-fit', 'clutch is no bearing'],
  ['M3x8 pan head screw', 'M3x8 pan head screw', 'fits', 'Same size'],
  ['M3x8 countersunk screw', 'M3x8 pan head screw', 'does-not-fit', 'cone'],
  ['M3x10 pan head screw', 'M3x8 pan head screw', 'does-not-fit', 'Length 2 more'],
  ['M3x6 pan head screw', 'M3x8 pan head screw', 'does-not-fit', 'Length 2 less'],
  ['M2.6x6 pan head screw', 'M2.5x6 pan head screw', 'does-not-fit', 'Thread M2.6 for M2.5'],
  ['M3x8 cheese head screw', 'M3x8 pan head screw', 'fits-with-care', 'clears'],
  ['Set screw M3x4 cup point', 'Set screw M3x4 dog point', 'does-not-fit', 'Point'],
  ['nut M3 DIN 934', 'nut M3 DIN 985', 'does-not-fit', 'turning loose'],
  ['washer 3.2x7x0.8', 'washer 3.2x7x0.5', 'does-not-fit', 'Thickness 0.3 more'],
  ['shim 8x14x0.2', 'shim 8x14x0.1', 'does-not-fit', 'Thickness 0.1 more'],
  ['O-ring 10x2', 'O-ring 10x1.5', 'does-not-fit', 'Cross-section 0.5 more'],
  ['E-clip 4', 'E-clip 5', 'does-not-fit', 'Nominal size'],
  ['pin 3x10', 'pin 3x12', 'fits-with-care', 'Length 2 less'],
];

describe('verdict', () => {
  for (const [candidate, wanted, expected, word] of cases) {
    test(`${candidate} for ${wanted}: ${expected}, "${word}"`, () => {
      const { verdict: said, reasons } = judged(candidate, wanted);
      expect(said).toBe(expected);
      expect(reasons.map(reason => reason.text).join(' ')).toContain(word);
    });
  }

  test('is one-way: narrower may be shimmed, wider never fits', () => {
    expect(judged('bearing 5x11x3 ZZ', 'bearing 5x11x4 ZZ').verdict).toBe('fits-with-care');
    expect(judged('bearing 5x11x4 ZZ', 'bearing 5x11x3 ZZ').verdict).toBe('does-not-fit');
  });

  test("where a load hangs on it, it never fits unless it is the maker's own part", () => {
    const [a, b] = [article('bearing 5x11x4 ZZ'), article('bearing 5x11x4 ZZ')];
    const critical = verdict(a, b, { duty: 'load-holding', samePart: false });
    expect(critical.verdict).toBe('does-not-fit');
    expect(critical.reasons[0]?.text).toBe(notAnApproval);
    expect(verdict(a, b, { duty: 'load-holding', samePart: true }).verdict).toBe('fits');
    const narrower = verdict(article('bearing 5x11x3 ZZ'), b, { duty: 'load-holding', samePart: false });
    expect(narrower.reasons[0]?.text).toBe("Maker's part only.");
  });

  test('a size replaces itself, whatever the size', () => {
    const lengths = fc.integer({ min: 1, max: 50 }).map(tenths => tenths / 2);
    fc.assert(
      fc.property(lengths, lengths, lengths, (bore, more, width) => {
        const part: Article = {
          category: 'bearing',
          dims: { bore, od: bore + more, width },
          implied: {},
          attrs: {},
        };
        expect(verdict(part, part, ordinary).verdict).toBe('fits');
      }),
    );
  });
});
