import { teach } from '../teaching/index.ts';
import { type OpenedDocument, openRows, type ReadOptions, readRows } from './document.ts';
import type { DocumentRows } from './rows.ts';

export { type ColumnMeaning, columnMeanings, type GivenColumns } from '../reading/column-meanings.ts';
export type { OpenedDocument, ReadOptions } from './document.ts';
export type * from './rows.ts';
export { tieBalloons } from './tie-balloons.ts';
export { Unreadable, type UnreadableCode } from './unreadable.ts';

/**
 * Reads a document's parts list: CSV, XLSX, ODS, a web page's tables or pasted text; a PDF is opened, below. Every line is taken, skipped or
 * faulted, in printed order. The kind is told by content; `name` only names the document in the answer, and a media
 * type is not believed. `options.columns` says what columns hold where `tables` of an earlier answer had them wrong.
 * @throws {Unreadable} when nothing of it can be given, with place and remedy
 */
export function readDocument(
  bytes: Uint8Array,
  name: string,
  _mediaType?: string,
  options?: ReadOptions,
): DocumentRows {
  return readRows(bytes, name, teach, options);
}

/** The same for documents of every kind, PDF with text among them, its rows read one by one as they are asked for. */
export function openDocument(bytes: Uint8Array, name: string, options: ReadOptions): Promise<OpenedDocument> {
  return openRows(bytes, name, teach, options);
}
