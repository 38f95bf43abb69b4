import { randomUUID } from 'node:crypto';
import { and, eq, isNull, sql } from 'drizzle-orm';
import type { DocumentRows } from '../../indexer/intake/rows.ts';
import { correction, diagram, maker, model } from '../db/schema/index.ts';
import type { Claim, Store, Tx } from '../db/store.ts';
import { proposeDuties } from '../duty/propose-duties.ts';
import { dropUnreferredParts } from '../parts/drop-unreferred.ts';
import { settleParts } from '../parts/settle-parts.ts';
import { settleSizes } from '../parts/settle-sizes.ts';
import { type Corrected, type Effective, ofCorrection, ofReading } from './effective-reading.ts';
import { type KeyedRow, keyRows } from './keyed-rows.ts';
import { linkRows } from './link-rows.ts';
import { storeDrawing } from './store-drawing.ts';
import { type Line, storeLines } from './store-lines.ts';
import { storeLinks } from './store-links.ts';

/**
 * Stores what was read of a document in one transaction, in place of what was read of it before. Does nothing when
 * the lease is no longer ours, for then another reads it. Answers whether it was stored.
 *
 * Readings of one maker wait for each other, and the order of locks is always maker, then document; so two at once
 * end as one after the other, and a crash halfway leaves what was there.
 */
export function storeReading(store: Store, claim: Claim, read: DocumentRows): Promise<boolean> {
  return store.inWorkshop(claim.workshop, async tx => {
    const subject = await lockDiagram(tx, claim);
    if (!subject) return false;
    const rows = keyRows(read.rows);
    const links = linkRows(rows, read.relations);
    const says = meanings(rows, await standingCorrections(tx, claim.id));
    const former = await clearDiagram(tx, claim.id);
    const lines: Line[] = rows.map(row => ({
      ...row,
      // A row that stood there before keeps its id, so that an open page still points at it.
      id: former.get(row.key) ?? randomUUID(),
      says: says.get(row.key) ?? null,
    }));
    await storeLines(tx, { id: claim.id, ...subject }, lines, read.faults);
    await storeLinks(tx, claim.id, links);
    await storeDrawing(tx, claim.id, read);
    await settleParts(tx);
    await dropUnreferredParts(tx);
    await settleSizes(tx, subject.model.id);
    await proposeDuties(tx, { id: claim.id, model: subject.model }, rows, links);
    await finish(tx, claim.id, read);
    return true;
  });
}

/** Takes the lock that everything which settles a maker's parts takes first. */
export async function lockMaker(tx: Tx, makerId: string): Promise<void> {
  await tx.execute(sql`select pg_advisory_xact_lock(hashtextextended(${`maker ${makerId}`}, 0))`);
}

async function lockDiagram(tx: Tx, claim: Claim) {
  const [subject] = await tx
    .select({ maker: maker.id, model: { id: model.id, name: model.name } })
    .from(diagram)
    .innerJoin(model, eq(model.id, diagram.model))
    .innerJoin(maker, eq(maker.id, model.maker))
    .where(eq(diagram.id, claim.id));
  if (!subject) return undefined;
  await lockMaker(tx, subject.maker);
  const ours = await tx
    .select({ id: diagram.id })
    .from(diagram)
    .where(and(eq(diagram.id, claim.id), eq(diagram.lease, claim.lease)))
    .for('update');
  return ours.length > 0 ? subject : undefined;
}

async function standingCorrections(tx: Tx, id: string): Promise<Map<string, Corrected>> {
  const rows = await tx
    .select({
      key: correction.rowKey,
      category: correction.category,
      dims: correction.dims,
      attrs: correction.attrs,
    })
    .from(correction)
    .where(and(eq(correction.diagram, id), isNull(correction.undoneAt)));
  return new Map(rows.map(row => [row.key, row]));
}

/** What each taken row means: a person's word, else the reading. A row that is no part has no entry. */
function meanings(rows: KeyedRow[], corrections: Map<string, Corrected>): Map<string, Effective> {
  const says = new Map<string, Effective>();
  for (const row of rows) {
    if (row.outcome !== 'taken') continue;
    const corrected = corrections.get(row.key);
    const meaning = corrected ? ofCorrection(corrected) : row.reading ? ofReading(row.reading) : null;
    if (meaning && meaning.category !== 'not-a-part') says.set(row.key, meaning);
  }
  return says;
}

/**
 * Takes out what an earlier reading left, and answers the ids that its rows had, by their keys. The parts it named go
 * into the temporary table `touched`.
 */
async function clearDiagram(tx: Tx, id: string): Promise<Map<string, string>> {
  const former = await tx.execute<{ key: string; id: string }>(
    sql`select key, id from row where diagram = ${id}`,
  );
  await tx.execute(sql`
    create temporary table touched on commit drop as
    select id, size from part where id in (select part from row where diagram = ${id})`);
  for (const table of ['evidence', 'supersession', 'assembly', 'row_fact', 'row'])
    await tx.execute(sql`delete from ${sql.identifier(table)} where diagram = ${id}`);
  return new Map(former.map(row => [row.key, row.id]));
}

async function finish(tx: Tx, id: string, { rows, document }: DocumentRows): Promise<void> {
  await tx
    .update(diagram)
    .set({
      state: 'ready',
      refusal: null,
      rowsDone: rows.length,
      rowsTotal: rows.length,
      pages: document.pages,
      language: document.language,
      unit: document.unit,
      lease: null,
      leaseUntil: null,
      readAt: new Date(),
    })
    .where(eq(diagram.id, id));
}
