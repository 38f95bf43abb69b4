import { and, eq, isNull, sql } from 'drizzle-orm';
import type { DiagramRow, NewCorrection } from '../answers/index.ts';
import { storableJson } from '../db/copy-text.ts';
import { correction, diagram, maker, model, part, reading, row } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { dropUnreferredParts } from '../parts/drop-unreferred.ts';
import { partIdentity } from '../parts/part-identity.ts';
import { settleParts } from '../parts/settle-parts.ts';
import { settleSizes } from '../parts/settle-sizes.ts';
import { notFound, refuse } from '../refusal.ts';
import { type Corrected, type Effective, ofCorrection, ofReading } from './effective-reading.ts';
import { rowById } from './list-rows.ts';
import { lockMaker } from './store-reading.ts';

/** Sets a person's word beside the reading of a row, in place of one that stood; what it says wins from now on. */
export async function correctRow(
  tx: Tx,
  diagramId: string,
  rowId: string,
  said: NewCorrection,
): Promise<DiagramRow> {
  const subject = await lockRow(tx, diagramId, rowId);
  await takeBack(tx, diagramId, subject.key);
  await tx.insert(correction).values({
    workshop: thisWorkshop,
    diagram: diagramId,
    rowKey: subject.key,
    category: said.category,
    dims: said.dims,
    attrs: said.attrs,
    qty: said.qty ?? null,
  });
  await settleRow(tx, subject, said);
  return rowById(tx, diagramId, rowId);
}

/** Takes a person's word back; the reading counts again. Without one that stands, nothing changes. */
export async function undoCorrection(tx: Tx, diagramId: string, rowId: string): Promise<DiagramRow> {
  const subject = await lockRow(tx, diagramId, rowId);
  await takeBack(tx, diagramId, subject.key);
  await settleRow(tx, subject, null);
  return rowById(tx, diagramId, rowId);
}

/** The row with its maker's lock held, as every change to what a maker's parts are takes it. */
async function lockRow(tx: Tx, diagramId: string, rowId: string) {
  const [found] = await tx
    .select({ maker: maker.id })
    .from(diagram)
    .innerJoin(model, eq(model.id, diagram.model))
    .innerJoin(maker, eq(maker.id, model.maker))
    .where(eq(diagram.id, diagramId));
  if (!found) throw notFound('diagram', diagramId);
  await lockMaker(tx, found.maker);
  const [subject] = await tx
    .select({ row, reading, model: diagram.model })
    .from(row)
    .innerJoin(diagram, eq(diagram.id, row.diagram))
    .leftJoin(reading, eq(reading.row, row.id))
    .where(and(eq(row.id, rowId), eq(row.diagram, diagramId)));
  if (!subject) throw notFound('row', rowId);
  if (subject.row.outcome !== 'taken')
    throw refuse('not-a-line', {
      place: subject.row.place,
      message: `This row was ${subject.row.outcome}, so there is no reading of it to correct.`,
      remedy: 'Correct a row that was taken, or send the list again with this row mended.',
    });
  return { ...subject, key: subject.row.key, maker: found.maker };
}

type Subject = Awaited<ReturnType<typeof lockRow>>;

async function takeBack(tx: Tx, diagramId: string, rowKey: string): Promise<void> {
  await tx
    .update(correction)
    .set({ undoneAt: new Date() })
    .where(
      and(eq(correction.diagram, diagramId), eq(correction.rowKey, rowKey), isNull(correction.undoneAt)),
    );
}

/** Puts the row's evidence and part in line with what counts now, and settles the parts it named before and names now. */
async function settleRow(tx: Tx, subject: Subject, said: Corrected | null): Promise<void> {
  const { row: line, reading: read } = subject;
  const says = said ? ofCorrection(said) : read ? ofReading(read) : null;
  const isPart = says !== null && says.category !== 'not-a-part';
  const partId = isPart ? await partOfRow(tx, subject, says) : null;
  await tx.execute(sql`create temporary table touched (id uuid, size text) on commit drop`);
  await tx.execute(sql`
    insert into touched
    select id, size from part where id in (${line.part}::uuid, ${partId}::uuid)`);
  await tx.update(row).set({ part: partId }).where(eq(row.id, line.id));
  await tx.execute(sql`delete from evidence where diagram = ${line.diagram} and row_key = ${line.key}`);
  if (partId && says)
    await tx.execute(sql`
      insert into evidence (workshop, part, kind, category, size, item, dims, attrs, certainty, diagram, row_key, detail)
      values (this_workshop(), ${partId}::uuid, ${says.kind}, ${says.category}, ${says.size}, ${says.item},
              ${storableJson(says.dims)}::jsonb, ${storableJson(says.attrs)}::jsonb, ${says.certainty},
              ${line.diagram}::uuid, ${line.key}, ${read?.text ?? line.description})`);
  await settleParts(tx);
  await dropUnreferredParts(tx);
  await settleSizes(tx, subject.model);
}

/** The part that a row names, made where an earlier reading saw none in it. */
async function partOfRow(tx: Tx, { row: line, model: modelId, maker }: Subject, says: Effective) {
  if (line.part) return line.part;
  const { number, numberKey } = partIdentity(modelId, line);
  await tx
    .insert(part)
    .values({
      workshop: thisWorkshop,
      maker,
      number,
      numberKey,
      name: line.description,
      category: says.category,
      dims: {},
      attrs: {},
    })
    .onConflictDoNothing();
  const [found] = await tx
    .select({ id: part.id })
    .from(part)
    .where(and(eq(part.maker, maker), eq(part.numberKey, numberKey)));
  return found!.id;
}
