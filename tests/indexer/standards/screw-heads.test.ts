import { describe, expect, it } from 'vitest';
import { toleranceOf } from '../../../indexer/standards/iso-286.ts';
import { headsOf, screwHead, screwHeads } from '../../../indexer/standards/screw-heads.ts';

const um = (mm: number) => Math.round(mm * 1000);

describe('screwHead', () => {
  // Head diameter x height in mm, as fastener makers print them.
  it.each<[string, string, number, number]>([
    ['ISO 7045', 'M2', 4, 1.6],
    ['ISO 7045', 'M2.5', 5, 2.1],
    ['ISO 7045', 'M3', 5.6, 2.4],
    ['ISO 7045', 'M4', 8, 3.1],
    ['ISO 7045', 'M5', 9.5, 3.7],
    ['DIN 7985', 'M3', 6, 2.52],
    ['DIN 7985', 'M5', 10, 3.95],
    ['ISO 7046', 'M2', 3.8, 1.2],
    ['ISO 7046', 'M2.5', 4.7, 1.5],
    ['ISO 7046', 'M3', 5.5, 1.65],
    ['ISO 7046', 'M4', 8.4, 2.7],
    ['ISO 7046', 'M5', 9.3, 2.7],
    ['DIN 963', 'M3', 5.6, 1.65],
    ['DIN 965', 'M4', 7.5, 2.2],
    ['DIN 912', 'M3', 5.5, 3],
    ['ISO 4762', 'M8', 13, 8],
    ['ISO 7380', 'M3', 5.7, 1.65],
    ['ISO 1207', 'M2', 3.8, 1.4],
    ['DIN 84', 'M2', 3.8, 1.3],
    ['ISO 14583', 'M4', 8, 3.1],
    ['DIN 7991', 'M3', 6, 1.7],
    ['DIN 912', 'M24', 36, 24],
    ['DIN 7984', 'M16', 24, 9],
    ['DIN 6912', 'M20', 30, 12],
    ['ISO 7380-2', 'M4', 9.4, 2.2],
    ['ISO 14582', 'M6', 13.1, 4.22],
    ['ISO 14579', 'M5', 8.5, 5],
    ['DIN 967', 'M5', 11.5, 3.55],
    ['DIN 6921', 'M8', 18, 8.1],
    ['ISO 4162', 'M8', 17, 8.5],
    ['ISO 7379', 'M6', 13, 5.5],
  ])('of %s %s is %d x %d', (standard, thread, diameter, height) => {
    expect(screwHead(standard, thread)).toMatchObject({ dkMax: um(diameter), kMax: um(height) });
  });

  it('gives the sharp cone of ISO 10642 M3 as 6.72, 1.86 high: larger than ISO 7046, 6.3', () => {
    expect(screwHead('ISO 10642', 'M3')).toMatchObject({ dkTheoretical: 6720, kMax: 1860, dkMax: null });
    expect(screwHead('ISO 7047', 'M3')!.dkTheoretical).toBe(6300);
  });

  it('gives DIN 933 its own hexagon at M10 and M12 and that of ISO 4017 elsewhere', () => {
    expect(screwHead('DIN 933', 'M10')!.sMax).toBe(17_000);
    expect(screwHead('ISO 4017', 'M10')!.sMax).toBe(16_000);
    expect(screwHead('DIN 931', 'M8')).toBe(screwHead('ISO 4014', 'M8'));
  });

  it('takes 21 across flats for ISO 4017 M14 and 22 for DIN 933: one library gives 22 for both', () => {
    expect(screwHead('ISO 4017', 'M14')!.sMax).toBe(21_000);
    expect(screwHead('DIN 933', 'M14')!.sMax).toBe(22_000);
    expect(screwHead('ISO 4017', 'M16')!.sMax).toBe(24_000);
  });

  it('takes 6 across flats for ISO 4017 M3.5: one library gives 5.5', () => {
    expect(screwHead('ISO 4017', 'M3.5')!.sMax).toBe(6000);
  });

  it('knows no head of an unknown standard or thread', () => {
    expect(screwHead('DIN 999', 'M3')).toBeUndefined();
    expect(screwHead('ISO 4762', 'M3.3')).toBeUndefined();
  });
});

describe('the table', () => {
  it('leads from every head back to itself', () => {
    for (const head of screwHeads) {
      expect(screwHead(head.standard, head.thread)).toBe(head);
      expect(headsOf(head.head, head.thread)).toContain(head);
    }
  });

  it('gives ISO 4762 and ISO 1207 the least diameters of h13 (ISO 4759-1, product grade A)', () => {
    for (const head of screwHeads.filter(({ standard }) =>
      ['ISO 4762', 'ISO 1207', 'DIN 84'].includes(standard),
    )) {
      expect(head.dkMax! - head.dkMin!, `${head.standard} ${head.thread}`).toBe(toleranceOf(13, head.dkMax!));
    }
  });

  it('makes a cap head as high as its thread is thick (ISO 4762)', () => {
    for (const head of screwHeads.filter(({ standard }) => standard === 'ISO 4762')) {
      expect(head.kMax).toBe(um(Number(head.thread.slice(1))));
    }
  });
});
