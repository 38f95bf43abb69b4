import { strToU8 } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readRows } from '../../../indexer/intake/document.ts';
import { headRow, partRow, row, spreadsheet, workbook } from '../../documents/hostile.ts';
import { unread } from './unread.ts';

const read = (bytes: Uint8Array) => {
  const found = readRows(bytes, 'list', unread);
  const taken = found.rows.filter(one => one.outcome === 'taken');
  return {
    ...found,
    taken: taken.map(one => `${one.ref} | ${one.partNumber} | ${one.description} | ${one.qty ?? '-'}`),
    told: found.faults.map(fault => `${fault.code}, ${fault.place}`),
  };
};
const sheet = (...rows: string[]) => `<sheetData>${headRow}${rows.join('')}</sheetData>`;
/** Styles by their number: 0 general, 1 text, 2 three digits, 3 two decimals, 4 day and month, 5 moved in by two steps. */
const styles = {
  'xl/styles.xml': strToU8(
    `<styleSheet><numFmts><numFmt numFmtId="170" formatCode="000"/></numFmts><cellXfs><xf numFmtId="0"/><xf numFmtId="49"/><xf numFmtId="170"/><xf numFmtId="2"/><xf numFmtId="16"/><xf numFmtId="0"><alignment indent="2"/></xf></cellXfs></styleSheet>`,
  ),
};

