import { sql } from 'drizzle-orm';
import type { ModelSummary } from '../answers/index.ts';
import { model } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { modelSummaries } from '../models/model-refs.ts';

const most = 20;

/** Models whose maker and name hold every word, in any order, spaces and hyphens aside: `tern40` too. */
export async function findModels(tx: Tx, words: string[]): Promise<ModelSummary[]> {
  if (words.length === 0) return [];
  const plain = (name: string) => sql`translate(lower(${sql.raw(name)}), ' -./_,', '')`;
  const held = words.map(
    word => sql`(position(${word} in ${plain('model.name')}) > 0 or position(${word} in makers.key) > 0)`,
  );
  const rows = await tx.execute<{ id: string }>(sql`
    with makers as (select id, name, ${plain('maker.name')} as key from maker)
    select model.id from model join makers on makers.id = model.maker
    where ${sql.join(held, sql` and `)}
    order by makers.name, model.name
    limit ${most}`);
  const ids = rows.map(row => row.id);
  if (ids.length === 0) return [];
  const found = await modelSummaries(tx, sql`${model.id} in ${ids}`);
  return found.sort((a, b) => ids.indexOf(a.id) - ids.indexOf(b.id));
}
