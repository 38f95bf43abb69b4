import { describe, expect, it } from 'vitest';
import { read } from '../../../indexer/read.ts';
import { categoryNames } from '../../../indexer/reading/reading.ts';
import {
  attributesOf,
  equivalents,
  partStandard,
  partStandards,
  standardsOf,
  writeStandard,
} from '../../../indexer/standards/part-standards.ts';

describe('writeStandard', () => {
  it.each<[string, string | null]>([
    ['DIN 912', 'DIN 912'],
    ['din912', 'DIN 912'],
    ['DIN-912', 'DIN 912'],
    ['DIN EN ISO 4762', 'ISO 4762'],
    ['EN ISO 4762', 'ISO 4762'],
    ['ISO4762', 'ISO 4762'],
    ['ISO 7093-1:2000', 'ISO 7093-1'],
    ['ISO 7380-2', 'ISO 7380-2'],
    ['JIS B 1111', 'JIS B 1111'],
    ['JIS B1111', 'JIS B 1111'],
    ['JIS-B-1111', 'JIS B 1111'],
    ['ASME B18.3', 'ASME B18.3'],
    ['ANSI B18.6.3', 'ASME B18.6.3'],
    ['AS568', 'AS568'],
    ['DIN EN 1665', 'EN 1665'],
    ['AS 568', 'AS568'],
    ['M3x8', null],
    ['DINING 912', null],
    ['', null],
  ])('of %j is %j', (text, number) => {
    expect(writeStandard(text)).toBe(number);
  });

  it('writes every number of the table as it stands there', () => {
    for (const { standard } of partStandards) expect(writeStandard(standard)).toBe(standard);
  });
});

describe('partStandard', () => {
  // Titles of the standards.
  it.each<[string, object]>([
    ['DIN 912', { category: 'screw', head: 'socket-cap', drive: 'hex-socket' }],
    ['DIN 7985', { category: 'screw', head: 'pan', drive: 'phillips' }],
    ['ISO 14581', { category: 'screw', head: 'countersunk', drive: 'torx' }],
    ['DIN 916', { category: 'set-screw', point: 'cup', drive: 'hex-socket' }],
    ['ISO 7380-2', { category: 'screw', head: 'button', drive: 'hex-socket' }],
    ['DIN 7981', { category: 'screw', head: 'pan', drive: 'phillips', type: 'self-tapping' }],
    ['DIN 97', { category: 'screw', head: 'countersunk', drive: 'slotted', type: 'wood' }],
    ['DIN 985', { category: 'nut', type: 'lock' }],
    ['DIN 439', { category: 'nut', type: 'jam' }],
    ['DIN 125', { category: 'washer', type: 'flat' }],
    ['DIN 127', { category: 'washer', type: 'spring' }],
    ['DIN 988', { category: 'shim' }],
    ['DIN 471', { category: 'retaining-ring', type: 'external' }],
    ['DIN 472', { category: 'retaining-ring', type: 'internal' }],
    ['DIN 6799', { category: 'retaining-ring', type: 'e-clip' }],
    ['DIN 7', { category: 'pin', type: 'dowel' }],
    ['DIN 1481', { category: 'pin', type: 'spring' }],
    ['DIN 94', { category: 'pin', type: 'cotter' }],
    ['DIN 625', { category: 'bearing' }],
    ['DIN 3771', { category: 'o-ring' }],
    ['DIN 6885', { category: 'plain' }],
  ])('of %s says %j', (text, meaning) => {
    expect(partStandard(text)).toMatchObject(meaning);
  });

  it('takes a part of a standard for the whole where it has no row of its own', () => {
    expect(partStandard('ISO 7089-1')?.standard).toBe('ISO 7089');
  });

  it('lists every standard under its category, the set screws by all their points', () => {
    for (const row of partStandards) expect(standardsOf(row.category)).toContain(row);
    expect(new Set(standardsOf('set-screw').map(row => row.point))).toEqual(
      new Set(['flat', 'cone', 'dog', 'cup', null]),
    );
    expect(standardsOf('lubricant')).toEqual([]);
  });

  it('knows no other number', () => {
    expect(partStandard('DIN 99999')).toBeUndefined();
    expect(partStandard('912')).toBeUndefined();
  });
});

