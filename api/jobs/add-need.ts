import { eq, sql } from 'drizzle-orm';
import type { NeedAnswer, NewNeed } from '../answers/index.ts';
import { need, part, row } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { qtyByModel } from '../models/model-lines.ts';
import { notFound, refuse } from '../refusal.ts';
import { changeNeed } from './change-need.ts';
import { itemNamed } from './item-named.ts';
import { needById } from './job-page.ts';
import { jobById } from './list-jobs.ts';

/** Adds a need to a job: of a part, with the line it was picked from where there is one, or of an item by its size. */
export async function addNeed(tx: Tx, job: string, given: NewNeed): Promise<NeedAnswer> {
  const { closedAt, number, model } = await jobById(tx, job);
  if (closedAt !== null)
    throw refuse('in-use', {
      place: `job ${number}`,
      message: `Job ${number} is closed, so nothing can be added to it.`,
      remedy: 'Open the job again first.',
    });
  const line = given.row === undefined ? null : await lineOf(tx, given.row);
  const partId = given.part ?? line?.part ?? null;
  if (line && given.part !== undefined && line.part !== given.part)
    throw refuse('bad-request', {
      place: 'row',
      message: 'This line does not name that part.',
      remedy: 'Leave "part" out: the line says which part it is.',
    });
  if ((partId === null) === (given.item === undefined))
    throw refuse('bad-request', {
      place: 'part or item',
      message: 'A need is of a part, or of an item by its size: one of the two.',
      remedy: 'Give "part" (or "row"), or "item", and not both.',
    });
  if (line && model) await checkModel(tx, line, model.id);
  if (partId !== null) await checkPart(tx, partId);
  const [added] = await tx
    .insert(need)
    .values({
      workshop: thisWorkshop,
      job,
      part: partId,
      diagram: line?.diagram ?? null,
      rowKey: line?.key ?? null,
      item: given.item === undefined ? null : itemNamed(given.item),
      qty: given.qty,
      note: given.note ?? '',
    })
    .returning({ id: need.id });
  if (!given.takenAs) return needById(tx, added!.id);
  return changeNeed(tx, added!.id, { takenAs: given.takenAs });
}

async function lineOf(tx: Tx, id: string) {
  const [line] = await tx
    .select({ id: row.id, ref: row.ref, diagram: row.diagram, key: row.key, part: row.part })
    .from(row)
    .where(eq(row.id, id));
  if (!line) throw notFound('row', id);
  return line;
}

/** Refuses a line that its list says the job's model has none of. */
async function checkModel(tx: Tx, line: { id: string; ref: string }, model: string): Promise<void> {
  const [counted] = await tx.execute<{ qty: number | null }>(
    sql`select (${qtyByModel} ->> ${model})::real as qty from row where row.id = ${line.id}`,
  );
  if (counted?.qty === 0)
    throw refuse('bad-request', {
      place: line.ref === '' ? 'row' : `reference ${line.ref}`,
      message: "The list has a column for this job's model, and it gives none of this line.",
      remedy: 'Pick the line that the column of this model counts, or add the part by itself.',
    });
}

/** Refuses a part that this workshop does not have, and keeps one it has from being dropped meanwhile. */
async function checkPart(tx: Tx, id: string): Promise<void> {
  const known = await tx.select({ id: part.id }).from(part).where(eq(part.id, id)).for('key share');
  if (known.length === 0) throw notFound('part', id);
}
