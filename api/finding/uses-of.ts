import { sql } from 'drizzle-orm';
import type { Use } from '../answers/index.ts';
import { anyOf } from '../db/planned.ts';
import type { Tx } from '../db/store.ts';
import { listsOf } from '../models/model-lines.ts';
import { listLines } from '../parts/list-lines.ts';
import { partRefs } from '../parts/part-refs.ts';

/** How many models one answer tells of. */
const mostModels = 30;

/**
 * The lines that take a size and how we know it, model by model in the order of their names: of the models after the first
 * `from`, at most thirty. `used` counts all that there are.
 */
export async function usesOf(tx: Tx, size: string, from = 0) {
  const models = await tx.execute<{ id: string; models: number; makers: number }>(sql`
    select model.id, count(*) over ()::int as models,
           (select count(distinct model.maker)::int from size_model join model on model.id = size_model.model
            where size_model.size = ${size}) as makers
    from size_model
    join model on model.id = size_model.model
    join maker on maker.id = model.maker
    where size_model.size = ${size}
    order by maker.name, model.name, model.id
    offset ${from} limit ${mostModels}`);
  const [counted] = models;
  const used = counted ? { models: counted.models, makers: counted.makers } : { models: 0, makers: 0 };
  return {
    used,
    uses: await usesIn(
      tx,
      size,
      models.map(model => model.id),
    ),
  };
}

async function usesIn(tx: Tx, size: string, models: string[]): Promise<Use[]> {
  if (models.length === 0) return [];
  const rows = await tx.execute<{ id: string }>(sql`
    select row.id
    from row join part on part.id = row.part
    where part.size = ${size} and row.outcome = 'taken' and row.diagram in ${listsOf(...models)}`);
  if (rows.length === 0) return [];
  const taking = sql`row.id = ${anyOf(rows.map(row => row.id))}`;
  const wanted = new Set(models);
  const lines = (await listLines(tx, taking)).filter(line => wanted.has(line.model.id));
  const parts = await partRefs(tx, [...new Set(lines.flatMap(line => line.part ?? []))]);
  const told = await tx.execute<{ row: string; kind: string; detail: string; certainty: number }>(sql`
    select row.id as row, evidence.kind, evidence.detail, evidence.certainty
    from row
    join evidence on evidence.part = row.part and evidence.diagram = row.diagram and evidence.row_key = row.key
    where ${taking}`);
  const evidence = new Map(told.map(({ row, ...one }) => [row, one]));
  return lines.map(line => ({
    part: parts.get(line.part!)!,
    model: line.model,
    diagram: line.diagram.id,
    row: line.row,
    ref: line.ref,
    qty: line.qty,
    qtyText: line.qtyText,
    evidence: evidence.get(line.row) ?? null,
    duty: line.duty,
  }));
}
