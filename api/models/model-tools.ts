import { sql } from 'drizzle-orm';
import { type PartOfMachine, type ToolsNeeded, toolsNeeded } from '../../indexer/index.ts';
import type { Tx } from '../db/store.ts';
import { notFound } from '../refusal.ts';
import { ofModel } from './model-lines.ts';
import { modelRefs } from './model-refs.ts';

/** The tools that the parts of a model take, by what its lists and this bench know of them. */
export async function modelTools(tx: Tx, id: string): Promise<ToolsNeeded> {
  if (!(await modelRefs(tx, [id])).has(id)) throw notFound('model', id);
  const parts = await tx.execute<PartOfMachine & Record<string, unknown>>(sql`
    select distinct on (row.position, row.id)
           coalesce(nullif(row.ref, ''), nullif(row.part_number, ''), row.description) as ref,
           said.category, said.dims, said.attrs
    from row
    join diagram on diagram.id = row.diagram
    ${ofModel}
    join evidence as said on said.diagram = row.diagram and said.row_key = row.key
    where row.outcome = 'taken' and of_model.model = ${id} and diagram.state <> 'removed'
      and not exists (select from row_fact where row_fact.diagram = row.diagram and row_fact.row_key = row.key
                      and row_fact.kind = 'reference-only')
    order by row.position, row.id`);
  return toolsNeeded(parts);
}
