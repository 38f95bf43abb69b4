import { sql } from 'drizzle-orm';
import { storableJson } from '../db/copy-text.ts';
import type { Tx } from '../db/store.ts';
import { grouped } from './grouped.ts';
import type { KeyedRow } from './keyed-rows.ts';

/** A row that an earlier reading left. */
export interface FormerRow {
  key: string;
  id: string;
  page: number;
  place: string;
}

/** The rows that an earlier reading left, in printed order. */
export async function formerRows(tx: Tx, diagram: string): Promise<FormerRow[]> {
  return tx.execute<FormerRow & Record<string, unknown>>(
    sql`select key, id, page, place from row where diagram = ${diagram} order by position`,
  );
}

/**
 * Rows that stand where they stood and are cut otherwise now, since a column means something else: their old keys with
 * the new ones. Where a place gives another number of rows than before, nobody can say which is which.
 */
export function movedKeys(former: readonly FormerRow[], rows: readonly KeyedRow[]): Map<string, string> {
  const keys = new Set(rows.map(row => row.key));
  const known = new Set(former.map(row => row.key));
  const before = grouped(former, placeOf);
  const moved = new Map<string, string>();
  for (const [place, here] of grouped(rows, placeOf)) {
    const there = before.get(place);
    if (there?.length !== here.length) continue;
    there.forEach(({ key }, nth) => {
      const now = here[nth]!.key;
      if (!keys.has(key) && !known.has(now)) moved.set(key, now);
    });
  }
  return moved;
}

const placeOf = ({ page, place }: { page: number; place: string }) => `${page} ${place}`;

/** Lets what a person said of such a row, and the needs that were picked from it, go with it. */
export async function moveKeys(tx: Tx, diagram: string, moved: Map<string, string>): Promise<void> {
  if (moved.size === 0) return;
  const pairs = storableJson([...moved].map(([old, now]) => ({ old, now })));
  await tx.execute(sql`
    update correction set row_key = moved.now
    from jsonb_to_recordset(${pairs}::jsonb) as moved(old text, now text)
    where correction.diagram = ${diagram} and correction.row_key = moved.old
      and not exists (select from correction as other where other.diagram = ${diagram} and other.row_key = moved.now)`);
  await tx.execute(sql`
    update need set row_key = moved.now
    from jsonb_to_recordset(${pairs}::jsonb) as moved(old text, now text)
    where need.diagram = ${diagram} and need.row_key = moved.old`);
}
