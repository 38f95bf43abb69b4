import { read } from '../read.ts';
import { type ReadOptions, readRows } from './document.ts';
import type { DocumentRows } from './rows.ts';

export type { ReadOptions } from './document.ts';
export type * from './rows.ts';
export { Unreadable, type UnreadableCode } from './unreadable.ts';

/**
 * Reads a document's parts list: CSV or pasted text so far. Every line is taken, skipped or faulted, in printed order.
 * The kind is told by content; `name` only names the document in the answer, and a media type is not believed.
 * @throws {Unreadable} when nothing of it can be given, with place and remedy
 */
export function readDocument(
  bytes: Uint8Array,
  name: string,
  _mediaType?: string,
  options: ReadOptions = {},
): DocumentRows {
  return readRows(bytes, name, read, options);
}
