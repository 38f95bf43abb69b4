import { describe, expect, it } from 'vitest';
import {
  as568Ring,
  jisRing,
  oRings,
  oRingsByDims,
  oRingsOfSection,
} from '../../../indexer/standards/o-rings.ts';

describe('as568Ring', () => {
  // AS568 as seal makers' charts print it, inch: inside diameter, cross-section.
  it.each([
    ['001', 0.029, 0.04],
    ['006', 0.114, 0.07],
    ['008', 0.176, 0.07],
    ['012', 0.364, 0.07],
    ['013', 0.426, 0.07],
    ['020', 0.864, 0.07],
    ['030', 1.614, 0.07],
    ['040', 2.864, 0.07],
    ['050', 5.239, 0.07],
    ['110', 0.362, 0.103],
    ['112', 0.487, 0.103],
    ['120', 0.987, 0.103],
    ['150', 2.862, 0.103],
    ['178', 9.737, 0.103],
    ['204', 0.359, 0.139],
    ['210', 0.734, 0.139],
    ['222', 1.484, 0.139],
    ['284', 17.955, 0.139],
    ['309', 0.412, 0.21],
    ['325', 1.475, 0.21],
    ['905', 0.414, 0.072],
    ['349', 4.475, 0.21],
    ['395', 25.94, 0.21],
    ['425', 4.475, 0.275],
    ['445', 7.975, 0.275],
    ['460', 15.475, 0.275],
    ['475', 25.94, 0.275],
  ])('%s is %d x %d inch', (dash, id, cs) => {
    expect(as568Ring(dash)).toMatchObject({ id: Math.round(id * 25_400), cs: Math.round(cs * 25_400) });
  });

  it('of 012 is 9.246 x 1.778 mm, with 0.13 either way on the inside diameter', () => {
    expect(as568Ring('12')).toMatchObject({ designation: 'AS568-012', id: 9246, cs: 1778, idTolerance: 127 });
  });

  it('of 040 is 72.746: charts print 72.74 or 72.75', () => {
    expect(as568Ring('040')!.id).toBe(72_746);
  });

  it('takes 0.018 and 0.024 inch for the tolerances of 033 and 043, as the one library prints them', () => {
    expect(as568Ring('033')!.idTolerance).toBe(Math.round(0.018 * 25_400));
    expect(as568Ring('043')!.idTolerance).toBe(Math.round(0.024 * 25_400));
  });

  it('has a tolerance for every number, and 369 numbers', () => {
    const all = oRings.filter(ring => ring.standard === 'AS568');
    expect(all).toHaveLength(369);
    expect(all.every(ring => ring.idTolerance !== null)).toBe(true);
  });

  it.each(['000', '051', '100', '285', '308', '396', '424', '476', '999', ''])('has no %j', dash => {
    expect(as568Ring(dash)).toBeUndefined();
  });
});

describe('jisRing', () => {
  // JIS B 2401 as seal makers print it, mm.
  it.each([
    ['P3', 2.8, 1.9],
    ['P10', 9.8, 1.9],
    ['P10A', 9.8, 2.4],
    ['P22', 21.8, 2.4],
    ['P22A', 21.7, 3.5],
    ['P50', 49.7, 3.5],
    ['G25', 24.4, 3.1],
    ['G100', 99.4, 3.1],
    ['S10', 9.5, 1.5],
  ])('%s is %d x %d', (code, id, cs) => {
    expect(jisRing(code)).toMatchObject({ id: Math.round(id * 1000), cs: Math.round(cs * 1000) });
  });
});

describe('the look-ups by dimensions', () => {
  it('lead from every ring back to itself', () => {
    for (const ring of oRings) {
      expect(oRingsByDims(ring.id, ring.cs)).toContain(ring);
      expect(oRingsOfSection(ring.cs)).toContain(ring);
    }
  });

  it('keep the look-alike sections 1.778, 1.8 and 1.9 apart', () => {
    const standards = (cs: number) => new Set(oRingsOfSection(cs).map(ring => ring.standard));
    expect(standards(1778)).toEqual(new Set(['AS568']));
    expect(standards(1800)).toEqual(new Set(['ISO 3601-1']));
    expect(standards(1900)).toEqual(new Set(['JIS B 2401']));
  });

  it('list no size twice within a standard', () => {
    const keys = oRings.map(ring => `${ring.standard} ${ring.designation} ${ring.id}x${ring.cs}`);
    expect(new Set(keys).size).toBe(keys.length);
  });
});
