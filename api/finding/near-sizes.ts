import { sql } from 'drizzle-orm';
import { compareSizes, nearness, parseSize } from '../../indexer/index.ts';
import type { NearSize } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { sizeHits } from './size-hits.ts';

/** The sizes of the same category that this workshop has and that come nearest, the nearest first; never the size itself. */
export async function nearestSizes(tx: Tx, size: string, most: number): Promise<string[]> {
  const wanted = parseSize(size);
  if (!wanted) return [];
  const rows = await tx.execute<{ size: string }>(sql`
    select distinct size from part where category = ${wanted.category} and size is not null and size <> ${size}`);
  return rows
    .flatMap(row => {
      const other = parseSize(row.size);
      const distance = other && nearness(wanted, other);
      return distance === null ? [] : [{ size: row.size, distance }];
    })
    .sort((a, b) => a.distance - b.distance || (a.size < b.size ? -1 : 1))
    .slice(0, most)
    .map(row => row.size);
}

/** The same as they are answered, each with what differs. */
export async function nearSizes(tx: Tx, size: string, most: number): Promise<NearSize[]> {
  const wanted = parseSize(size);
  if (!wanted) return [];
  const hits = await sizeHits(tx, await nearestSizes(tx, size, most));
  return hits.map(hit => ({ ...hit, differences: compareSizes(wanted, parseSize(hit.size)!) }));
}
