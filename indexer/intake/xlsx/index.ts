import { hiddenSheet } from '../faults.ts';
import type { Grid } from '../grid.ts';
import { GridBuilder } from '../grid-builder.ts';
import { readXmlMember } from '../markup.ts';
import { sheetPlace } from '../sheet-place.ts';
import { Unreadable } from '../unreadable.ts';
import type { Zip } from '../zip.ts';
import { readFormats } from './formats.ts';
import { readSharedStrings } from './shared-strings.ts';
import { SheetReader } from './sheet.ts';
import { readWorkbook } from './workbook.ts';

/**
 * A workbook of Office Open XML (ECMA-376) as a grid: `page` is the sheet's number, `sheet Parts, row 12` the place.
 * Hidden sheets and rows are told and not read.
 * @throws {Unreadable} `unreadable` where it has no workbook, `too-large` beyond the limits
 */
export function readXlsx(zip: Zip, mostRows: number): Grid {
  const workbook = readWorkbook(zip);
  if (!workbook)
    throw new Unreadable('unreadable', {
      place: 'the document',
      message: 'The file has the build of a spreadsheet, but its workbook is missing.',
      remedy: 'Open it in a spreadsheet program, save it again and send that.',
    });
  const builder = new GridBuilder(mostRows);
  const { grid } = builder;
  const shared = {
    strings: readSharedStrings(zip, workbook.strings),
    formats: readFormats(zip, workbook.styles),
    from1904: workbook.from1904,
  };
  workbook.sheets.forEach(({ name, hidden, member }, nth) => {
    const page = nth + 1;
    const place = sheetPlace(name, page);
    if (hidden) grid.faults.push(hiddenSheet(page, place));
    else
      readXmlMember(
        zip,
        member,
        new SheetReader(shared, builder, row => ({ page, place: `${place}, row ${row}`, stretch: page })),
      );
  });
  grid.pages = Math.max(workbook.sheets.length, 1);
  return grid;
}
