import { type SQL, sql } from 'drizzle-orm';
import type { ModelSummary } from '../answers/index.ts';
import { planned } from '../db/planned.ts';
import { model } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { modelSummaries } from '../models/model-refs.ts';

const most = 20;

/**
 * Models whose maker and name hold every word, in any order, spaces and hyphens aside: `tern40` too. Those that hold
 * the words as typed; only where there is none, those that hold them as they are known here.
 */
export async function findModels(tx: Tx, typed: string[], known: string[]): Promise<ModelSummary[]> {
  if (typed.length === 0) return [];
  const asTyped = holdsAll(typed);
  const mended = known.length > 0 && known.join(' ') !== typed.join(' ') ? [holdsAll(known)] : [];
  const rows = await planned<{ id: string; exact: boolean }>(
    tx,
    sql`
    select model.id, ${asTyped} as exact
    from model join maker on maker.id = model.maker
    where ${sql.join([asTyped, ...mended], sql` or `)}
    order by exact desc, maker.name, model.name
    limit ${most}`,
  );
  const ids = rows.filter(row => row.exact || !rows[0]!.exact).map(row => row.id);
  if (ids.length === 0) return [];
  const found = await modelSummaries(tx, sql`${model.id} in ${ids}`);
  return found.sort((a, b) => ids.indexOf(a.id) - ids.indexOf(b.id));
}

const holdsAll = (words: string[]): SQL => {
  const each = words.map(
    word => sql`(position(${word} in model.find_key) > 0 or position(${word} in maker.find_key) > 0)`,
  );
  return sql`(${sql.join(each, sql` and `)})`;
};
