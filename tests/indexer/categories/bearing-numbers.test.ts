import { describe, expect, it } from 'vitest';
import { read } from '../../../indexer/read.ts';
import { inchBearings } from '../../../indexer/standards/inch-bearings.ts';
import { deepGrooveBearings } from '../../../indexer/standards/iso-15.ts';
import { linearBearings } from '../../../indexer/standards/linear-bearings.ts';
import { needleBearings } from '../../../indexer/standards/needle-bearings.ts';
import { sphericalBearings } from '../../../indexer/standards/spherical-bearings.ts';
import { thrustBearings } from '../../../indexer/standards/thrust-bearings.ts';

interface Numbered {
  readonly line: string;
  readonly type?: string;
  readonly dims: Readonly<Record<string, number>>;
}

const mm = (um: number) => um / 1000;

const balls: Numbered[] = [...deepGrooveBearings, ...inchBearings].map(({ designation, bore, od }) => ({
  line: `Bearing ${designation}`,
  dims: { bore: mm(bore), od: mm(od) },
}));

const needles: Numbered[] = needleBearings
  .filter(each => /^(HK|NK)/.test(each.designation))
  .map(({ designation, bore, od, width }) => ({
    line: `Bearing ${designation}`,
    type: 'needle',
    dims: { bore: mm(bore), od: mm(od), width: mm(width) },
  }));

const thrusts: Numbered[] = thrustBearings.map(({ designation, bore, od, height }) => ({
  line: `Bearing ${designation}`,
  type: 'thrust',
  dims: { bore: mm(bore), od: mm(od), width: mm(height) },
}));

const linears: Numbered[] = linearBearings.map(({ designation, bore, od, length }) => ({
  line: `Bearing ${designation}`,
  type: 'linear',
  dims: { bore: mm(bore), od: mm(od), width: mm(length) },
}));

const sphericals: Numbered[] = sphericalBearings.map(({ bore, od, width }) => ({
  line: `Bearing GE${mm(bore)}ES`,
  type: 'spherical',
  dims: { bore: mm(bore), od: mm(od), width: mm(width) },
}));

describe('the number of every published bearing', () => {
  it.each([
    ['ball', balls],
    ['needle', needles],
    ['thrust', thrusts],
    ['linear', linears],
    ['spherical', sphericals],
  ] as const)('reads back to its dimensions: %s', (_, numbered) => {
    for (const { line, type, dims } of numbered) {
      const reading = read(line);
      expect(reading, line).toMatchObject({ category: 'bearing', dims });
      expect(reading.attrs['type'], line).toBe(type);
    }
  });

  it('of a flanged linear bushing says the flange', () => {
    expect(read('Linear bearing LMF8UU')).toMatchObject({
      dims: { bore: 8, od: 15, width: 24 },
      attrs: { type: 'linear', flanged: true },
    });
  });

  // HK1210 is thinner than every other cup of 12 mm (FBJ catalogue: 12 x 16 x 10, 12 x 18 x 12).
  it('keeps the thin HK1210 apart, and gives no outside to a width of that shaft that no list has', () => {
    expect(read('HK1210').dims).toEqual({ bore: 12, od: 16, width: 10 });
    expect(read('HK1212').dims).toEqual({ bore: 12, od: 18, width: 12 });
    expect(read('Needle bearing HK1215').dims['od']).toBeUndefined();
    expect(read('Needle bearing HK0812').dims).toEqual({ bore: 8, od: 12, width: 12 });
  });
});
