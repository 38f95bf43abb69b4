import { readCsv } from './csv.ts';
import { decode } from './decode.ts';
import type { Grid } from './grid.ts';
import { mustBeText } from './kind.ts';
import { readPaste } from './paste.ts';
import { findSeparator } from './separator.ts';
import { noRows } from './unreadable.ts';

/** The grid of a document of any kind; a further kind is a further branch here. */
export function readGrid(bytes: Uint8Array, mostRows: number): Grid {
  if (bytes.length === 0) throw noRows('The document is empty.');
  mustBeText(bytes);
  return readText(decode(bytes).text, mostRows);
}

/** Text is separated values or columns that blanks part. */
function readText(text: string, mostRows: number): Grid {
  if (!text.trim()) throw noRows('The document holds nothing but blank lines.');
  const separator = findSeparator(text);
  return separator === null ? readPaste(text, mostRows) : readCsv(text, separator, mostRows);
}
