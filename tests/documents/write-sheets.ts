import { strToU8, zipSync } from 'fflate';
import type { Printed } from './lay-out.ts';

const asMarkup = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
const head = '<?xml version="1.0" encoding="UTF-8"?>';
/** Cells that a person's typing makes a number. */
const numeric = (text: string): boolean => /^(?:0|[1-9]\d{0,14})$/.test(text);
const letters = (column: number): string =>
  column < 26
    ? String.fromCharCode(65 + column)
    : letters(Math.floor(column / 26) - 1) + letters(column % 26);

/** Cells of a row that are merged, as `[from, to]`. */
const merges = ({ kind, merged = [] }: Printed, width: number): readonly [number, number][] =>
  kind === 'wide' && width > 1 ? [[0, width - 1]] : merged;

const sheetsOf = (rows: readonly Printed[]): Printed[][] =>
  Array.from({ length: Math.max(...rows.map(({ page }) => page)) }, (_, nth) =>
    rows.filter(({ page }) => page === nth + 1),
  );

/** A workbook of Office Open XML (ECMA-376), a sheet a page; even rows use shared strings, odd ones their own. */
export function writeXlsx(rows: readonly Printed[]): Uint8Array {
  const strings: string[] = [];
  const sheets = sheetsOf(rows);
  const files: Record<string, Uint8Array> = {};
  sheets.forEach((sheet, nth) => {
    files[`xl/worksheets/sheet${nth + 1}.xml`] = strToU8(worksheet(sheet, strings));
  });
  const names = sheets
    .map((_, nth) => `<sheet name="List ${nth + 1}" sheetId="${nth + 1}" r:id="rId${nth + 1}"/>`)
    .join('');
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const relation = (id: string, type: string, target: string) =>
    `<Relationship Id="${id}" Type="${office}/${type}" Target="${target}"/>`;
  const relations = (inside: string) =>
    strToU8(
      `${head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${inside}</Relationships>`,
    );
  return zipSync({
    '[Content_Types].xml': strToU8(
      `${head}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>`,
    ),
    '_rels/.rels': relations(relation('r1', 'officeDocument', 'xl/workbook.xml')),
    'xl/workbook.xml': strToU8(
      `${head}<workbook xmlns="${main}" xmlns:r="${office}"><sheets>${names}</sheets></workbook>`,
    ),
    'xl/_rels/workbook.xml.rels': relations(
      sheets
        .map((_, nth) => relation(`rId${nth + 1}`, 'worksheet', `worksheets/sheet${nth + 1}.xml`))
        .join('') + relation('rId90', 'sharedStrings', 'sharedStrings.xml'),
    ),
    ...files,
    'xl/sharedStrings.xml': strToU8(
      `${head}<sst xmlns="${main}">${strings.map(text => `<si><t xml:space="preserve">${asMarkup(text)}</t></si>`).join('')}</sst>`,
    ),
  });
}

function worksheet(rows: readonly Printed[], strings: string[]): string {
  const width = Math.max(...rows.map(({ cells }) => cells.length));
  const merged = rows.flatMap((row, nth) =>
    merges(row, width).map(
      ([from, to]) => `<mergeCell ref="${letters(from)}${nth + 1}:${letters(to)}${nth + 1}"/>`,
    ),
  );
  const body = rows.map(({ kind, cells }, nth) => {
    const written = cells.map((text, at) => {
      const place = `r="${letters(at)}${nth + 1}"`;
      if (!text) return '';
      if (kind === 'row' && numeric(text)) return `<c ${place}><v>${text}</v></c>`;
      if (nth % 2 === 1) return `<c ${place} t="inlineStr"><is><t>${asMarkup(text)}</t></is></c>`;
      strings.push(text);
      return `<c ${place} t="s"><v>${strings.length - 1}</v></c>`;
    });
    return `<row r="${nth + 1}">${written.join('')}</row>`;
  });
  return `${head}<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${body.join('')}</sheetData>${merged.length > 0 ? `<mergeCells>${merged.join('')}</mergeCells>` : ''}</worksheet>`;
}

/** An OpenDocument spreadsheet (ISO/IEC 26300), a sheet a page, filled up with blank rows to the end as programs do. */
export function writeOds(rows: readonly Printed[]): Uint8Array {
  const tables = sheetsOf(rows).map((sheet, nth) => {
    const width = Math.max(...sheet.map(({ cells }) => cells.length));
    return `<table:table table:name="List ${nth + 1}">${sheet.map(row => odsRow(row, width)).join('')}<table:table-row table:number-rows-repeated="1048000"><table:table-cell table:number-columns-repeated="16384"/></table:table-row></table:table>`;
  });
  const content = `${head}<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"><office:body><office:spreadsheet>${tables.join('')}</office:spreadsheet></office:body></office:document-content>`;
  return zipSync({
    mimetype: [strToU8('application/vnd.oasis.opendocument.spreadsheet'), { level: 0 }],
    'content.xml': strToU8(content),
  });
}

function odsRow(row: Printed, width: number): string {
  const wide = new Map(merges(row, width));
  let covered = 0;
  const cells = Array.from({ length: width }, (_, at) => {
    if (covered > 0) {
      covered -= 1;
      return '<table:covered-table-cell/>';
    }
    const text = row.cells[at] ?? '';
    const to = wide.get(at) ?? at;
    covered = to - at;
    const spans = to > at ? ` table:number-columns-spanned="${to - at + 1}"` : '';
    if (!text) return `<table:table-cell${spans}/>`;
    const value = numeric(text)
      ? ` office:value-type="float" office:value="${text}"`
      : ' office:value-type="string"';
    return `<table:table-cell${spans}${value}><text:p>${asMarkup(text).replace(/ {2,}/g, blanks => ` <text:s text:c="${blanks.length - 1}"/>`)}</text:p></table:table-cell>`;
  });
  return `<table:table-row>${cells.join('')}</table:table-row>`;
}
