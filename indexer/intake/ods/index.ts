import type { Grid } from '../grid.ts';
import { GridBuilder } from '../grid-builder.ts';
import { markupParser, readXmlMember } from '../markup.ts';
import { Unreadable } from '../unreadable.ts';
import type { Zip } from '../zip.ts';
import { SheetsReader } from './sheets.ts';

/**
 * An OpenDocument spreadsheet as a grid: `page` is the sheet's number, `sheet Parts, row 12` the place.
 * @throws {Unreadable} `unreadable` where it is protected by a password, `too-large` beyond the limits
 */
export function readOds(zip: Zip, mostRows: number): Grid {
  if (isProtected(zip))
    throw new Unreadable('unreadable', {
      place: 'the document',
      message: 'This spreadsheet is protected by a password.',
      remedy: 'Open it, save it without the password, and send that.',
    });
  const builder = new GridBuilder(mostRows);
  const reader = new SheetsReader(builder);
  readXmlMember(zip, 'content.xml', reader);
  return paged(builder, reader);
}

/** The same written as one XML file. */
export function readFlatOds(text: string, mostRows: number): Grid {
  const builder = new GridBuilder(mostRows);
  const reader = new SheetsReader(builder);
  const parser = markupParser(reader, { xml: true });
  parser.end(text);
  return paged(builder, reader);
}

function paged({ grid }: GridBuilder, { sheets }: SheetsReader): Grid {
  grid.pages = Math.max(sheets, 1);
  return grid;
}

/** Whether the manifest says how a member is enciphered (OpenDocument 1.3 part 2, 4.8). */
function isProtected(zip: Zip): boolean {
  let found = false;
  readXmlMember(zip, 'META-INF/manifest.xml', {
    open(name) {
      if (name === 'encryption-data') found = true;
    },
    close() {},
    text() {},
  });
  return found;
}
