import { describe, expect, test } from 'vitest';
import { readQuantity } from '../../../indexer/intake/quantity.ts';

describe('a quantity cell gives its number', () => {
  const counted: [string, number][] = [
    ['2', 2],
    ['12', 12],
    ['2 pcs', 2],
    ['2x', 2],
    ['x4', 4],
    ['(3)', 3],
    ['1,0', 1],
    ['2.5 m', 2.5],
    ['４', 4],
    ['2個', 2],
    ['6 Stk.', 6],
  ];
  for (const [cell, qty] of counted)
    test(`${cell} is ${qty}`, () => expect(readQuantity(cell)).toMatchObject({ qty, understood: true }));
});

describe('"as required" has no number (letters and words of printed lists, common practice)', () => {
  for (const cell of [
    'AR',
    'A/R',
    'a.r.',
    "as req'd",
    'As required',
    's.b.',
    'selon besoin',
    'n.B.',
    'nach Bedarf',
    'q.b.',
    'según necesidad',
    'naar behoefte',
    '適量',
    'Select to fit',
  ])
    test(cell, () =>
      expect(readQuantity(cell)).toMatchObject({ qty: null, asRequired: true, understood: true }),
    );
});

test('an empty cell and a dash state nothing, REF counts nothing, a word is not understood', () => {
  for (const cell of ['', '-', '–', '  ', 'n/a'])
    expect(readQuantity(cell)).toEqual({
      qty: null,
      asRequired: false,
      referenceOnly: false,
      understood: true,
    });
  expect(readQuantity('REF')).toMatchObject({ qty: null, referenceOnly: true });
  for (const cell of ['see note', '2 or 3', '4/6', 'M3x8'])
    expect(readQuantity(cell)).toMatchObject({ qty: null, understood: false });
});
