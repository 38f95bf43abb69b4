import { describe, expect, it } from 'vitest';
import { driverOf, hexalobularNear, hexalobularPoint, slotOf } from '../../../indexer/standards/drivers.ts';

describe('driverOf', () => {
  // As fastener makers print them: ISO 7045 recess 0, 1, 1, 2, 2 from M2 to M5, and the rest of their tables.
  it.each<[string, string, string]>([
    ['ISO 7045', 'M2', 'PH0'],
    ['ISO 7045', 'M2.5', 'PH1'],
    ['ISO 7045', 'M3', 'PH1'],
    ['ISO 7045', 'M4', 'PH2'],
    ['ISO 7045', 'M5', 'PH2'],
    ['ISO 7045', 'M6', 'PH3'],
    ['ISO 7046', 'M3', 'PH1'],
    ['ISO 7047', 'M4', 'PH2'],
    ['ISO 7048', 'M3', 'PH2'],
    ['ISO 14583', 'M2', 'T6'],
    ['ISO 14583', 'M3', 'T10'],
    ['ISO 14580', 'M5', 'T25'],
    ['ISO 14581', 'M6', 'T30'],
    ['ISO 1207', 'M3', '0.8 mm'],
    ['DIN 963', 'M4', '1.2 mm'],
    ['ISO 7049', 'ST2.9', 'PH1'],
    ['DIN 7981', 'ST4.2', 'PH2'],
    ['ISO 14585', 'ST3.5', 'T15'],
    ['DIN 912', 'M3', '2.5 mm'],
    ['DIN 916', 'M2', '0.9 mm'],
    ['DIN 967', 'M4', 'PH2'],
    ['ISO 14582', 'M6', 'T30'],
    ['ISO 14579', 'M16', 'T70'],
    ['ISO 7379', 'M6', '4 mm'],
  ])('of %s %s is %s', (standard, thread, mark) => {
    expect(driverOf(standard, thread)!.mark).toBe(mark);
  });

  it('gives M2 another recess by the older standard: DIN 7985 has 1 where ISO 7045 has 0', () => {
    expect(driverOf('DIN 7985', 'M2')!.size).toBe(1);
    expect(driverOf('ISO 7045', 'M2')!.size).toBe(0);
  });

  // Slips found in libraries; the values of the two others are taken.
  it.each([
    ['ISO 14581', 'M3.5', 'T15'],
    ['ISO 14581', 'M4', 'T20'],
    ['ISO 14580', 'M10', 'T50'],
  ])('of %s %s is %s, against one library', (standard, thread, mark) => {
    expect(driverOf(standard, thread)!.mark).toBe(mark);
  });

  it('takes a cross recess of form Z as pozidriv, and only a cross recess', () => {
    expect(driverOf('ISO 7045', 'M4', true)).toEqual({ drive: 'pozidriv', size: 2, mark: 'PZ2' });
    expect(driverOf('ISO 14583', 'M4', true)!.drive).toBe('torx');
  });

  it.each([
    ['ISO 7045', 'M2.6'],
    ['ISO 7048', 'M2'],
    ['ISO 14583', 'M1.6'],
    ['DIN 84', 'M3.3'],
    ['DIN 934', 'M3'],
    ['ISO 14585', 'ST2.2'],
  ])('of %s %s is unknown', (standard, thread) => {
    expect(driverOf(standard, thread)).toBeUndefined();
  });
});

describe('sockets and slots', () => {
  // ISO 10664: point diameter A in mm.
  it.each([
    [6, 1.75],
    [10, 2.8],
    [20, 3.95],
    [30, 5.6],
    [50, 8.95],
    [60, 13.45],
    [100, 22.4],
  ])('T%d measures %d over its points', (size, point) => {
    expect(hexalobularPoint(size)).toBe(Math.round(point * 1000));
    expect(hexalobularNear(Math.round(point * 1000) - 100)).toBe(size);
  });

  it('no size is near a point of 3.6 mm', () => {
    expect(hexalobularNear(3600)).toBeUndefined();
  });

  it('the slot of M3 is 0.86 to 1 wide for a blade of 0.8 (ISO 1207)', () => {
    expect(slotOf('M3')).toMatchObject({ blade: 800, slotMin: 860, slotMax: 1000 });
  });
});
