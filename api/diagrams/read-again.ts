import { eq } from 'drizzle-orm';
import type { DiagramAnswer } from '../answers/index.ts';
import { diagram } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { diagramById } from './list-diagrams.ts';

/**
 * Lets a document wait to be read anew. Its rows stay until the new ones are there, and corrections beyond that. One
 * that is just reading it has lost its lease, and stores nothing.
 */
export async function readAgain(tx: Tx, id: string): Promise<DiagramAnswer> {
  await diagramById(tx, id);
  await tx
    .update(diagram)
    .set({
      state: 'waiting',
      refusal: null,
      lease: null,
      leaseUntil: null,
      attempts: 0,
      rowsDone: 0,
      rowsTotal: null,
    })
    .where(eq(diagram.id, id));
  return diagramById(tx, id);
}
