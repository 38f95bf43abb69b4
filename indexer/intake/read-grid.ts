import { readCsv } from './csv.ts';
import { decode, decodeMarkup } from './decode.ts';
import { filled, type Grid } from './grid.ts';
import { readHtml } from './html/index.ts';
import { kindOf, unknownKind } from './kind.ts';
import { readFlatOds, readOds } from './ods/index.ts';
import { readPaste } from './paste.ts';
import { findSeparator } from './separator.ts';
import { noRows } from './unreadable.ts';
import { readXlsx } from './xlsx/index.ts';
import { Zip } from './zip.ts';

/** The grid of a document of any kind but PDF, whose pages come one by one; a further kind is a further branch here. */
export function readGrid(bytes: Uint8Array, mostRows: number): Grid {
  if (bytes.length === 0) throw noRows('The document is empty.');
  const kind = kindOf(bytes);
  if (!kind) return readText(decode(bytes).text, mostRows);
  if (kind.opened === 'as a zip') return readZipped(new Zip(bytes), mostRows);
  if (kind.opened === 'as markup') return readMarkup(decodeMarkup(bytes), mostRows);
  throw unknownKind(kind.name);
}

/** Text is separated values or columns that blanks part. */
function readText(text: string, mostRows: number): Grid {
  if (!text.trim()) throw noRows('The document holds nothing but blank lines.');
  const separator = findSeparator(text);
  return separator === null ? readPaste(text, mostRows) : readCsv(text, separator, mostRows);
}

/** Zipped documents are told apart by the members that only one kind has. */
function readZipped(zip: Zip, mostRows: number): Grid {
  if (zip.has('xl/workbook.bin')) throw unknownKind('a binary spreadsheet (.xlsb)');
  if (zip.has('word/document.xml')) throw unknownKind('a word-processor document');
  if (zip.has('ppt/presentation.xml')) throw unknownKind('a presentation');
  if (zip.has('[Content_Types].xml') || zip.has('xl/workbook.xml')) return readXlsx(zip, mostRows);
  if (zip.has('content.xml')) return readOds(zip, mostRows);
  throw unknownKind('a zip archive that is no spreadsheet');
}

/** A page is its tables; without any, what a person would copy from it. */
function readMarkup(text: string, mostRows: number): Grid {
  if (/<office:document[\s>]/.test(text.slice(0, 4096))) return readFlatOds(text, mostRows);
  const page = readHtml(text, mostRows);
  if (page.grid.lines.some(line => filled(line).length > 1)) return page.grid;
  const words = page.text();
  if (!words.trim()) throw noRows('The page shows no text.');
  return readText(words, mostRows);
}
