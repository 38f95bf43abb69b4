import { describe, expect, it } from 'vitest';
import { inchPins } from '../../../indexer/standards/inch-pins.ts';
import { inchHeads } from '../../../indexer/standards/inch-screw-heads.ts';
import { inchWashers } from '../../../indexer/standards/inch-washers.ts';
import { baNuts, inchNuts, olderJapaneseNuts } from '../../../indexer/standards/other-nuts.ts';

const inches = (um: number) => um / 25_400;

describe('inchHeads', () => {
  // ASME B18.6.3 least and greatest pan head diameters as suppliers' pages print them (from memory), in inches.
  it.each([
    ['2', 0.155, 0.167],
    ['4', 0.205, 0.219],
    ['6', 0.256, 0.27],
    ['8', 0.306, 0.322],
    ['10', 0.357, 0.373],
    ['1/4', 0.473, 0.492],
  ])('a pan head of %s is %d to %d', (size, min, max) => {
    const { diameter } = inchHeads(size).find(each => each.head === 'pan')!;
    expect(Math.abs(inches(diameter.min) - min)).toBeLessThanOrEqual(0.003);
    expect(inches(diameter.max)).toBeCloseTo(max, 3);
  });

  // ASME B18.3 socket cap screws: 0.091 to 0.096 for 0, 0.303 to 0.312 for 10, 0.365 to 0.375 for 1/4 (from memory).
  it.each([
    ['0', 0.091, 0.096],
    ['10', 0.303, 0.312],
    ['1/4', 0.365, 0.375],
  ])('a cap head of %s is %d to %d', (size, min, max) => {
    const { diameter } = inchHeads(size).find(each => each.head === 'socket-cap')!;
    expect(Math.abs(inches(diameter.min) - min)).toBeLessThanOrEqual(0.001);
    expect(inches(diameter.max)).toBeCloseTo(max, 3);
  });

  it('of a size that no table has are none', () => expect(inchHeads('7')).toEqual([]));
});

describe('nuts of other threads', () => {
  // Middles of an open CAD library's ASME machine screw nuts, in millimetres.
  it.each([
    ['4', 6.236, 2.35],
    ['6', 7.798, 2.743],
    ['8', 8.585, 3.137],
    ['10', 9.36, 3.137],
  ])('a %s nut is %d across flats and %d high, in the middle', (size, flats, height) => {
    const [nut] = inchNuts(size);
    expect((nut!.acrossFlats + nut!.acrossFlatsMin) / 2000).toBeCloseTo(flats, 1);
    expect((nut!.height + nut!.heightMin) / 2000).toBeCloseTo(height, 1);
  });

  // An encyclopedia's page on BA threads: the spanner is 1.75 times the outside diameter.
  it.each([
    ['0BA', 10.5],
    ['2BA', 8.225],
    ['4BA', 6.3],
    ['6BA', 4.9],
  ])('a %s nut is %d across flats', (thread, flats) => {
    expect(baNuts(thread)[0]!.acrossFlats).toBe(flats * 1000);
  });

  // A camera maker's bulletin of 1967: hexagons of 6, 8 and 9 mm before the ISO threads, 5.5, 7 and 8 since.
  it.each([
    ['M3x0.6', 6],
    ['M4x0.75', 8],
    ['M5x0.9', 9],
  ])('an older Japanese %s nut is %d across flats', (thread, flats) => {
    expect(olderJapaneseNuts(thread)[0]!.acrossFlats).toBe(flats * 1000);
  });

  it('of today’s metric threads are none', () => {
    expect([...olderJapaneseNuts('M3'), ...baNuts('M3'), ...inchNuts('M3')]).toEqual([]);
  });
});

// Type B narrow of ASME B18.21.1 in an open CAD library: hole, outside, thickness in millimetres.
it.each([
  ['4', 3.175, 6.35, 0.813],
  ['8', 4.775, 9.525, 1.016],
  ['1/4', 7.137, 12.7, 1.6],
])('the narrow washer of a %s screw is %d x %d x %d', (size, id, od, thickness) => {
  const washer = inchWashers.find(
    each => each.size === size && each.standard === 'ASME B18.21.1 type B narrow',
  )!;
  expect(washer).toMatchObject({ id: id * 1000, od: od * 1000, thickness: thickness * 1000 });
});

describe('inchPins', () => {
  // ASME B18.8.2 standard dowels are 0.0002 in over their fraction, 0.0001 either way.
  it('a 1/8 dowel is 3.1775 to 3.183 mm', () => {
    const pin = inchPins.find(each => each.type === 'dowel' && each.size === '1/8')!;
    expect(Math.abs(pin.min - 3177.5)).toBeLessThanOrEqual(1);
    expect(Math.abs(pin.max - 3182.6)).toBeLessThanOrEqual(1);
    expect(pin.diameter).toBe(3175);
  });

  it('a spring pin is larger than its hole while it is free', () => {
    for (const pin of inchPins.filter(each => each.type === 'spring'))
      expect(pin.min).toBeGreaterThan(pin.diameter);
  });
});
