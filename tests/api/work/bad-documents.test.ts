import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { Refusal } from '../../../api/refusal.ts';
import { readInChild } from '../../../api/work/spawn-reader.ts';
import {
  compound,
  headRow,
  laughs,
  lieAboutSizes,
  partRow,
  row,
  spreadsheet,
  workbook,
} from '../../documents/hostile.ts';

/** What the child answers, and that it does so within ten seconds; its memory is watched by the limit of 512 MiB. */
async function answer(bytes: Uint8Array, name = 'list.xlsx') {
  const started = Date.now();
  const found = await readInChild(bytes, { name }).catch(error => error as Refusal);
  expect(Date.now() - started).toBeLessThan(10_000);
  if (!(found instanceof Refusal)) {
    const taken = found.rows.filter(one => one.outcome === 'taken').map(one => one.partNumber);
    return { taken, faults: found.faults.map(fault => `${fault.code}, ${fault.place}`), code: null, found };
  }
  for (const words of [found.place, found.message, found.remedy]) expect(words.length).toBeGreaterThan(3);
  return { taken: [], faults: [], code: found.code, found };
}

const blanks = new Uint8Array(200 * 1024 * 1024).fill(0x20);
const sheet = (inside: string) => `<sheetData>${headRow}${inside}</sheetData>`;
const good = sheet(partRow(2) + partRow(3));

describe('spreadsheets that are meant to do harm are answered', () => {
  test('a sheet that unpacks to 200 MiB, as its directory says', async () => {
    const bomb = workbook(good, { 'xl/sharedStrings.xml': [blanks, { level: 1 }] });
    expect(bomb.length).toBeLessThan(1_000_000);
    expect((await answer(bomb)).code).toBe('too-large');
  });
  test('one that says it is small', async () => {
    const bomb = lieAboutSizes(workbook(good, { 'xl/sharedStrings.xml': [blanks, { level: 1 }] }), 100);
    expect((await answer(bomb)).code).toBe('too-large');
  });
  test('a bomb beside the list, which is never opened', async () => {
    const bomb = workbook(good, { 'xl/media/image1.png': [blanks, { level: 1 }] });
    expect((await answer(bomb)).taken).toEqual(['AB-2', 'AB-3']);
  });
  test('a text of a hundred million letters in one cell', async () => {
    const long = workbook(sheet(`${row(2, '2', 'AB-2', 'x'.repeat(100_000_000), '')}${partRow(3)}`));
    const { taken, faults } = await answer(long);
    expect(taken).toEqual(['AB-3']);
    expect(faults).toEqual(['line-too-long, sheet Parts, row 2']);
  });
  test('a million empty rows', async () => {
    const rows = Array.from({ length: 1_000_000 }, (_, at) => `<row r="${at + 4}" ht="15"></row>`).join('');
    expect((await answer(workbook(sheet(partRow(2) + rows)))).taken).toEqual(['AB-2']);
  });
  test('three hundred thousand rows', async () => {
    const rows = Array.from({ length: 300_000 }, (_, at) => partRow(at + 2)).join('');
    expect((await answer(workbook(sheet(rows)))).code).toBe('too-large');
  });
  test('a row of a million columns, and one cell far to the right', async () => {
    const wide = Array.from({ length: 1_000_000 }, () => '<c><v>1</v></c>').join('');
    const { taken, faults } = await answer(
      workbook(sheet(`${partRow(2)}<row r="3">${wide}</row>${partRow(4)}`)),
    );
    expect(taken).toEqual(['AB-2', 'AB-4']);
    expect(faults.sort()).toEqual([
      'more-cells-than-columns, sheet Parts, row 3',
      'too-many-columns, sheet Parts, row 3',
    ]);
  });
  test('merged cells over the whole sheet, a hundred thousand times', async () => {
    const merges = '<mergeCell ref="A1:XFD1048576"/>'.repeat(100_000);
    expect((await answer(workbook(`${good}<mergeCells>${merges}</mergeCells>`))).code).toBeNull();
  });
  test('billion laughs, and any other document type', async () => {
    const shared = strToU8(`<?xml version="1.0"?>${laughs}<sst><si><t>&lol9;</t></si></sst>`);
    expect((await answer(workbook(good, { 'xl/sharedStrings.xml': shared }))).code).toBe('unreadable');
  });
  test('names that look like paths are names', async () => {
    const { taken } = await answer(
      workbook(good, { '../../etc/passwd': strToU8('x'), 'C:\\x': strToU8('y') }),
    );
    expect(taken).toEqual(['AB-2', 'AB-3']);
  });
  test('a relation to a file of the machine or the network is not followed', async () => {
    const rels =
      '<Relationships><Relationship Id="r1" Type="x/worksheet" TargetMode="External" Target="file:///etc/passwd"/></Relationships>';
    expect((await answer(workbook(good, { 'xl/_rels/workbook.xml.rels': strToU8(rels) }))).code).toBe(
      'no-rows',
    );
  });
  test('elements a million deep', async () => {
    expect((await answer(workbook(`<a>`.repeat(1_000_000)))).code).toBe('unreadable');
  });
  test('a file cut off in the middle', async () => {
    const whole = workbook(sheet(Array.from({ length: 500 }, (_, at) => partRow(at + 2)).join('')));
    expect((await answer(whole.slice(0, whole.length >> 1))).code).toBe('unreadable');
  });
  test('a sheet whose bytes are damaged', async () => {
    const whole = workbook(good);
    const name = Buffer.from(whole.buffer).indexOf('xl/worksheets/sheet1.xml');
    whole.fill(0xff, name + 40, name + 100);
    expect((await answer(whole)).code).toBe('unreadable');
  });
  test('formulas give their stored results and are never worked out', async () => {
    const rows = row(
      2,
      '1',
      '<c t="str"><f>HYPERLINK("http://x.example","AB-7")</f><v>AB-7</v></c>',
      'Nut M3',
      '<c><f>2+2</f><v>5</v></c>',
    );
    const open = row(3, '2', 'AB-8', 'Nut M4', '<c><f>SUM(D2:D2)</f></c>');
    const { found, faults } = await answer(workbook(sheet(rows + open)));
    if (found instanceof Refusal) throw found;
    expect(found.rows.slice(1).map(one => [one.partNumber, one.qty])).toEqual([
      ['AB-7', 5],
      ['AB-8', null],
    ]);
    expect(faults).toEqual(['no-stored-result, sheet Parts, row 3']);
  });
});

