import { sql } from 'drizzle-orm';
import type { Tx } from '../db/store.ts';
import { onNothing } from './spoken-of.ts';

/** Drops the parts of the temporary table `touched` that no row, need, evidence or person speaks of any more. */
export async function dropUnreferredParts(tx: Tx): Promise<void> {
  await tx.execute(sql`
    delete from part
    using touched
    where part.id = touched.id
      and ${onNothing}
      and not exists (select from duty where duty.part = part.id and duty.standing = 'confirmed')`);
}