describe('equivalents', () => {
  // DIN and ISO pairs as suppliers' conversion tables give them.
  it.each([
    ['DIN 912', 'ISO 4762'],
    ['DIN 933', 'ISO 4017'],
    ['DIN 934', 'ISO 4032'],
    ['DIN 125', 'ISO 7089'],
    ['DIN 7991', 'ISO 10642'],
    ['DIN 84', 'ISO 1207'],
    ['DIN 963', 'ISO 2009'],
    ['DIN 913', 'ISO 4026'],
    ['DIN 6325', 'ISO 8734'],
    ['DIN 1481', 'ISO 8752'],
    ['DIN 94', 'ISO 1234'],
    ['DIN 7985', 'ISO 7045'],
  ])('of %s hold %s, both ways', (din, iso) => {
    expect(equivalents(din)).toContain(iso);
    expect(equivalents(iso)).toContain(din);
  });

  it('of a standard with none are itself alone', () => {
    expect(equivalents('DIN 471')).toEqual(['DIN 471']);
    expect(equivalents('DIN 99999')).toEqual([]);
  });
});

describe('the table', () => {
  const values: Record<string, Set<string>> = {
    head: new Set([
      'socket-cap',
      'low-socket-cap',
      'button',
      'countersunk',
      'raised-countersunk',
      'pan',
      'cheese',
      'round',
      'hex',
      'hex-flange',
      'thumb',
      'shoulder',
    ]),
    drive: new Set(['hex-socket', 'phillips', 'slotted', 'torx']),
    point: new Set(['cup', 'flat', 'cone', 'dog']),
  };

  it('holds well over a hundred standards, each of a category that readings know', () => {
    expect(partStandards.length).toBeGreaterThan(200);
    for (const row of partStandards) expect(categoryNames, row.standard).toContain(row.category);
  });

  it('speaks of heads, drives and points as readings do', () => {
    for (const row of partStandards) {
      for (const key of ['head', 'drive', 'point'] as const) {
        if (row[key] !== null) expect(values[key], `${row.standard} ${key}`).toContain(row[key]);
      }
    }
  });

  it('gives equal heads and drives to standards that it calls equivalent', () => {
    for (const row of partStandards) {
      const other = row.equivalent === null ? undefined : partStandard(row.equivalent);
      if (!other) continue;
      expect([other.category, other.head, other.point], row.standard).toEqual([
        row.category,
        row.head,
        row.point,
      ]);
    }
  });
});

describe('attributesOf', () => {
  it('gives what each number says as a reading words it', () => {
    expect(attributesOf('screw')).toMatchObject({
      'DIN 912': { head: 'socket-cap', drive: 'hex-socket' },
      'ISO 7380-2': { head: 'button', drive: 'hex-socket', flanged: true },
      'DIN 7971': { head: 'pan', drive: 'slotted', type: 'self-tapping' },
    });
    expect(attributesOf('set-screw')['ISO 4027']).toEqual({ drive: 'hex-socket', point: 'cone' });
    expect(attributesOf('retaining-ring')['JIS B 2804']).toEqual({});
    expect(Object.keys(attributesOf('o-ring'))).toContain('AS 568');
  });

  // Titles of the standards: ISO 14582 countersunk with hexalobular socket, ISO 7048 cheese head with cross recess, ISO 2341 clevis pin.
  it.each([
    ['ISO 14582 M5x12', 'screw', { head: 'countersunk', drive: 'torx' }],
    ['ISO 7048 M3x8', 'screw', { head: 'cheese', drive: 'phillips' }],
    ['DIN 1434 6x20', 'pin', { type: 'clevis' }],
    ['ISO 2341 6x20', 'pin', { type: 'clevis' }],
    ['DIN 7977 5x40', 'pin', { type: 'taper' }],
  ])('is what a line that prints nothing else is read by: %s', (line, category, attrs) => {
    expect(read(line)).toMatchObject({ category, attrs });
  });
});
