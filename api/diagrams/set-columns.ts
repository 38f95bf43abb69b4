import { eq } from 'drizzle-orm';
import type { DiagramColumns } from '../answers/index.ts';
import { diagram } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { diagramById } from './list-diagrams.ts';
import { readAgain } from './read-again.ts';

/** The tables of a document as they were last read, and what a person says of their columns. */
export async function columnsOf(tx: Tx, id: string): Promise<DiagramColumns> {
  const [found] = await tx
    .select({ tables: diagram.tables, given: diagram.columns })
    .from(diagram)
    .where(eq(diagram.id, id));
  return { diagram: await diagramById(tx, id), ...found! } as DiagramColumns;
}

/** Sets what a person says that columns hold, or takes it back, and lets the document wait to be read so. */
export async function setColumns(
  tx: Tx,
  id: string,
  given: DiagramColumns['given'],
): Promise<DiagramColumns> {
  await readAgain(tx, id);
  await tx.update(diagram).set({ columns: given }).where(eq(diagram.id, id));
  return columnsOf(tx, id);
}
