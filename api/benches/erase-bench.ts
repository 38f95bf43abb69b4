import { sql } from 'drizzle-orm';
import { tablesInOrder } from '../db/backup/tables.ts';
import { clientOf } from '../db/copy-rows.ts';
import { outbox } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';

/**
 * Takes this transaction's bench away, all of it: its work, its people's places, its tokens and its trail. What the
 * people have elsewhere stays. There is no way back but a backup. The search engine, where there is one, hears of it.
 */
export async function eraseBench(tx: Tx): Promise<void> {
  await tx.execute(sql`select forget_trail()`);
  const tables = (await tablesInOrder(clientOf(tx))).filter(
    ({ name, columns }) => columns.includes('workshop') && name !== 'audit',
  );
  // Each before those it refers to; under row-level security no row of another bench is there to delete.
  for (const { name } of tables.reverse()) await tx.execute(sql`delete from ${sql.identifier(name)}`);
  await tx.insert(outbox).values({ workshop: thisWorkshop, kind: 'workshop', subject: thisWorkshop });
}
