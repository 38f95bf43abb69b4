import type { DiagramRow } from '../../api/answers/index.ts';
import type { Attrs, Dims, ReadAs } from '../../indexer/index.ts';

/** What a row is taken to be: a person's word where there is one, else what was read. */
export interface UnderstoodRow {
  category: ReadAs;
  dims: Dims;
  implied: Dims;
  attrs: Attrs;
  size: string | null;
  qty: number | null;
}

export function understoodOf({ correction, reading, qty }: DiagramRow): UnderstoodRow {
  if (correction) return { ...correction, implied: {}, qty: correction.qty ?? qty };
  if (reading) return { ...reading, qty: qty ?? reading.qty };
  return { category: 'plain', dims: {}, implied: {}, attrs: {}, size: null, qty };
}