describe('OpenDocument sheets that are meant to do harm are answered', () => {
  const cell = (text: string, attributes = '') =>
    `<table:table-cell ${attributes}><text:p>${text}</text:p></table:table-cell>`;
  const line = (attributes: string, ...cells: string[]) =>
    `<table:table-row ${attributes}>${cells.map(text => cell(text)).join('')}</table:table-row>`;
  const head = line('', 'Ref', 'Part no', 'Description', 'Qty');
  const table = (rows: string) => `<table:table table:name="Parts">${head}${rows}</table:table>`;

  test('a million blank rows and columns to the end of the sheet', async () => {
    const blank =
      '<table:table-row table:number-rows-repeated="1048576"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>';
    expect((await answer(spreadsheet(table(line('', '1', 'AB-1', 'Nut M3', '2') + blank)))).taken).toEqual([
      'AB-1',
    ]);
  });
  test('a row that is repeated a thousand million times', async () => {
    const rows = line('table:number-rows-repeated="1000000000"', '1', 'AB-1', 'Nut M3', '2');
    expect((await answer(spreadsheet(table(rows)))).code).toBe('too-large');
  });
  test('a cell that is repeated a thousand million times, in many rows', async () => {
    const rows =
      `<table:table-row>${cell('x', 'table:number-columns-repeated="1000000000"')}</table:table-row>`.repeat(
        100_000,
      );
    expect((await answer(spreadsheet(table(rows)))).code).toBe('too-large');
  });
  test('a password', async () => {
    const manifest = strToU8(
      '<manifest:manifest><manifest:file-entry><manifest:encryption-data/></manifest:file-entry></manifest:manifest>',
    );
    const { code, found } = await answer(spreadsheet(table(''), { 'META-INF/manifest.xml': manifest }));
    expect([code, (found as Refusal).remedy]).toEqual(['unreadable', expect.stringContaining('password')]);
  });
});

