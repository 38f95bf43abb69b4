import { strToU8, zipSync } from 'fflate';
import type { OrderAnswer } from '../answers/index.ts';
import { orderHeading, orderTable } from './order-table.ts';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packaged = 'http://schemas.openxmlformats.org/package/2006';
const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';

/** What a workbook of one sheet consists of besides the sheet (ECMA-376, part 1 and 2). */
const frame = {
  '[Content_Types].xml': `<Types xmlns="${packaged}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${type}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${type}.worksheet+xml"/></Types>`,
  '_rels/.rels': `<Relationships xmlns="${packaged}/relationships"><Relationship Id="rId1" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  'xl/workbook.xml': `<workbook xmlns="${main}" xmlns:r="${relations}"><sheets><sheet name="Order" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${packaged}/relationships"><Relationship Id="rId1" Type="${relations}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
};

/** The order as a workbook of one sheet. Text is an inline string, which no spreadsheet runs as a formula; pieces are numbers. */
export function orderXlsx(order: OrderAnswer): Uint8Array {
  const rows = [orderHeading, ...orderTable(order)].map((row, down) => {
    const cells = row.map((value, across) => xlsxCell(value, `${'ABCDEFGH'[across]}${down + 1}`));
    return `<row r="${down + 1}">${cells.join('')}</row>`;
  });
  const sheet = `<worksheet xmlns="${main}"><sheetData>${rows.join('')}</sheetData></worksheet>`;
  const files = Object.entries({ ...frame, 'xl/worksheets/sheet1.xml': sheet });
  return zipSync(Object.fromEntries(files.map(([name, xml]) => [name, strToU8(head + xml)])));
}

/** The most characters that a cell of a workbook holds. */
const longest = 32_767;

/** One cell at a place such as `B3`: a number, or text that stays text. */
export function xlsxCell(value: string | number, at: string): string {
  if (typeof value === 'number') return `<c r="${at}"><v>${value}</v></c>`;
  return `<c r="${at}" t="inlineStr"><is><t xml:space="preserve">${inXml(value.slice(0, longest))}</t></is></c>`;
}

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

/** What XML 1.0 cannot hold becomes U+FFFD; `_x0041_`, which a workbook takes for a character, is escaped (ST_Xstring). */
const inXml = (text: string) =>
  text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD')
    .replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_')
    .replace(/[&<>]/g, mark => entities[mark]!);
