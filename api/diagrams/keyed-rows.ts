import { createHash } from 'node:crypto';
import type { Row } from '../../indexer/intake/rows.ts';

/** A row with the key that stays the same when its document is read again. */
export interface KeyedRow extends Row {
  key: string;
  position: number;
}

/** Gives each row its key: page, reference, number and words, and which of its like it is. */
export function keyRows(rows: Row[]): KeyedRow[] {
  const likes = new Map<string, number>();
  return rows.map((row, position) => {
    const like = JSON.stringify([row.page, row.ref, row.partNumber, row.description]);
    const nth = likes.get(like) ?? 0;
    likes.set(like, nth + 1);
    const key = createHash('sha256').update(`${like}${nth}`).digest('base64url').slice(0, 24);
    return { ...row, key, position };
  });
}
