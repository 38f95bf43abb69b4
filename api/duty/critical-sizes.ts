import { type SQL, sql } from 'drizzle-orm';
import { duties, isCritical } from '../../indexer/index.ts';
import { anyOf, planned, textArray } from '../db/planned.ts';
import type { Tx } from '../db/store.ts';
import { lineDuties } from './line-duty.ts';

const criticalDuties = duties.filter(isCritical);
const isCriticalDuty = sql`duty.duty in ${criticalDuties}`;

/**
 * Those of the sizes that a critical line takes. A line is critical by what is said of a model of its list, or by what a
 * person said of a part; so lines are looked at only where a person did, and else the first critical model settles it.
 */
export async function criticalSizes(tx: Tx, sizes: string[]): Promise<Set<string>> {
  if (sizes.length === 0) return new Set();
  const asked = await ofCriticalModels(tx, sizes);
  const [first] = asked;
  const suspected = asked.filter(({ model }) => model !== null).map(({ size }) => size);
  const critical = new Set(first!.eased ? await amongLines(tx, suspected, onModelLists) : suspected);
  if (first!.graver) {
    const others = sizes.filter(size => !critical.has(size));
    for (const size of await amongLines(tx, others, onPartLists)) critical.add(size);
  }
  return critical;
}

/** How many models of a size are looked at before it is looked for what is critical at all. */
const lookedAtFirst = 64;

/** Of a list with columns for several models, what is said of its own name counts for each, and of each for all. */
const modelIsCritical = (model: SQL): SQL => sql`(
  exists (select from duty where duty.model = ${model} and ${isCriticalDuty})
  or exists (
    select from model_column as own
    join diagram on diagram.id = own.diagram
    join duty on duty.model = diagram.model or duty.model in (
      select other.model from model_column as other where other.diagram = own.diagram)
    where own.model = ${model} and ${isCriticalDuty}))`;

/**
 * For each size a model with a critical list that takes it, if there is one. Where many models are critical one of the
 * first that take the size nearly always is; where few are, it is soon seen whether one of them takes it. `eased` and
 * `graver`: whether a person said of some part that it is less, or that it is critical.
 */
const ofCriticalModels = (tx: Tx, sizes: string[]) =>
  planned<{ size: string; model: string | null; eased: boolean; graver: boolean }>(
    tx,
    sql`
    with critical as (select duty.model from duty where duty.model is not null and ${isCriticalDuty}),
    of_lists as (
      select model from critical
      union
      select other.model
      from critical
      join diagram on diagram.model = critical.model
      join model_column as other on other.diagram = diagram.id
      union
      select other.model
      from critical
      join model_column as own on own.model = critical.model
      join model_column as other on other.diagram = own.diagram
    )
    select asked.size,
      coalesce(
        (select early.model
         from (select size_model.model from size_model where size_model.size = asked.size limit ${sql.raw(String(lookedAtFirst))}) as early
         where ${modelIsCritical(sql`early.model`)} limit 1),
        (select size_model.model from of_lists
         join size_model on size_model.size = asked.size and size_model.model = of_lists.model limit 1)
      ) as model,
      exists (select from duty where part is not null and standing = 'confirmed' and not (${isCriticalDuty})) as eased,
      exists (select from duty where part is not null and standing = 'confirmed' and ${isCriticalDuty}) as graver
    from unnest(${textArray(sizes)}::text[]) as asked(size)`,
  );

/** A line of a list that is critical by its models, or that has one which a person's word on a part makes so. */
const onModelLists = sql`exists (
  select from diagram
  where diagram.id = row.diagram
    and (exists (select from duty where duty.model = diagram.model and ${isCriticalDuty})
         or exists (select from model_column join duty on duty.model = model_column.model
                    where model_column.diagram = diagram.id and ${isCriticalDuty})))`;
const onPartLists = sql`row.diagram in (
  select said.diagram from duty join row as said on said.part = duty.part
  where duty.standing = 'confirmed' and ${isCriticalDuty})`;

/** How many lines of a size are looked at: one of the first nearly always settles it. */
const linesAtFirst = 20;

/** Those of the sizes that a critical line takes, of those lines that the condition picks. */
async function amongLines(tx: Tx, sizes: string[], picks: SQL): Promise<string[]> {
  const first = await ofLines(tx, sizes, picks, sql`limit ${linesAtFirst}`);
  const left = sizes.filter(size => first.get(size) === false);
  const rest = await ofLines(tx, left, picks, sql``);
  return sizes.filter(size => rest.get(size) ?? first.get(size));
}

/** Of each size that has such lines, whether one of them is critical. */
async function ofLines(tx: Tx, sizes: string[], picks: SQL, limit: SQL): Promise<Map<string, boolean>> {
  if (sizes.length === 0) return new Map();
  const lines = await tx.execute<{ id: string; size: string }>(sql`
    select line.id, asked.size
    from unnest(${textArray(sizes)}::text[]) as asked(size),
    lateral (select row.id from part join row on row.part = part.id
             where part.size = asked.size and ${picks} ${limit}) as line`);
  const told = await lineDuties(tx, sql`row.id = ${anyOf(lines.map(line => line.id))}`);
  const critical = new Map(lines.map(({ size }) => [size, false]));
  for (const { id, size } of lines) if (told.get(id)?.critical) critical.set(size, true);
  return critical;
}
