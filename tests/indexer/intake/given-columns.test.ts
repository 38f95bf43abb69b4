import { expect, test } from 'vitest';
import { readRows } from '../../../indexer/intake/document.ts';
import {
  type ColumnMeaning,
  columnMeanings,
  type GivenColumns,
} from '../../../indexer/reading/column-meanings.ts';
import { headRow, partRow, workbook } from '../../documents/hostile.ts';
import { unread } from './unread.ts';

const read = (text: string | Uint8Array, columns?: GivenColumns) =>
  readRows(Buffer.from(text as string), 'list', unread, { columns });
const meanings = (text: string) =>
  read(text).tables.map(({ columns }) => columns.map(({ meaning }) => meaning));
const row = ({ ref, partNumber, description, qty, remarks }: ReturnType<typeof read>['rows'][number]) =>
  [ref, partNumber, description, qty ?? '-', remarks].join(' | ');
const taken = (text: string, columns?: GivenColumns) =>
  read(text, columns)
    .rows.filter(one => one.outcome === 'taken')
    .map(row);

const csv = '10;200-11;Knob;1\n20;200-12;Spring;2\n30;200-13;Cap;1\n';

test('what a person says of the columns is taken, whatever they seem', () => {
  expect(meanings(csv)).toEqual([['ref', 'partNumber', 'description', 'qty']]);
  expect(taken(csv, [['qty', 'partNumber', 'description', 'ref']])[1]).toBe('2 | 200-12 | Spring | 20 | ');
  expect(taken(csv, [['other', 'partNumber', 'description']])[1]).toBe(' | 200-12 | Spring | - | 20; 2');
  expect(read(csv, [['ref', 'partNumber', 'description', 'model']]).rows[1]!.variants).toEqual([
    { model: 'column 4', qty: 2 },
  ]);
});

test('the answer tells them as they were given', () => {
  const given: ColumnMeaning[] = ['qty', 'partNumber', 'description', 'ref'];
  expect(read(csv, [given]).tables).toMatchObject([{ columns: given.map(meaning => ({ meaning })) }]);
});

test('pasted text is cut anew', () => {
  const text = [
    '1 20-114 Ball bearing 6x13x5 2',
    '2 20-115 Side plate 1',
    '3 20-116 Screw M3x8 4',
    '4 20-121 Spool 1',
  ].join('\n');
  expect(taken(text, [['qty', 'partNumber', 'description', 'ref']])[0]).toBe(
    '2 | 20-114 | Ball bearing 6x13x5 | 1 | ',
  );
});

test('a table that is left out is read as found; a header that comes again goes with its table', () => {
  const page = (rows: string) => `<table><tr><th>Ref<th>No<th>Name<th>Qty${rows}</table>`;
  const html = `<p>${page('<tr><td>1<td>AB-101<td>Nut<td>2')}${page('<tr><td>2<td>AB-102<td>Pin<td>3')}<table><tr><th>Code<th>Name<tr><td>CD-101<td>Cap</table>`;
  expect(read(html).tables).toHaveLength(2);
  expect(taken(html, [null, ['remarks', 'description']])).toEqual([
    '1 | AB-101 | Nut | 2 | ',
    '2 | AB-102 | Pin | 3 | ',
    ' |  | Cap | - | CD-101',
  ]);
  expect(taken(html, [['qty', 'partNumber', 'description', 'ref']]).slice(0, 2)).toEqual([
    '2 | AB-101 | Nut | 1 | ',
    '3 | AB-102 | Pin | 2 | ',
  ]);
});

test('lists side by side begin where the first meaning comes again', () => {
  const text = '1;Knob;2;4;Nut;1\n2;Cap;1;5;Pin;3\n';
  expect(taken(text, [['ref', 'description', 'qty', 'ref', 'description', 'qty']])).toEqual([
    '1 |  | Knob | 2 | ',
    '2 |  | Cap | 1 | ',
    '4 |  | Nut | 1 | ',
    '5 |  | Pin | 3 | ',
  ]);
});

test('a first line of words where numbers follow is a header, though in words that are not known', () => {
  const { tables, rows } = read(`Lorem;Ipsum;Dolor;Amet\n${csv}`);
  expect(tables[0]!.columns).toMatchObject([
    { title: 'Lorem', meaning: 'ref' },
    {},
    {},
    { title: 'Amet', meaning: 'qty' },
  ]);
  expect(rows.map(({ outcome }) => outcome)).toEqual(['skipped', 'taken', 'taken', 'taken']);
});

test('any list of meanings is taken without harm', () => {
  const sheet = workbook(`<sheetData>${headRow}${partRow(2)}</sheetData>`);
  for (const meaning of columnMeanings) {
    expect(() => read(sheet, [[meaning, meaning, meaning, meaning, meaning, meaning]])).not.toThrow();
    expect(() => read('1 20-114 Spool 2\n2 20-115 Cap 1\n', [[meaning]])).not.toThrow();
  }
  expect(() => read(csv, [[], null, ['qty']])).not.toThrow();
});
