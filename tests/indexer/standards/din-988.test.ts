import { describe, expect, it } from 'vitest';
import {
  shimRing,
  shimRings,
  shimRingsForShaft,
  shimThicknesses,
  stockedShimThicknesses,
} from '../../../indexer/standards/din-988.ts';

describe('shimRing', () => {
  // DIN 988 diameters as suppliers list them, mm.
  it.each([
    [3, 6],
    [4, 8],
    [5, 10],
    [6, 12],
    [8, 14],
    [10, 16],
    [12, 18],
    [20, 28],
  ])('knows %d x %d', (id, od) => {
    expect(shimRing(id * 1000, od * 1000)).toMatchObject({ id: id * 1000, od: od * 1000 });
  });

  it('knows no ring of other diameters', () => {
    expect(shimRing(5000, 9000)).toBeUndefined();
  });

  it('finds every ring by its diameters and by its shaft', () => {
    for (const ring of shimRings) {
      expect(shimRing(ring.id, ring.od)).toBe(ring);
      expect(shimRingsForShaft(ring.id)).toContain(ring);
    }
  });

  it('lists two rings for a 15 mm shaft', () => {
    expect(shimRingsForShaft(15_000).map(ring => ring.od)).toEqual([21_000, 22_000]);
  });
});

describe('thicknesses', () => {
  it('rise, and those on the shelf are among those made', () => {
    expect([...shimThicknesses].sort((a, b) => a - b)).toEqual(shimThicknesses);
    for (const thickness of stockedShimThicknesses) expect(shimThicknesses).toContain(thickness);
  });
});
