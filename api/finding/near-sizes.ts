import { sql } from 'drizzle-orm';
import { compareSizes, easilyConfused, nearness, parseSize } from '../../indexer/index.ts';
import type { NearSize } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { sizeHits } from './size-hits.ts';

/** A size near another; `confusable` where a person could take one for the other. */
export interface Near {
  size: string;
  confusable: boolean;
}

/**
 * The sizes of the same category that this workshop has and that come nearest, never the size itself: first those that
 * a person could take for it, then the rest, the nearest first.
 */
export async function nearestSizes(tx: Tx, size: string, most: number): Promise<Near[]> {
  const wanted = parseSize(size);
  if (!wanted) return [];
  const rows = await tx.execute<{ size: string }>(sql`
    select distinct size from part where category = ${wanted.category} and size is not null and size <> ${size}`);
  return rows
    .flatMap(row => {
      const other = parseSize(row.size);
      const distance = other && nearness(wanted, other);
      if (other === null || distance === null) return [];
      return [{ size: row.size, confusable: easilyConfused(wanted, other), distance }];
    })
    .sort(
      (a, b) =>
        Number(b.confusable) - Number(a.confusable) || a.distance - b.distance || (a.size < b.size ? -1 : 1),
    )
    .slice(0, most)
    .map(({ size, confusable }) => ({ size, confusable }));
}

/** The same as they are answered, each with what differs. */
export async function nearSizes(tx: Tx, size: string, most: number): Promise<NearSize[]> {
  const wanted = parseSize(size);
  if (!wanted) return [];
  const near = await nearestSizes(tx, size, most);
  const confusable = new Map(near.map(one => [one.size, one.confusable]));
  const hits = await sizeHits(
    tx,
    near.map(one => one.size),
  );
  return hits.map(hit => ({
    ...hit,
    confusable: confusable.get(hit.size) ?? false,
    differences: compareSizes(wanted, parseSize(hit.size)!),
  }));
}