describe('pages that are meant to do harm are answered', () => {
  const list = '<tr><th>Ref<th>Part no<th>Description<th>Qty<tr><td>1<td>AB-1<td>Nut M3<td>2';
  const page = (inside: string) => Buffer.from(`<!doctype html><body>${inside}`);

  test('billion laughs are letters', async () => {
    const bytes = Buffer.from(`${laughs}<table>${list}<tr><td>2<td>AB-2<td>&lol9;<td>1</table>`);
    expect((await answer(bytes, 'list.html')).taken).toEqual(['AB-1', 'AB-2']);
  });
  test('cells over thousands of columns and rows', async () => {
    const rows = '<tr><td colspan=1000000000 rowspan=1000000000>x'.repeat(100_000);
    const bytes = page(`<table>${list}</table><table>${rows}</table>`);
    expect((await answer(bytes, 'list.html')).taken).toEqual(['AB-1']);
  });
  test('rows that a cell reaches into, a hundred thousand of them, with cells on both sides', async () => {
    const rows = `<tr><td>a<td colspan=250 rowspan=65534>x${'<tr><td>b<td>c'.repeat(100_000)}`;
    expect((await answer(page(`<table>${rows}</table>`), 'list.html')).code).toBe('too-large');
  });
  test('tables within tables, two million deep', async () => {
    expect((await answer(page('<table><tr><td>'.repeat(1_600_000)), 'list.html')).code).toBe('unreadable');
  });
  test('ends without beginnings, five million of them', async () => {
    const bytes = page(`${'<b>'.repeat(1400)}<table>${list}</table>${'</i>'.repeat(5_000_000)}`);
    expect((await answer(bytes, 'list.html')).taken).toEqual(['AB-1']);
  });
  test('24 MB of tiny elements', async () => {
    const bytes = page(`<table>${list}</table>${'<b>a</b>'.repeat(3_000_000)}`);
    expect((await answer(bytes, 'list.html')).taken).toEqual(['AB-1']);
  });
  test('a hundred thousand tables', async () => {
    const bytes = page(`<table>${list}</table>${'<table><tr><td>a<td>b</table>'.repeat(100_000)}`);
    expect((await answer(bytes, 'list.html')).taken).toEqual(['AB-1']);
  });
  test('tables with and without a header by turns, thousands of them', async () => {
    const long = `<table>${list}${'<tr><td>2<td>AB-2<td>Pin<td>1'.repeat(300)}</table>`;
    const turns = `<table>${list}</table><table><tr><td>Home<td>Cart</table>`.repeat(20_000);
    expect((await answer(page(long + turns), 'list.html')).taken).toHaveLength(20_301);
  });
  test('scripts, styles, hidden rows and addresses: nothing runs, nothing is fetched', async () => {
    const bytes = page(
      `<script src="http://x.example/x.js">document.write("<table><tr><td>9")</script><table>${list}<tr style="display: none"><td>8<td>AB-8<td>Nut<td>1<tr><td>2<td>AB-2<td><img src="http://x.example/a.png">Nut M4<td>3</table>`,
    );
    expect((await answer(bytes, 'list.html')).taken).toEqual(['AB-1', 'AB-2']);
  });
});

describe('a document of a kind that is not read is named', () => {
  const cases: [string, Uint8Array, string][] = [
    ['an old spreadsheet', compound('Workbook'), 'spreadsheet of the old kind (.xls)'],
    ['a spreadsheet with a password', compound('EncryptedPackage'), 'password'],
    ['an old letter', compound('WordDocument'), 'word-processor'],
    [
      'a letter',
      zipSync({ '[Content_Types].xml': strToU8('x'), 'word/document.xml': strToU8('x') }),
      'word-processor',
    ],
    ['a binary spreadsheet', zipSync({ 'xl/workbook.bin': strToU8('x') }), 'binary spreadsheet'],
    ['an archive', zipSync({ 'list.csv': strToU8('1;2;3') }), 'zip archive'],
  ];
  for (const [title, bytes, words] of cases)
    test(title, async () => {
      const { code, found } = await answer(bytes);
      expect([code, (found as Refusal).message]).toEqual(['unknown-kind', expect.stringContaining(words)]);
    });
  test('the name and the media type are not believed', async () => {
    const found = await readInChild(workbook(good), { name: 'list.csv', mediaType: 'text/csv' });
    expect(found.rows.filter(one => one.outcome === 'taken')).toHaveLength(2);
    const text = await readInChild(Buffer.from('Ref;Part no;Name;Qty\n1;AB-1;Nut;2\n2;AB-2;Nut;2\n'), {
      name: 'list.xlsx',
    });
    expect(text.rows.filter(one => one.outcome === 'taken')).toHaveLength(2);
  });
});
