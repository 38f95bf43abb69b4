import { type SQL, sql } from 'drizzle-orm';
import type { DiagramRow } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { notFound } from '../refusal.ts';
import { ofCorrection } from './effective-reading.ts';
import { isDoubtful } from './list-diagrams.ts';

interface Page {
  /** Doubtful rows before the others; otherwise in printed order. */
  doubtfulFirst: boolean;
  offset: number;
  limit: number;
}

/** The rows of a diagram, with reading, correction, and how they hang together. */
export function listRows(tx: Tx, diagram: string, page: Page): Promise<DiagramRow[]> {
  const first = page.doubtfulFirst ? sql`doubtful desc,` : sql``;
  return rowsWhere(
    tx,
    sql`row.diagram = ${diagram}`,
    sql`order by ${first} row.position limit ${page.limit} offset ${page.offset}`,
  );
}

/** One row of a diagram; refused where this workshop has none of that id. */
export async function rowById(tx: Tx, diagram: string, id: string): Promise<DiagramRow> {
  const [found] = await rowsWhere(tx, sql`row.diagram = ${diagram} and row.id = ${id}`, sql``);
  if (!found) throw notFound('row', id);
  return found;
}

async function rowsWhere(tx: Tx, which: SQL, order: SQL): Promise<DiagramRow[]> {
  const rows = await tx.execute<DiagramRow & Record<string, unknown>>(sql`
    select row.id, row.position, row.page, row.ref, row.part_number as "partNumber", row.description, row.qty,
           row.qty_text as "qtyText", row.remarks, row.place, row.parent, row.variants, row.area, row.outcome, row.reason,
           row.fault, row.part, reading.text,
           case when reading.row is not null then jsonb_build_object(
             'category', reading.category, 'dims', reading.dims, 'attrs', reading.attrs, 'implied', reading.implied,
             'qty', reading.qty, 'size', reading.size, 'item', reading.item, 'certainty', reading.certainty,
             'review', reading.review, 'alternatives', reading.alternatives, 'spans', reading.spans,
             'notes', reading.notes) end as reading,
           case when correction.id is not null then jsonb_build_object(
             'category', correction.category, 'dims', correction.dims, 'attrs', correction.attrs,
             'qty', correction.qty, 'createdAt', correction.created_at at time zone 'UTC',
             'taught', (select count(*) from correction as like_it where like_it.diagram = row.diagram
                        and like_it.taught_by = correction.id and like_it.undone_at is null),
             'taughtBy', (select coalesce(nullif(teacher.ref, ''), teacher.place)
                          from correction as lesson
                          join row as teacher on teacher.diagram = lesson.diagram and teacher.key = lesson.row_key
                          where lesson.id = correction.taught_by)) end as correction,
           coalesce(${isDoubtful}, false) as doubtful,
           coalesce((select jsonb_agg(jsonb_build_object('kind', kind, 'from', serial_from, 'to', serial_to))
                     from row_fact where row_fact.diagram = row.diagram and row_fact.row_key = row.key), '[]') as facts,
           coalesce((select jsonb_agg(distinct successor_number)
                     from supersession where supersession.diagram = row.diagram and supersession.part = row.part),
                    '[]') as "supersededBy",
           coalesce((select jsonb_agg(child.ref order by child.position)
                     from assembly join row as child on child.diagram = row.diagram and child.key = assembly.child_key
                     where assembly.diagram = row.diagram and assembly.parent_key = row.key), '[]') as includes
    from row
    left join reading on reading.row = row.id
    left join correction on correction.diagram = row.diagram and correction.row_key = row.key
                         and correction.undone_at is null
    where ${which}
    ${order}`);
  return rows.map(row => ({ ...row, correction: row.correction && withSize(row.correction) }));
}

function withSize(correction: NonNullable<DiagramRow['correction']>) {
  const { size, item } = ofCorrection(correction);
  return { ...correction, createdAt: `${correction.createdAt}Z`, size, item };
}
