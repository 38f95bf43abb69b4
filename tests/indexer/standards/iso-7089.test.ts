import { describe, expect, it } from 'vitest';
import { washerFor, washers, washersByDims, washerWithHole } from '../../../indexer/standards/iso-7089.ts';

describe('washerFor', () => {
  // Hole x outside x thickness in mm, as suppliers' tables print them.
  it.each<[string, string, number, number, number]>([
    ['ISO 7089', 'M2', 2.2, 5, 0.3],
    ['ISO 7089', 'M2.5', 2.7, 6, 0.5],
    ['ISO 7089', 'M3', 3.2, 7, 0.5],
    ['DIN 125', 'M4', 4.3, 9, 0.8],
    ['DIN 125-A', 'M5', 5.3, 10, 1],
    ['DIN 125-B', 'M6', 6.4, 12, 1.6],
    ['DIN 125', 'M2.6', 2.8, 7, 0.5],
    ['DIN 433', 'M3', 3.2, 6, 0.5],
    ['DIN 9021', 'M3', 3.2, 9, 0.8],
    ['DIN 9021', 'M6', 6.4, 18, 1.6],
    ['DIN 127', 'M3', 3.1, 6.2, 0.8],
    ['DIN 6798', 'M4', 4.3, 8, 0.5],
    ['ISO 7089', 'M24', 25, 44, 4],
    ['ISO 7091', 'M8', 9, 16, 1.6],
    ['DIN 126', 'M10', 11, 20, 2],
    ['ISO 7094', 'M12', 13.5, 44, 4],
    ['DIN 125', 'M1.4', 1.5, 4, 0.3],
    ['DIN 433', 'M1.2', 1.3, 3, 0.3],
    ['DIN 6797', 'M16', 17, 26, 1.2],
  ])('of %s %s is %d x %d x %d', (standard, thread, d1, d2, h) => {
    const washer = washerFor(standard, thread)!;
    expect([washer.d1, washer.d2, washer.h]).toEqual([d1, d2, h].map(mm => Math.round(mm * 1000)));
  });

  // Sources differ; what is taken is said in the table.
  it('keeps the thicker M5 of DIN 9021 apart from that of ISO 7093-1', () => {
    expect(washerFor('DIN 9021', 'M5')!.h).toBe(1200);
    expect(washerFor('ISO 7093-1', 'M5')!.h).toBe(1000);
  });

  it('takes 10.5 for the hole of M10: one library gives 10, through which no M10 screw passes freely', () => {
    expect(washerFor('ISO 7089', 'M10')!.d1).toBe(10_500);
  });

  it('takes 2 for the thickness of the small M12, as DIN 433 has it: one page gives 2.5', () => {
    expect(washerFor('ISO 7092', 'M12')!.h).toBe(2000);
  });

  it('takes 60 for the outside of the small M36: two sources of three have it, one 58', () => {
    expect(washerFor('ISO 7092', 'M36')!.d2).toBe(60_000);
  });

  it('takes 0.4 and 0.5 for the toothed M2.5 and M3.5 from memory: one library has the size below', () => {
    expect(washerFor('DIN 6797', 'M2.5')!.h).toBe(400);
    expect(washerFor('DIN 6797', 'M3.5')!.h).toBe(500);
  });

  it('knows no washer of an unknown standard or thread', () => {
    expect(washerFor('DIN 999', 'M3')).toBeUndefined();
    expect(washerFor('ISO 7089', 'M3.1')).toBeUndefined();
  });
});

describe('the look-ups by dimensions', () => {
  it('washerWithHole reads DIN 125 A 4,3 as 4.3 x 9 x 0.8', () => {
    expect(washerWithHole('DIN 125-A', 4300)).toMatchObject({ d2: 9000, h: 800 });
  });

  it('lead from every washer back to itself', () => {
    for (const washer of washers) {
      expect(washersByDims(washer.d1, washer.d2, washer.h)).toContain(washer);
      expect(washerFor(washer.standard, washer.thread)).toBe(washer);
      expect(washerWithHole(washer.standard, washer.d1)).toBe(washer);
    }
  });
});
