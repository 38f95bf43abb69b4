import { sql } from 'drizzle-orm';
import type { Tx } from '../db/store.ts';

/**
 * Takes out what a reading left of a document: rows, readings, evidence, links. What a person said stays. The parts it
 * named go into the temporary table `touched`.
 */
export async function clearDiagram(tx: Tx, id: string): Promise<void> {
  await tx.execute(sql`
    create temporary table touched on commit drop as
    select id, size from part where id in (select part from row where diagram = ${id})`);
  for (const table of ['evidence', 'supersession', 'assembly', 'row_fact', 'row'])
    await tx.execute(sql`delete from ${sql.identifier(table)} where diagram = ${id}`);
}
