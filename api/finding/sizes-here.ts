import { sql } from 'drizzle-orm';
import type { CategoryName } from '../../indexer/index.ts';
import type { KnownSize } from '../../indexer/measure.ts';
import type { Tx } from '../db/store.ts';

/** How many of the workshop's sizes measuring looks at: those it met most. */
const most = 20_000;

/** The sizes of these categories that parts of this workshop have, with how many parts have each, the most met first. */
export async function sizesHere(tx: Tx, categories: readonly CategoryName[]): Promise<KnownSize[]> {
  const rows = await tx.execute<{ size: string; count: number }>(sql`
    select size, count(*)::int as count from part
    where size is not null and category in ${categories}
    group by size order by count(*) desc, size limit ${most}`);
  return rows.map(({ size, count }) => ({ size, count }));
}
