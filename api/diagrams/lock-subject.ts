import { eq, sql } from 'drizzle-orm';
import { diagram, maker, model } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';

/** Takes the lock that everything which settles a maker's parts takes first. */
async function lockMaker(tx: Tx, makerId: string): Promise<void> {
  await tx.execute(sql`select pg_advisory_xact_lock(hashtextextended(${`maker ${makerId}`}, 0))`);
}

/**
 * Whose diagram it is, with its maker's lock held, as every change to what a maker's parts are takes it first; undefined
 * where this workshop has none of that id.
 */
export async function lockSubject(tx: Tx, id: string) {
  const [subject] = await tx
    .select({ maker: maker.id, model: { id: model.id, name: model.name } })
    .from(diagram)
    .innerJoin(model, eq(model.id, diagram.model))
    .innerJoin(maker, eq(maker.id, model.maker))
    .where(eq(diagram.id, id));
  if (subject) await lockMaker(tx, subject.maker);
  return subject;
}
