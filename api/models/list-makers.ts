import { asc, sql } from 'drizzle-orm';
import type { Makers } from '../answers/index.ts';
import { maker } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';

/** Every maker by name, with how many models and parts it has here. */
export function listMakers(tx: Tx): Promise<Makers['makers']> {
  return tx
    .select({
      id: maker.id,
      name: maker.name,
      models: sql<number>`(select count(*)::int from model where model.maker = maker.id)`,
      parts: sql<number>`(select count(*)::int from part where part.maker = maker.id)`,
    })
    .from(maker)
    .orderBy(asc(sql`lower(${maker.name})`));
}
