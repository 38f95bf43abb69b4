import { and, eq, inArray, isNull, or } from 'drizzle-orm';
import type { DiagramRow, NewCorrection } from '../answers/index.ts';
import { correction, diagram, reading, row } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { notFound, refuse } from '../refusal.ts';
import { likeRows } from './like-rows.ts';
import { rowById } from './list-rows.ts';
import { lockSubject } from './lock-subject.ts';
import { settleRows } from './settle-rows.ts';

/**
 * Sets a person's word beside the reading of a row, in place of one that stood; what it says wins from now on. Rows
 * of the document that are written like it and were read like it are put right as well, all of it one word to take back.
 */
export async function correctRow(
  tx: Tx,
  diagramId: string,
  rowId: string,
  said: NewCorrection,
): Promise<DiagramRow> {
  const subject = await lockRow(tx, diagramId, rowId);
  const freed = await takeBack(tx, diagramId, subject.row.key);
  const word = { workshop: thisWorkshop, diagram: diagramId };
  const { category, dims, attrs, qty = null } = said;
  const [own] = await tx
    .insert(correction)
    .values({ ...word, rowKey: subject.row.key, category, dims, attrs, qty })
    .returning({ id: correction.id });
  const taught = await likeRows(tx, subject, said);
  for (let at = 0; at < taught.length; at += batch)
    await tx.insert(correction).values(
      taught.slice(at, at + batch).map(({ row: { key }, said: like }) => ({
        ...word,
        rowKey: key,
        category: like.category,
        dims: like.dims,
        attrs: like.attrs,
        taughtBy: own!.id,
      })),
    );
  await settleRows(tx, diagramId, [subject.row.key, ...freed, ...taught.map(one => one.row.key)]);
  return rowById(tx, diagramId, rowId);
}

/** Rows that one statement writes. */
const batch = 1000;

/**
 * Takes a person's word back, with what it taught; the readings count again. Without one that stands, nothing changes.
 */
export async function undoCorrection(tx: Tx, diagramId: string, rowId: string): Promise<DiagramRow> {
  const subject = await lockRow(tx, diagramId, rowId);
  const freed = await takeBack(tx, diagramId, subject.row.key);
  await settleRows(tx, diagramId, freed);
  return rowById(tx, diagramId, rowId);
}

/** The row with its maker's lock held, as every change to what a maker's parts are takes it. */
async function lockRow(tx: Tx, diagramId: string, rowId: string) {
  if (!(await lockSubject(tx, diagramId))) throw notFound('diagram', diagramId);
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
  return subject;
}

/** Takes back the standing word on a row and what it taught; answers the keys of the rows it no longer holds for. */
async function takeBack(tx: Tx, diagramId: string, rowKey: string): Promise<string[]> {
  const standing = and(eq(correction.diagram, diagramId), isNull(correction.undoneAt));
  const own = await tx
    .select({ id: correction.id })
    .from(correction)
    .where(and(standing, eq(correction.rowKey, rowKey)));
  const ids = own.map(one => one.id);
  if (ids.length === 0) return [];
  const gone = await tx
    .update(correction)
    .set({ undoneAt: new Date() })
    .where(and(standing, or(inArray(correction.id, ids), inArray(correction.taughtBy, ids))))
    .returning({ rowKey: correction.rowKey });
  return gone.map(one => one.rowKey);
}
