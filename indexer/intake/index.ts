import { read } from '../read.ts';
import { type OpenedDocument, openRows, readRows } from './document.ts';
import type { DocumentRows } from './rows.ts';

export type { OpenedDocument } from './document.ts';
export type * from './rows.ts';
export { Unreadable, type UnreadableCode } from './unreadable.ts';

/**
 * Reads a document's parts list: CSV or pasted text so far. Every line is taken, skipped or faulted, in printed order.
 * The kind is told by content; `name` only names the document in the answer, and a media type is not believed.
 * @throws {Unreadable} when nothing of it can be given, with place and remedy
 */
export function readDocument(bytes: Uint8Array, name: string, _mediaType?: string): DocumentRows {
  return readRows(bytes, name, read);
}

/** The same with its rows read one by one as they are asked for, and refused beyond `mostRows` lines. */
export function openDocument(bytes: Uint8Array, name: string, mostRows: number): OpenedDocument {
  return openRows(bytes, name, read, mostRows);
}
