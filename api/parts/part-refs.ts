import { sql } from 'drizzle-orm';
import type { PartRef } from '../answers/index.ts';
import { anyOf, planned } from '../db/planned.ts';
import type { Tx } from '../db/store.ts';
import { ofModel } from '../models/model-lines.ts';

/** Parts by their ids, each with its maker and the models whose lists name it. */
export async function partRefs(tx: Tx, ids: string[]): Promise<Map<string, PartRef>> {
  if (ids.length === 0) return new Map();
  const rows = await planned<PartRef & Record<string, unknown>>(
    tx,
    sql`
    with used as (
      select row.part, of_model.model from row join diagram on diagram.id = row.diagram ${ofModel}
      where row.part = ${anyOf(ids)} and not of_model.family
      group by row.part, of_model.model
    ),
    named as (
      select used.part, jsonb_agg(jsonb_build_object('id', model.id, 'name', model.name) order by model.name) as models
      from used join model on model.id = used.model
      group by used.part
    )
    select part.id, jsonb_build_object('id', maker.id, 'name', maker.name) as maker, part.number, part.name,
           part.category, part.size, part.item, part.review, coalesce(named.models, '[]') as models
    from part
    join maker on maker.id = part.maker
    left join named on named.part = part.id
    where part.id = ${anyOf(ids)}`,
  );
  return new Map(rows.map(row => [row.id, { ...row }]));
}

/** The same, in the order of the ids; an id that is not there is left out. */
export async function partRefsInOrder(tx: Tx, ids: string[]): Promise<PartRef[]> {
  const refs = await partRefs(tx, ids);
  return ids.map(id => refs.get(id)).filter(ref => ref !== undefined);
}