describe('a workbook gives what its cells show', () => {
  test('whole numbers without point, long ones with all digits, leading zeros, decimals and sums as shown', () => {
    const bytes = workbook(
      sheet(
        row(2, '<c><v>12</v></c>', '<c s="2"><v>7</v></c>', 'Nut M3', '<c><v>2.0</v></c>'),
        row(
          3,
          '<c><v>13</v></c>',
          '<c><v>4006381333931</v></c>',
          '<c s="3"><v>3.2</v></c>',
          '<c><v>3</v></c>',
        ),
        row(4, '<c><v>14</v></c>', '<c s="1"><v>815</v></c>', 'Washer', '<c><v>0.30000000000000004</v></c>'),
      ),
      styles,
    );
    expect(read(bytes).taken).toEqual([
      '12 | 007 | Nut M3 | 2',
      '13 | 4006381333931 | 3.20 | 3',
      '14 | 815 | Washer | 0.3',
    ]);
  });

  // ECMA-376 part 1, 18.17.4.1: day 1 is the first of January 1900; with the system of 1904 day 0 is that of 1904.
  test('what was turned into a date is told at its row, and left to a person', () => {
    const bytes = workbook(sheet(partRow(2), row(3, '3', '<c s="4"><v>45263</v></c>', 'Lever', '1')), styles);
    const { rows, told, faults } = read(bytes);
    expect(told).toEqual(['turned-into-date, sheet Parts, row 3']);
    expect(faults[0]!.message).toContain('3-Dec');
    expect([rows[2]!.partNumber, rows[2]!.reading!.review]).toEqual(['3-Dec', true]);
    expect(rows[2]!.reading!.notes.join()).toContain('a spreadsheet turned this into a date');
  });
  test('days counted from 1904', () => {
    const book = strToU8(
      '<workbook xmlns:r="r"><workbookPr date1904="1"/><sheets><sheet name="Parts" r:id="r1"/></sheets></workbook>',
    );
    const bytes = workbook(sheet(row(2, '3', '<c s="4"><v>0</v></c>', 'Lever', '1')), {
      ...styles,
      'xl/workbook.xml': book,
    });
    expect(read(bytes).rows[1]!.partNumber).toBe('1-Jan');
  });

  test('a date in a title is no fault', () => {
    const bytes = workbook(
      `<sheetData>${row(1, 'Issue', '<c s="4"><v>45263</v></c>')}${row(2, 'Ref', 'Part no', 'Description', 'Qty')}${partRow(3)}</sheetData>`,
      styles,
    );
    expect(read(bytes)).toMatchObject({ told: [], taken: ['3 | AB-3 | Screw M3x8 | 2'] });
  });

  test('runs of letters are one text, and the reading of Japanese words is none of it', () => {
    const strings = strToU8(
      '<sst><si><r><t>軸</t></r><r><t xml:space="preserve">受 </t></r><rPh sb="0" eb="2"><t>ジクウケ</t></rPh></si></sst>',
    );
    const bytes = workbook(sheet(row(2, '1', 'AB-1', '<c t="s"><v>0</v></c>', '1')), {
      'xl/sharedStrings.xml': strings,
    });
    expect(read(bytes).taken).toEqual(['1 | AB-1 | 軸受 | 1']);
  });

  test('hidden rows and sheets are told and not taken; rows of a folded group are', () => {
    const hidden = partRow(3).replace('<row', '<row hidden="1"');
    const folded = partRow(4).replace('<row', '<row hidden="1" outlineLevel="1"');
    const { taken, told, rows } = read(workbook(sheet(partRow(2), hidden, folded)));
    expect(taken).toEqual(['2 | AB-2 | Screw M3x8 | 2', '4 | AB-4 | Screw M3x8 | 2']);
    expect(told).toEqual(['hidden-rows, sheet Parts, row 3']);
    expect(rows[2]).toMatchObject({ outcome: 'skipped', reason: 'hidden' });
    expect(read(workbook(sheet(partRow(2)), {}, 'state="hidden"')).told).toEqual([
      'hidden-sheet, sheet Parts',
    ]);
  });

  test('titles merged over models, and over two rows', () => {
    const rows = `<sheetData>${row(1, 'Ref', 'Part no', 'Description', 'Quantity')}${row(2, '', '', '', '<c><v>20</v></c>', '<c><v>40</v></c>')}${row(3, '1', 'AB-1', 'Frame', '1', '2')}${row(4, '2', 'AB-2', 'Nut M3', '4', '')}</sheetData>`;
    const merges =
      '<mergeCells><mergeCell ref="A1:A2"/><mergeCell ref="B1:B2"/><mergeCell ref="C1:C2"/><mergeCell ref="D1:E1"/></mergeCells>';
    const { rows: found, tables } = read(workbook(rows + merges));
    expect(tables[0]!.columns.map(({ meaning }) => meaning)).toEqual([
      'ref',
      'partNumber',
      'description',
      'model',
      'model',
    ]);
    expect(found.filter(one => one.outcome === 'taken').map(one => one.variants)).toEqual([
      [
        { model: '20', qty: 1 },
        { model: '40', qty: 2 },
      ],
      [
        { model: '20', qty: 4 },
        { model: '40', qty: 0 },
      ],
    ]);
  });

  test('a number merged over two lines: two parts of their own, or a description that goes on', () => {
    const rows = sheet(
      row(2, '5', 'AB-1', 'Pawl', '2'),
      row(3, '', 'AB-2', 'Pawl, late', '1'),
      row(4, '6', 'AB-3', 'Screw', '4'),
      row(5, '', '', 'Pan head', ''),
    );
    const merges =
      '<mergeCells><mergeCell ref="A2:A3"/><mergeCell ref="A4:A5"/><mergeCell ref="B4:B5"/><mergeCell ref="D4:D5"/></mergeCells>';
    const { taken, rows: found } = read(workbook(rows + merges));
    expect(taken).toEqual([
      '5 | AB-1 | Pawl | 2',
      '5 | AB-2 | Pawl, late | 1',
      '6 | AB-3 | Screw Pan head | 4',
    ]);
    expect(found.at(-1)!.place).toBe('sheet Parts, rows 4-5');
  });

  test('a heading merged over the table stands in its first column, whatever that holds', () => {
    const { rows } = read(
      workbook(`${sheet(row(2, 'Drive'), partRow(3))}<mergeCells><mergeCell ref="A2:D2"/></mergeCells>`),
    );
    expect(rows.map(({ outcome, reason }) => reason ?? outcome)).toEqual(['header', 'heading', 'taken']);
  });

  test('cells moved in are the parts of the assembly above them', () => {
    const bytes = workbook(
      sheet(
        row(2, '1', 'AB-1', 'Drum assembly', '1'),
        row(3, '2', 'AB-2', '<c s="5" t="inlineStr"><is><t>Drum</t></is></c>', '1'),
        row(4, '3', 'AB-3', '<c s="5" t="inlineStr"><is><t>Bushing</t></is></c>', '1'),
        row(5, '4', 'AB-4', 'Cover', '1'),
      ),
      styles,
    );
    expect(read(bytes).relations).toEqual([{ kind: 'includes', ref: '1', of: 'AB-1', refs: ['2', '3'] }]);
  });

  test('a total over several machines is no model', () => {
    const bytes = workbook(
      `<sheetData>${row(1, 'Ref', 'Part no', 'Description', 'Qty per unit', 'Qty for 5 units')}${[1, 2, 4].map((qty, at) => row(at + 2, String(at + 1), `AB-${at}`, 'Nut', String(qty), String(qty * 5))).join('')}</sheetData>`,
    );
    expect(
      read(bytes)
        .rows.slice(1)
        .map(({ qty, variants }) => [qty, variants.length]),
    ).toEqual([
      [1, 0],
      [2, 0],
      [4, 0],
    ]);
  });
});

