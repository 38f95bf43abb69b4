import { strToU8, type Zippable, zipSync } from 'fflate';

/** A workbook with one sheet of these rows (XML), and what else a case wants in it. */
export function workbook(rows: string, more: Zippable = {}, sheetAttributes = ''): Uint8Array {
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  return zipSync({
    '[Content_Types].xml': strToU8('<Types/>'),
    'xl/workbook.xml': strToU8(
      `<workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="Parts" sheetId="1" r:id="r1" ${sheetAttributes}/></sheets></workbook>`,
    ),
    'xl/_rels/workbook.xml.rels': strToU8(
      `<Relationships><Relationship Id="r1" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="r2" Type="${office}/styles" Target="styles.xml"/><Relationship Id="r3" Type="${office}/sharedStrings" Target="sharedStrings.xml"/></Relationships>`,
    ),
    'xl/worksheets/sheet1.xml': strToU8(`<worksheet xmlns="${main}">${rows}</worksheet>`),
    ...more,
  });
}

/** A row of a sheet whose cells are texts; formulas and numbers are given as XML. */
export const row = (number: number, ...cells: string[]): string =>
  `<row r="${number}">${cells
    .map((cell, at) =>
      cell.startsWith('<')
        ? cell.replace('<c', `<c r="${String.fromCharCode(65 + at)}${number}"`)
        : `<c r="${String.fromCharCode(65 + at)}${number}" t="inlineStr"><is><t>${cell}</t></is></c>`,
    )
    .join('')}</row>`;

export const headRow = row(1, 'Ref', 'Part no', 'Description', 'Qty');
export const partRow = (number: number): string =>
  row(number, String(number), `AB-${number}`, 'Screw M3x8', `<c><v>2</v></c>`);

/** An OpenDocument spreadsheet of these tables (XML). */
export function spreadsheet(tables: string, more: Zippable = {}): Uint8Array {
  return zipSync({
    mimetype: [strToU8('application/vnd.oasis.opendocument.spreadsheet'), { level: 0 }],
    'content.xml': strToU8(
      `<office:document-content xmlns:office="o" xmlns:table="t" xmlns:text="x" xmlns:style="s"><office:automatic-styles><style:style style:name="gone" style:family="table"><style:table-properties table:display="false"/></style:style></office:automatic-styles><office:body><office:spreadsheet>${tables}</office:spreadsheet></office:body></office:document-content>`,
    ),
    ...more,
  });
}

/** Writes other sizes into a zip's directory than its members have. */
export function lieAboutSizes(zip: Uint8Array, declared: number): Uint8Array {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  for (let at = 0; at < zip.length - 46; at += 1)
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, declared, true);
  return zip;
}

/** The entities that grow to a thousand million letters when a reader expands them. */
export const laughs = `<!DOCTYPE lolz [<!ENTITY lol "lol">${Array.from(
  { length: 9 },
  (_, at) => `<!ENTITY lol${at + 1} "${`&lol${at || ''};`.repeat(10)}">`,
).join('')}]>`;

/** A container of old documents, with the name of one stream in its directory. */
export function compound(stream: string): Uint8Array {
  const bytes = Buffer.alloc(4096);
  Buffer.from('d0cf11e0a1b11ae1', 'hex').copy(bytes);
  Buffer.from(stream, 'utf16le').copy(bytes, 1024);
  return bytes;
}
