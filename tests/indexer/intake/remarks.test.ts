import { describe, expect, test } from 'vitest';
import { readRows } from '../../../indexer/intake/document.ts';
import { isFactOfPart } from '../../../indexer/intake/part-facts.ts';
import { serialRange } from '../../../indexer/intake/relate.ts';
import { sideOf } from '../../../indexer/intake/sides.ts';
import { unread } from './unread.ts';

/** The relations of part 3, X-1003, in a list of parts 1 to 9 and 4A, when its remark is this. */
function relationsOf(remark: string): object[] {
  const refs = ['1', '2', '3', '4', '4A', '5', '6', '7', '8', '9'];
  const lines = refs.map(
    ref => `${ref};X-10${ref.padStart(2, '0')};Part;1;${ref === '3' ? `"${remark}"` : ''}`,
  );
  const text = ['Ref;Part no;Description;Qty;Remarks', ...lines].join('\n');
  return readRows(Buffer.from(text), 'list', unread).relations.map(
    ({ kind, refs, partNumber, from, to }) => ({
      kind,
      ...(refs && { refs }),
      ...(partNumber && { partNumber }),
      ...(from && { from }),
      ...(to && { to }),
    }),
  );
}

/** Remarks as lists print them (common practice), and what each must give. */
const remarks: [string, object[]][] = [
  ['Consists of 4-6', [{ kind: 'includes', refs: ['4', '4A', '5', '6'] }]],
  ['assembly includes items 4, 6 and 8', [{ kind: 'includes', refs: ['4', '6', '8'] }]],
  ['incl. 5~7, 9', [{ kind: 'includes', refs: ['5', '6', '7', '9'] }]],
  ['INCL. 1-5', [{ kind: 'includes', refs: ['1', '2', '4', '4A', '5'] }]],
  ['besteht aus Pos. 4 bis 6', [{ kind: 'includes', refs: ['4', '4A', '5', '6'] }]],
  ['enthält Nr. 4A und 5', [{ kind: 'includes', refs: ['4A', '5'] }]],
  ['comprend repères 7 à 9', [{ kind: 'includes', refs: ['7', '8', '9'] }]],
  ['composto da 5-6', [{ kind: 'includes', refs: ['5', '6'] }]],
  ['compuesto por 5 y 7', [{ kind: 'includes', refs: ['5', '7'] }]],
  ['bestaat uit 7 t/m 9', [{ kind: 'includes', refs: ['7', '8', '9'] }]],
  ['includes 2 screws', []],
  ['includes 2 x M3x8', []],
  ['includes 20-25', []],
  ['replaced by X-2044', [{ kind: 'superseded-by', partNumber: 'X-2044' }]],
  ['Superseded, use X-2044', [{ kind: 'superseded-by', partNumber: 'X-2044' }]],
  ['use part no. X-2044', [{ kind: 'superseded-by', partNumber: 'X-2044' }]],
  ['USE X-2044', [{ kind: 'superseded-by', partNumber: 'X-2044' }]],
  ['→ X-2044', [{ kind: 'superseded-by', partNumber: 'X-2044' }]],
  ['ersetzt durch AB 204 411', [{ kind: 'superseded-by', partNumber: 'AB 204 411' }]],
  [
    'remplacé par X-2044; NSS',
    [{ kind: 'superseded-by', partNumber: 'X-2044' }, { kind: 'not-sold-separately' }],
  ],
  ['sostituito da X-2044', [{ kind: 'superseded-by', partNumber: 'X-2044' }]],
  ['sustituido por X-2044', [{ kind: 'superseded-by', partNumber: 'X-2044' }]],
  ['vervangen door X-2044', [{ kind: 'superseded-by', partNumber: 'X-2044' }]],
  [
    'replaced by X-2044 + X-2045',
    [
      { kind: 'superseded-by', partNumber: 'X-2044' },
      { kind: 'superseded-by', partNumber: 'X-2045' },
    ],
  ],
  ['use with 5', []],
  ['use 2 of', []],
  ['use grease', []],
  ['replaces X-0044', []],
  ['ersetzt X-0044', []],
  ['up to serial 78100', [{ kind: 'serial', to: '78100' }]],
  ['TO S/N 41800', [{ kind: 'serial', to: '41800' }]],
  ['from s/n 78101', [{ kind: 'serial', from: '78101' }]],
  ['bis Nr. 14000', [{ kind: 'serial', to: '14000' }]],
  ['ab Masch.-Nr. 14001', [{ kind: 'serial', from: '14001' }]],
  ["jusqu'au n° 73500", [{ kind: 'serial', to: '73500' }]],
  ['à partir du n° 73501', [{ kind: 'serial', from: '73501' }]],
  ['dal n. 500 al n. 999', [{ kind: 'serial', from: '500', to: '999' }]],
  ['hasta el n.º 3000', [{ kind: 'serial', to: '3000' }]],
  ['t/m serienummer 8800', [{ kind: 'serial', to: '8800' }]],
  ['78100まで', [{ kind: 'serial', to: '78100' }]],
  ['not sold separately', [{ kind: 'not-sold-separately' }]],
  ['nicht einzeln lieferbar', [{ kind: 'not-sold-separately' }]],
  ['non vendu séparément', [{ kind: 'not-sold-separately' }]],
  ['niet los verkrijgbaar', [{ kind: 'not-sold-separately' }]],
  ['NSS; Option', [{ kind: 'not-sold-separately' }, { kind: 'option' }]],
  ['Select as required', [{ kind: 'as-required' }]],
  ['en option', [{ kind: 'option' }]],
  ['for reference only', [{ kind: 'reference-only' }]],
  ['attaching part', [{ kind: 'attaching' }]],
  ['NS', []],
  ['fits to 5 mm', []],
  ['LH thread', []],
];

