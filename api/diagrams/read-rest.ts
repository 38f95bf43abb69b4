import { eq, sql } from 'drizzle-orm';
import type { DiagramAnswer } from '../answers/index.ts';
import { diagram } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { refuse } from '../refusal.ts';
import { diagramById } from './list-diagrams.ts';
import { readAgain } from './read-again.ts';

/**
 * Lets a document of which pages were left wait for a further stretch of them to be read. What is read of it stays,
 * and corrections too; from now on it is always read so far.
 */
export async function readRest(tx: Tx, id: string): Promise<DiagramAnswer> {
  const { name, faults } = await diagramById(tx, id);
  if (!faults.some(({ code }) => code === 'pages-not-read'))
    throw refuse('nothing-left', {
      place: name,
      message: 'Every page of this document has been read.',
      remedy: 'Read it again, if the document is to be read anew.',
    });
  await tx
    .update(diagram)
    .set({ stretches: sql`${diagram.stretches} + 1` })
    .where(eq(diagram.id, id));
  return readAgain(tx, id);
}