describe('an OpenDocument sheet gives what its cells show', () => {
  const cell = (text: string, attributes = '') =>
    `<table:table-cell ${attributes}><text:p>${text}</text:p></table:table-cell>`;
  const line = (cells: string[], attributes = '') =>
    `<table:table-row ${attributes}>${cells.map(text => (text.startsWith('<') ? text : cell(text))).join('')}</table:table-row>`;
  const head = line(['Ref', 'Part no', 'Description', 'Qty']);
  const table = (rows: string, attributes = '') =>
    `<table:table table:name="Parts" ${attributes}>${rows}</table:table>`;

  test('texts as shown, blanks and paragraphs, notes left out', () => {
    const note =
      '<table:table-cell><office:annotation><text:p>ask first</text:p></office:annotation><text:p>Nut<text:s text:c="1"/>M3</text:p><text:p>brass</text:p></table:table-cell>';
    const rows = line(['1', cell('12.50', 'office:value="12.5" office:value-type="float"'), note, '2']);
    expect(
      read(spreadsheet(table(`<table:table-header-rows>${head}</table:table-header-rows>${rows}`))).taken,
    ).toEqual(['1 | 12.50 | Nut M3 brass | 2']);
  });
  test('repeated cells and rows, dates, hidden rows and sheets', () => {
    const rows =
      line(['1', 'AB-1', 'Nut', '2'], 'table:number-rows-repeated="2"') +
      '<table:table-row table:number-rows-repeated="7"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>' +
      line(['2', cell('12.03.', 'office:value-type="date"'), 'Lever', '1']) +
      line(['3', 'AB-3', 'Pin', '1'], 'table:visibility="filter"');
    const { taken, told } = read(spreadsheet(table(head + rows) + table(head, 'table:style-name="gone"')));
    expect(taken).toEqual(['1 | AB-1 | Nut | 2', '1 | AB-1 | Nut | 2', '2 | 12.03. | Lever | 1']);
    expect(told.sort()).toEqual([
      'hidden-rows, sheet Parts, row 12',
      'hidden-sheet, sheet Parts',
      'turned-into-date, sheet Parts, row 11',
    ]);
  });
  test('one XML file, as some programs save it', () => {
    const flat = `<?xml version="1.0"?><office:document><office:body><office:spreadsheet>${table(head + line(['1', 'AB-1', 'Nut', '2']))}</office:spreadsheet></office:body></office:document>`;
    expect(read(Buffer.from(flat)).taken).toEqual(['1 | AB-1 | Nut | 2']);
  });
});