describe('a remark gives its relations and nothing else', () => {
  for (const [remark, relations] of remarks)
    test(remark, () => expect(relationsOf(remark)).toEqual(relations));
});

test('NS can mean two things, so a person is asked', () => {
  const list = 'Ref;Part no;Description;Qty;Remarks\n1;X-1;Drum;1;NS\n2;X-2;Pawl;1;NSS\n';
  const [, drum, pawl] = readRows(Buffer.from(list), 'list', unread).rows;
  expect(drum!.reading).toMatchObject({ review: true, notes: [expect.stringContaining('NS can mean')] });
  expect(pawl!.reading).toMatchObject({ review: false, notes: [] });
});

describe('serial numbers, first and last inclusive', () => {
  const cases: [string, object | null][] = [
    ['s/n 1000-1999', { from: '1000', to: '1999' }],
    ['serial 2000 and up', { from: '2000' }],
    ['before serial 3000', { to: '2999' }],
    ['after s/n AB0099', { from: 'AB0100' }],
    ['ab Nr. 500 bis Nr. 900', { from: '500', to: '900' }],
    ['up to 5 mm', null],
    ['M3 to M5', null],
  ];
  for (const [remark, range] of cases) test(remark, () => expect(serialRange(remark)).toEqual(range));
});

test('a fact of the part is told from a note about it', () => {
  for (const fact of [
    'Left-hand thread',
    'LH thread',
    'filetage à gauche',
    'Linksgewinde',
    'stainless',
    'DIN 912',
    '5x11x4',
    'Messing',
  ])
    expect(isFactOfPart(fact), fact).toBe(true);
  for (const note of ['replaced by X-1', 'from s/n 100', 'option', 'black', 'see page 4', 'NSS'])
    expect(isFactOfPart(note), note).toBe(false);
});

test('a side is told from the hand of a thread', () => {
  expect(sideOf('Side plate, left')).toEqual({ side: 'left', rest: 'side plate' });
  expect(sideOf('Deckel rechts')).toEqual({ side: 'right', rest: 'deckel' });
  expect(sideOf('END CAP R')).toEqual({ side: 'right', rest: 'end cap' });
  expect(sideOf('Noix de sortie gauche')).toEqual({ side: 'left', rest: 'noix de sortie' });
  expect(sideOf('Nut, left-hand thread')).toBeNull();
  expect(sideOf('Cover, left and right')).toBeNull();
  expect(sideOf('Ball bearing')).toBeNull();
});
