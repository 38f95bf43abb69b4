import { describe, expect, it } from 'vitest';
import {
  din6799EClips,
  eClip,
  eClipsForShaft,
  externalRing,
  externalRings,
  internalRing,
  internalRings,
  jisEClips,
} from '../../../indexer/standards/retaining-rings.ts';

const um = (mm: number) => Math.round(mm * 1000);

describe('externalRing', () => {
  // DIN 471 as makers print it: shaft, groove, thickness, free inside diameter, mm.
  it.each([
    [3, 2.8, 0.4, 2.7],
    [4, 3.8, 0.4, 3.7],
    [5, 4.8, 0.6, 4.7],
    [6, 5.7, 0.7, 5.6],
    [7, 6.7, 0.8, 6.5],
    [8, 7.6, 0.8, 7.4],
    [10, 9.6, 1, 9.3],
    [12, 11.5, 1, 11],
    [15, 14.3, 1, 13.8],
    [20, 19, 1.2, 18.5],
    [25, 23.9, 1.2, 23.2],
    [30, 28.6, 1.5, 27.9],
    [40, 37.5, 1.75, 36.5],
    [50, 47, 2, 45.8],
    [65, 62, 2.5, 60.8],
    [80, 76.5, 2.5, 74.5],
    [100, 96.5, 3, 94.5],
  ])(
    'for a shaft of %d has groove %d, thickness %d and is %d when free',
    (shaft, groove, thickness, free) => {
      expect(externalRing(um(shaft))).toMatchObject({
        groove: um(groove),
        thickness: um(thickness),
        freeDiameter: um(free),
      });
    },
  );

  it('takes the groove 7.6 for a shaft of 8: a web table has 7.1', () => {
    expect(externalRing(8000)!.groove).toBe(7600);
  });

  it('takes the groove 49 for a shaft of 52 from memory: the one library prints 49.5, deeper by half than its neighbours', () => {
    expect(externalRing(52_000)!.groove).toBe(49_000);
  });

  it('takes 1.75 for the thickness of 48: one library gives 2, the other 1.75', () => {
    expect(externalRing(48_000)!.thickness).toBe(1750);
  });

  it('knows none for a shaft between sizes', () => {
    expect(externalRing(9300)).toBeUndefined();
  });
});

describe('internalRing', () => {
  // DIN 472 as makers print it: bore, groove, thickness, free outside diameter, mm.
  it.each([
    [8, 8.4, 0.8, 8.7],
    [10, 10.4, 1, 10.8],
    [12, 12.5, 1, 13],
    [16, 16.8, 1, 17.3],
    [19, 20, 1, 20.5],
    [22, 23, 1, 23.5],
    [26, 27.2, 1.2, 27.9],
    [30, 31.4, 1.2, 32.1],
    [35, 37, 1.5, 37.8],
    [42, 44.5, 1.75, 45.5],
    [50, 53, 2, 54.2],
    [62, 65, 2, 66.2],
    [85, 88.5, 3, 90.5],
  ])('for a bore of %d has groove %d, thickness %d and is %d when free', (bore, groove, thickness, free) => {
    expect(internalRing(um(bore))).toMatchObject({
      groove: um(groove),
      thickness: um(thickness),
      freeDiameter: um(free),
    });
  });

  it('takes the groove 29.4 for a bore of 28: one library gives 20.4', () => {
    expect(internalRing(28_000)!.groove).toBe(29_400);
  });

  it('takes the groove 103.5 for a bore of 100 from memory: the one library prints 103, unlike 98 and 102', () => {
    expect(internalRing(100_000)!.groove).toBe(103_500);
  });

  it('takes 2.5 for the thickness of 82: one library gives 3, the other 2.5', () => {
    expect(internalRing(82_000)!.thickness).toBe(2500);
  });

  it('takes 42 for the free diameter of 39: the one source prints 42.5, which no neighbour bears out', () => {
    expect(internalRing(39_000)!.freeDiameter).toBe(42_000);
  });
});

describe('eClip', () => {
  // DIN 6799 as makers print it: groove, shafts from and to, thickness, mm.
  it.each([
    [1.5, 2, 2.5, 0.4],
    [1.9, 2.5, 3, 0.5],
    [2.3, 3, 4, 0.6],
    [3.2, 4, 5, 0.6],
    [4, 5, 7, 0.7],
    [5, 6, 8, 0.7],
    [6, 7, 9, 0.7],
    [7, 8, 11, 0.9],
    [8, 9, 12, 1],
  ])('of groove %d goes on shafts %d to %d and is %d thick', (groove, from, to, thickness) => {
    expect(eClip(um(groove))).toMatchObject({
      shaftMin: um(from),
      shaftMax: um(to),
      thickness: um(thickness),
    });
  });

  it('gives Japanese sizes their own thickness: 5 is 0.6 by JIS B 2804 and 0.7 by DIN 6799', () => {
    expect(eClip(5000, 'JIS B 2804')!.thickness).toBe(600);
    expect(eClip(5000)!.thickness).toBe(700);
    expect(eClip(3000)).toBeUndefined();
    expect(eClip(3000, 'JIS B 2804')).toMatchObject({ shaftMin: 4000, shaftMax: 5000 });
  });

  it('offers every clip that a shaft takes: 5 mm takes grooves 3.2 and 4', () => {
    expect(eClipsForShaft(5000).map(clip => clip.groove)).toEqual([3200, 4000]);
    expect(eClipsForShaft(100)).toEqual([]);
  });
});

describe('the tables', () => {
  it('lead from every ring back to itself', () => {
    for (const ring of externalRings) expect(externalRing(ring.nominal)).toBe(ring);
    for (const ring of internalRings) expect(internalRing(ring.nominal)).toBe(ring);
    for (const clip of din6799EClips) expect(eClip(clip.groove)).toBe(clip);
    for (const clip of jisEClips) expect(eClip(clip.groove, 'JIS B 2804')).toBe(clip);
  });

  it('let every ring grip: a free external ring is smaller than its groove, an internal one larger', () => {
    for (const ring of externalRings) expect(ring.freeDiameter).toBeLessThan(ring.groove);
    for (const ring of internalRings) expect(ring.freeDiameter).toBeGreaterThan(ring.groove);
  });
});
