import { and, desc, eq, ne, type SQL, sql } from 'drizzle-orm';
import type { DiagramAnswer } from '../answers/index.ts';
import { diagram, maker, model } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { notFound } from '../refusal.ts';

/** Taken, asks for a person's look, and has no correction yet. A condition on row, reading and correction. */
export const isDoubtful = sql`row.outcome = 'taken' and reading.review and correction.id is null`;

/** Diagrams with their counts of rows, the newest first; `which` narrows them. Those taken off the bench are none. */
export async function listDiagrams(tx: Tx, which?: SQL): Promise<DiagramAnswer[]> {
  const counts = sql`(
    select jsonb_build_object(
      'taken', count(*) filter (where row.outcome = 'taken'),
      'skipped', count(*) filter (where row.outcome = 'skipped'),
      'faulted', count(*) filter (where row.outcome = 'faulted'),
      'doubtful', count(*) filter (where ${isDoubtful}))
    from row
    left join reading on reading.row = row.id
    left join correction on correction.diagram = row.diagram and correction.row_key = row.key
                         and correction.undone_at is null
    where row.diagram = ${diagram.id})`;
  const rows = await tx
    .select({
      id: diagram.id,
      name: diagram.name,
      model: { id: model.id, name: model.name },
      maker: { id: maker.id, name: maker.name },
      mediaType: diagram.mediaType,
      byteCount: diagram.byteCount,
      state: diagram.state,
      refusal: diagram.refusal,
      faults: diagram.faults,
      rowsDone: diagram.rowsDone,
      rowsTotal: diagram.rowsTotal,
      pages: diagram.pages,
      language: diagram.language,
      unit: diagram.unit,
      createdAt: diagram.createdAt,
      readAt: diagram.readAt,
      counts: sql<DiagramAnswer['counts']>`${counts}`,
    })
    .from(diagram)
    .innerJoin(model, eq(model.id, diagram.model))
    .innerJoin(maker, eq(maker.id, model.maker))
    .where(and(ne(diagram.state, 'removed'), which))
    .orderBy(desc(diagram.createdAt), diagram.id);
  return rows.map(({ maker, createdAt, readAt, ...row }) => ({
    ...row,
    model: { ...row.model, maker },
    createdAt: createdAt.toISOString(),
    readAt: readAt?.toISOString() ?? null,
  }));
}

/** One diagram; refused where this workshop has none of that id. */
export async function diagramById(tx: Tx, id: string): Promise<DiagramAnswer> {
  const [found] = await listDiagrams(tx, eq(diagram.id, id));
  if (!found) throw notFound('diagram', id);
  return found;
}
