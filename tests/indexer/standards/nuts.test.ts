import { describe, expect, it } from 'vitest';
import { metricThreadNamed } from '../../../indexer/standards/iso-261.ts';
import { nutFor, nuts, nutsOf } from '../../../indexer/standards/nuts.ts';

describe('nutFor', () => {
  // Across flats x height in mm, as suppliers' tables print them.
  it.each<[string, string, number, number]>([
    ['ISO 4032', 'M2', 4, 1.6],
    ['ISO 4032', 'M2.5', 5, 2],
    ['ISO 4032', 'M3', 5.5, 2.4],
    ['ISO 4032', 'M4', 7, 3.2],
    ['ISO 4032', 'M5', 8, 4.7],
    ['ISO 4032', 'M6', 10, 5.2],
    ['DIN 934', 'M5', 8, 4],
    ['DIN 934', 'M6', 10, 5],
    ['DIN 934', 'M8', 13, 6.5],
    ['DIN 439', 'M4', 7, 2.2],
    ['DIN 985', 'M3', 5.5, 4],
    ['DIN 985', 'M5', 8, 5],
    ['ISO 7040', 'M4', 7, 6],
    ['DIN 1587', 'M6', 10, 12],
    ['DIN 562', 'M3', 5.5, 1.8],
    ['ISO 4032', 'M24', 36, 21.5],
    ['ISO 4033', 'M8', 13, 7.5],
    ['ISO 10511', 'M6', 10, 6],
    ['ISO 7043', 'M8', 13, 11.1],
    ['DIN 557', 'M12', 19, 10],
    ['DIN 935', 'M16', 24, 19],
  ])('of %s %s is %d across flats and %d high', (standard, thread, flats, height) => {
    expect(nutFor(standard, thread)).toMatchObject({
      acrossFlats: flats * 1000,
      height: Math.round(height * 1000),
    });
  });

  // ISO took smaller hexagons at M10 and M12; libraries mix the two up.
  it.each<[string, number, number]>([
    ['ISO 4032', 16, 18],
    ['ISO 4035', 16, 18],
    ['DIN 934', 17, 19],
    ['DIN 439', 17, 19],
    ['DIN 985', 17, 19],
  ])('of %s is %d across flats at M10 and %d at M12', (standard, m10, m12) => {
    expect(nutFor(standard, 'M10')!.acrossFlats).toBe(m10 * 1000);
    expect(nutFor(standard, 'M12')!.acrossFlats).toBe(m12 * 1000);
  });

  it('takes 21 across flats for M14 of ISO and 22 for DIN: one library gives both as 22', () => {
    for (const standard of ['ISO 4032', 'ISO 4033', 'ISO 4035', 'ISO 7040'])
      expect(nutFor(standard, 'M14')!.acrossFlats, standard).toBe(21_000);
    for (const standard of ['DIN 934', 'DIN 985', 'DIN 1587'])
      expect(nutFor(standard, 'M14')!.acrossFlats, standard).toBe(22_000);
  });

  it('takes 34.7 for the height of ISO 4033 M36: one library prints its least, 33.1', () => {
    expect(nutFor('ISO 4033', 'M36')).toMatchObject({ height: 34_700, heightMin: 33_100 });
  });

  it('knows no nut of an unknown standard or thread', () => {
    expect(nutFor('DIN 999', 'M3')).toBeUndefined();
    expect(nutFor('ISO 4032', 'M3.3')).toBeUndefined();
  });
});

describe('the table', () => {
  it('leads from every nut back to itself, and names threads that exist', () => {
    for (const nut of nuts) {
      expect(nutFor(nut.standard, nut.thread)).toBe(nut);
      expect(nutsOf(nut.thread)).toContain(nut);
      expect(metricThreadNamed(nut.thread), nut.thread).toBeDefined();
    }
  });

  it('makes a thin nut lower and a lock nut higher than the plain one', () => {
    for (const thread of ['M3', 'M4', 'M5', 'M6', 'M8']) {
      const plain = nutFor('ISO 4032', thread)!.height;
      expect(nutFor('ISO 4035', thread)!.height).toBeLessThan(plain);
      expect(nutFor('ISO 7040', thread)!.height).toBeGreaterThan(plain);
    }
  });
});
