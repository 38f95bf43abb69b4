import { asc, eq, type SQL, sql } from 'drizzle-orm';
import type { JobPage, NeedAnswer } from '../answers/index.ts';
import { diagram, need, row } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { partRefs } from '../parts/part-refs.ts';
import { notFound } from '../refusal.ts';
import { jobById } from './list-jobs.ts';

/** A job with what it wants. */
export async function jobPage(tx: Tx, id: string): Promise<JobPage> {
  return { ...(await jobById(tx, id)), wants: await needsWhere(tx, eq(need.job, id)) };
}

/** One need; refused where this workshop has none of that id. */
export async function needById(tx: Tx, id: string): Promise<NeedAnswer> {
  const [found] = await needsWhere(tx, eq(need.id, id));
  if (!found) throw notFound('need', id);
  return found;
}

async function needsWhere(tx: Tx, which: SQL): Promise<NeedAnswer[]> {
  const rows = await tx
    .select({ need, row: { id: row.id, ref: row.ref }, diagram: { id: diagram.id, name: diagram.name } })
    .from(need)
    .leftJoin(row, sql`${row.diagram} = ${need.diagram} and ${row.key} = ${need.rowKey}`)
    .leftJoin(diagram, eq(diagram.id, row.diagram))
    .where(which)
    .orderBy(asc(need.createdAt), asc(need.id));
  const parts = await partRefs(tx, [...new Set(rows.flatMap(one => one.need.part ?? []))]);
  return rows.map(({ need: wanted, row: line, diagram: list }) => {
    const part = wanted.part === null ? null : (parts.get(wanted.part) ?? null);
    return {
      id: wanted.id,
      job: wanted.job,
      part,
      item: wanted.item ?? part?.item ?? null,
      qty: wanted.qty,
      note: wanted.note,
      takenAs: wanted.takenAs,
      line: line && list ? { row: line.id, ref: line.ref, diagram: list } : null,
      createdAt: wanted.createdAt.toISOString(),
    };
  });
}
