import { describe, expect, it } from 'vitest';
import { deviations } from '../../../indexer/standards/iso-286.ts';
import { lengthsOf, pinOf, pins } from '../../../indexer/standards/pins.ts';

describe('pinOf', () => {
  it.each([
    ['DIN 7', 'ISO 2338', 3],
    ['DIN 6325', 'ISO 8734', 5],
    ['DIN 1481', 'ISO 8752', 2],
    ['DIN 94', 'ISO 1234', 2.5],
    ['DIN 1', 'ISO 2339', 3],
  ])('takes %s for %s', (din, iso, diameter) => {
    expect(pinOf(din, diameter * 1000)).toBe(pinOf(iso, diameter * 1000));
    expect(pinOf(iso, diameter * 1000)).toBeDefined();
  });

  // ISO 8752, diameter of the free pin in mm, as pin makers print it.
  it.each([
    [1, 1.2, 1.3],
    [1.5, 1.7, 1.8],
    [2, 2.3, 2.4],
    [3, 3.3, 3.5],
    [5, 5.4, 5.6],
    [10, 10.5, 10.8],
    [20, 20.5, 20.9],
  ])('gives a spring pin for a hole of %d the free diameter %d to %d', (hole, min, max) => {
    expect(pinOf('ISO 8752', hole * 1000)).toMatchObject({
      min: Math.round(min * 1000),
      max: Math.round(max * 1000),
    });
  });

  it('takes 1.2 for the least free diameter of size 1: one page prints 1.02', () => {
    expect(pinOf('ISO 8752', 1000)!.min).toBe(1200);
  });

  it('gives every dowel the limits of m6 by ISO 286', () => {
    for (const pin of pins.filter(({ type }) => type === 'dowel')) {
      const { upper, lower } = deviations('m6', pin.diameter)!;
      expect([pin.max - pin.diameter, pin.min - pin.diameter], `${pin.standard} ${pin.diameter}`).toEqual([
        upper,
        lower,
      ]);
    }
  });

  it('gives every clevis pin the limits of h11 by ISO 286', () => {
    const clevis = pins.filter(({ type }) => type === 'clevis');
    expect(clevis.map(({ diameter }) => diameter / 1000).slice(0, 6)).toEqual([3, 4, 5, 6, 8, 10]);
    for (const pin of clevis) {
      const { upper, lower } = deviations('h11', pin.diameter)!;
      expect([pin.max - pin.diameter, pin.min - pin.diameter], `${pin.diameter}`).toEqual([upper, lower]);
    }
  });

  // An open CAD library gives the middle of the folded diameter, ISO 1234, mm.
  it.each([
    [0.6, 0.45],
    [1, 0.85],
    [2.5, 2.2],
    [4, 3.6],
    [6.3, 5.8],
    [10, 9.4],
    [20, 19.15],
  ])('gives a cotter for a hole of %d limits about %d', (hole, middle) => {
    const { min, max } = pinOf('ISO 1234', hole * 1000)!;
    expect((min + max) / 2).toBe(Math.round(middle * 1000));
  });

  it('gives every taper pin the limits of h10 by ISO 286 at its small end', () => {
    for (const pin of pins.filter(({ type }) => type === 'taper')) {
      const { upper, lower } = deviations('h10', pin.diameter)!;
      expect([pin.max - pin.diameter, pin.min - pin.diameter], `${pin.diameter}`).toEqual([upper, lower]);
    }
  });

  it('finds every pin by standard and diameter, and no other', () => {
    for (const pin of pins) expect(pinOf(pin.standard, pin.diameter)).toBe(pin);
    expect(pinOf('ISO 2338', 3100)).toBeUndefined();
    expect(pinOf('DIN 999', 3000)).toBeUndefined();
  });
});

describe('lengthsOf', () => {
  // ISO 2338 and 8734 as suppliers list them, mm.
  it.each<[string, number, string]>([
    ['ISO 2338', 0.6, '2 3 4 5 6'],
    ['ISO 2338', 2, '6 8 10 12 14 16 18 20'],
    ['ISO 8734', 1, '3 4 5 6 8 10'],
    ['ISO 8734', 3, '8 10 12 14 16 18 20 22 24 26 28 30'],
    ['ISO 1234', 1, '6 8 10 12 14 16 18 20'],
    ['ISO 1234', 13, '71 80 90 100 112 125 140 160 180 200 224 250'],
    ['ISO 2341', 3, '6 8 10 12 14 16 18 20 22 24 26 28 30'],
  ])('of %s %d are %s', (standard, diameter, lengths) => {
    const pin = pinOf(standard, Math.round(diameter * 1000))!;
    expect(
      lengthsOf(pin)
        .map(length => length / 1000)
        .join(' '),
    ).toBe(lengths);
  });

  it('begin and end with the shortest and longest that the standard has', () => {
    for (const pin of pins) {
      const lengths = lengthsOf(pin);
      expect([lengths[0], lengths.at(-1)], `${pin.standard} ${pin.diameter}`).toEqual([
        pin.lengthMin,
        pin.lengthMax,
      ]);
    }
  });
});
