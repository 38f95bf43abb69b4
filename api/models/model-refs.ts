import { and, asc, eq, inArray, type SQL, sql } from 'drizzle-orm';
import type { ModelRef, ModelSummary } from '../answers/index.ts';
import { duty, maker, model } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { dutyAnswer } from '../duty/line-duty.ts';

/** Models by their ids, with their makers. */
export async function modelRefs(tx: Tx, ids: string[]): Promise<Map<string, ModelRef>> {
  if (ids.length === 0) return new Map();
  const rows = await tx
    .select({ id: model.id, name: model.name, maker: { id: maker.id, name: maker.name } })
    .from(model)
    .innerJoin(maker, eq(maker.id, model.maker))
    .where(inArray(model.id, ids));
  return new Map(rows.map(row => [row.id, row]));
}

/**
 * Models with what a list of them shows, by maker and name. `which` narrows them. For one that a column of a list made
 * the answer for that list's own name counts, until it has its own.
 */
export async function modelSummaries(tx: Tx, which?: SQL): Promise<ModelSummary[]> {
  const rows = await tx
    .select({
      id: model.id,
      name: model.name,
      maker: { id: maker.id, name: maker.name },
      diagrams: sql<number>`(select count(*)::int from (
                               select id from diagram where diagram.model = ${model.id} and state <> 'removed'
                               union
                               select id from model_column as own join diagram on diagram.id = own.diagram
                               where own.model = ${model.id} and state <> 'removed') as lists)`,
      lines: sql<number>`(select count(*)::int from row join diagram on diagram.id = row.diagram
                          where diagram.model = ${model.id} and row.outcome = 'taken')
                       + (select count(*)::int from row join model_column as own on own.diagram = row.diagram
                          where own.model = ${model.id} and row.outcome = 'taken' and ${countsFor})`,
      said: { duty: duty.duty, standing: duty.standing, word: duty.word },
      ofFamily: sql<typeof duty.$inferSelect | null>`(
        select to_jsonb(said) from model_column as own
        join diagram on diagram.id = own.diagram
        join duty as said on said.model = diagram.model
        where own.model = ${model.id} order by said.duty = 'ordinary' limit 1)`,
    })
    .from(model)
    .innerJoin(maker, eq(maker.id, model.maker))
    .leftJoin(duty, eq(duty.model, model.id))
    .where(and(which))
    .orderBy(asc(sql`lower(${maker.name})`), asc(sql`lower(${model.name})`));
  return rows.map(({ said, ofFamily, ...row }) => ({ ...row, duty: dutyAnswer(said ?? ofFamily, 'model') }));
}

/** A row that the model of the column `own` has. */
const countsFor = sql`(row.variants = '[]' or exists (
  select from jsonb_array_elements(row.variants) as each
  where each.value ->> 'model' = own.name and (each.value ->> 'qty')::real > 0))`;
