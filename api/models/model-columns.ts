import { sql } from 'drizzle-orm';
import { storableJson } from '../db/copy-text.ts';
import type { Tx } from '../db/store.ts';

interface Subject {
  /** The diagram. */
  id: string;
  maker: string;
  model: { id: string; name: string };
}

/**
 * Makes a model of each column of quantities, where one list holds several, in place of those that an earlier reading
 * made. A model that nothing speaks of any more goes. Answers every model whose lines have changed by it.
 */
export async function storeModelColumns(
  tx: Tx,
  { id, maker, model }: Subject,
  columns: string[],
): Promise<string[]> {
  const former = await tx.execute<{ model: string }>(
    sql`delete from model_column where diagram = ${id} returning model`,
  );
  const named = storableJson(
    [...columnModels(model.name, columns)].map(([column, name]) => ({ column, name })),
  );
  await tx.execute(sql`
    insert into model (workshop, maker, name)
    select this_workshop(), ${maker}::uuid, name from jsonb_to_recordset(${named}::jsonb) as named(name text)
    on conflict do nothing`);
  await tx.execute(sql`
    insert into model_column (workshop, diagram, name, model)
    select this_workshop(), ${id}::uuid, named."column", model.id
    from jsonb_to_recordset(${named}::jsonb) as named("column" text, name text)
    join model on model.maker = ${maker}::uuid and lower(model.name) = lower(named.name)`);
  const before = former.map(row => row.model);
  const dropped = before.length > 0 ? await dropUnreferredModels(tx, before) : [];
  const concerned = new Set([...before, ...(await modelsOf(tx, id))]);
  return [...concerned].filter(each => !dropped.includes(each));
}

/** The models that a diagram is a list of: the one it was taken in for, and those it has columns for. */
export async function modelsOf(tx: Tx, diagram: string): Promise<string[]> {
  const rows = await tx.execute<{ model: string }>(sql`
    select model from diagram where id = ${diagram}
    union select model from model_column where diagram = ${diagram}`);
  return rows.map(row => row.model);
}

async function dropUnreferredModels(tx: Tx, models: string[]): Promise<string[]> {
  const dropped = await tx.execute<{ id: string }>(sql`
    delete from model
    where id in ${models}
      and not exists (select from diagram where diagram.model = model.id)
      and not exists (select from model_column where model_column.model = model.id)
      and not exists (select from job where job.model = model.id)
      and not exists (select from duty where duty.model = model.id and duty.standing = 'confirmed')
    returning id`);
  return dropped.map(row => row.id);
}

/**
 * What the models of a list's columns are called: `2500` of "Skarrow 1000/2500/4000" is "Skarrow 2500", and a column
 * that says the whole name keeps it.
 *
 * @param family the name that the list goes by as a whole
 */
export function columnModels(family: string, columns: readonly string[]): Map<string, string> {
  const pieces = family.split(/\s*(?:[/,&+]|(?<!\S)(?:and|und|et|e|y|en)(?!\S))\s*/iu);
  const [first = family, ...others] = pieces.map(piece => piece.trim());
  const words = first.split(/\s+/);
  const listed = new Set([words.at(-1)!, ...others].map(fold));
  // A name that lists the columns, or ends in one of them, gives what stands before the list.
  const stem = columns.some(column => listed.has(fold(column))) ? words.slice(0, -1).join(' ') : family;
  const begins = fold(words[0] ?? '');
  return new Map(
    columns.map(column => {
      const whole = begins !== '' && fold(column).startsWith(begins);
      return [column, (whole ? column : `${stem} ${column}`).trim().slice(0, 200)];
    }),
  );
}

const fold = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
