import { sql } from 'drizzle-orm';
import type { ModelSummary } from '../answers/index.ts';
import { model } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { modelSummaries } from '../models/model-refs.ts';
import { wordsOf } from '../search/entry.ts';

const most = 20;
/** How alike a misspelt name must be, of 1 (pg_trgm's word similarity). */
const alike = 0.45;

/** Models whose maker and name hold every word, in any order; where none does, those of the most similar names. */
export async function findModels(tx: Tx, query: string): Promise<ModelSummary[]> {
  const words = wordsOf(query);
  if (words.length === 0) return [];
  const rows = await tx.execute<{ id: string }>(sql`
    with named as (
      select model.id, lower(maker.name || ' ' || model.name) as name
      from model join maker on maker.id = model.maker
    ),
    judged as (
      select id, name, word_similarity(${words.join(' ')}, name) as likeness,
             ${sql.join(
               words.map(word => sql`strpos(regexp_replace(name, '[^[:alnum:]]', '', 'g'), ${word}) > 0`),
               sql` and `,
             )} as whole
      from named
    )
    select id from judged
    where whole or (likeness > ${alike} and not exists (select from judged where whole))
    order by whole desc, likeness desc, name
    limit ${most}`);
  const ids = rows.map(row => row.id);
  if (ids.length === 0) return [];
  const found = await modelSummaries(tx, sql`${model.id} in ${ids}`);
  return found.sort((a, b) => ids.indexOf(a.id) - ids.indexOf(b.id));
}
