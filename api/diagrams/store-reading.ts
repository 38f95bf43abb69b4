import { randomUUID } from 'node:crypto';
import { and, eq, isNull } from 'drizzle-orm';
import type { DocumentRows, Fault, Table } from '../../indexer/intake/rows.ts';
import { storableJson, storableText } from '../db/copy-text.ts';
import { correction, diagram } from '../db/schema/index.ts';
import type { Claim, Store, Tx } from '../db/store.ts';
import { proposeDuties } from '../duty/propose-duties.ts';
import { storeModelColumns } from '../models/model-columns.ts';
import { dropUnreferredParts } from '../parts/drop-unreferred.ts';
import { settleParts } from '../parts/settle-parts.ts';
import { settleSizes } from '../parts/settle-sizes.ts';
import { clearDiagram } from './clear-diagram.ts';
import { type Corrected, type Effective, ofCorrection, ofReading } from './effective-reading.ts';
import { type KeyedRow, keyRows } from './keyed-rows.ts';
import { linkRows } from './link-rows.ts';
import { lockSubject } from './lock-subject.ts';
import { formerRows, movedKeys, moveKeys } from './moved-keys.ts';
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
    const former = await formerRows(tx, claim.id);
    const moved = movedKeys(former, rows);
    await moveKeys(tx, claim.id, moved);
    const says = meanings(rows, await standingCorrections(tx, claim.id));
    const ids = new Map(former.map(({ key, id }) => [moved.get(key) ?? key, id]));
    await clearDiagram(tx, claim.id);
    const lines: Line[] = rows.map(row => ({
      ...row,
      // A row that stood there before keeps its id, so that an open page still points at it.
      id: ids.get(row.key) ?? randomUUID(),
      says: says.get(row.key) ?? null,
    }));
    const models = await storeModelColumns(tx, { id: claim.id, ...subject }, columnsOf(rows));
    await storeLines(tx, { id: claim.id, ...subject }, lines, read.faults);
    await storeLinks(tx, claim.id, links);
    await storeDrawing(tx, claim.id, read);
    await settleParts(tx);
    await dropUnreferredParts(tx);
    await settleSizes(tx, models);
    await proposeDuties(tx, { id: claim.id, model: subject.model }, rows, links);
    await finish(tx, claim.id, read);
    return true;
  });
}

/** Tables beyond these are read, and not told of. */
const mostTables = 200;

const storableTables = (tables: Table[]) => JSON.parse(storableJson(tables.slice(0, mostTables))) as Table[];

/** Faults beyond these say nothing new. */
const mostFaults = 100;

/** Faults of the document rather than of a row, which has its own. */
function ofDocument(faults: Fault[], rows: DocumentRows['rows']): Fault[] {
  const places = new Set(rows.map(({ page, place }) => `${page} ${place}`));
  const own = faults.filter(({ page, place }) => !places.has(`${page} ${place}`));
  return JSON.parse(storableJson(own.slice(-mostFaults))) as Fault[];
}

/** The columns of quantities that its taken rows have, in printed order; storable as the rows themselves are. */
const columnsOf = (rows: KeyedRow[]) => [
  ...new Set(
    rows.flatMap(row =>
      row.outcome === 'taken' ? row.variants.map(({ model }) => storableText(model)) : [],
    ),
  ),
];

async function lockDiagram(tx: Tx, claim: Claim) {
  const subject = await lockSubject(tx, claim.id);
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

async function finish(tx: Tx, id: string, { rows, document, tables, faults }: DocumentRows): Promise<void> {
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
      tables: storableTables(tables),
      faults: ofDocument(faults, rows),
      lease: null,
      leaseUntil: null,
      readAt: new Date(),
    })
    .where(eq(diagram.id, id));
}
