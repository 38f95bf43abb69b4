import { and, eq } from 'drizzle-orm';
import type { DiagramAnswer } from '../answers/index.ts';
import { diagram } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { storeModelColumns } from '../models/model-columns.ts';
import { dropUnreferredParts } from '../parts/drop-unreferred.ts';
import { settleParts } from '../parts/settle-parts.ts';
import { settleSizes } from '../parts/settle-sizes.ts';
import { clearDiagram } from './clear-diagram.ts';
import { diagramById } from './list-diagrams.ts';
import { lockSubject } from './lock-subject.ts';
import { readAgain } from './read-again.ts';

/**
 * Takes a diagram off the bench: its lines, and the parts that no other list, job or person speaks of. The document
 * itself, the corrections and what was said of its columns are kept, so that it can be put back.
 */
export async function removeDiagram(tx: Tx, id: string): Promise<DiagramAnswer> {
  const before = await diagramById(tx, id);
  const subject = await lockSubject(tx, id);
  await tx.update(diagram).set({ state: 'removed', lease: null, leaseUntil: null }).where(eq(diagram.id, id));
  await clearDiagram(tx, id);
  const models = await storeModelColumns(tx, { id, ...subject! }, []);
  await settleParts(tx);
  await dropUnreferredParts(tx);
  await settleSizes(tx, models);
  return { ...before, state: 'removed' };
}

/** Puts a removed diagram back: its document waits to be read again, and what a person said of it holds. */
export async function restoreDiagram(tx: Tx, id: string): Promise<DiagramAnswer> {
  const removed = await tx
    .update(diagram)
    .set({ state: 'waiting' })
    .where(and(eq(diagram.id, id), eq(diagram.state, 'removed')))
    .returning({ id: diagram.id });
  return removed.length > 0 ? readAgain(tx, id) : diagramById(tx, id);
}
