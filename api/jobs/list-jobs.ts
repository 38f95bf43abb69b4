import { and, desc, eq, isNotNull, isNull, type SQL, sql } from 'drizzle-orm';
import type { JobAnswer } from '../answers/index.ts';
import { job } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { modelRefs } from '../models/model-refs.ts';
import { notFound } from '../refusal.ts';

/** Jobs with how many needs each has, the newest first. */
export async function listJobs(tx: Tx, state: 'open' | 'closed' | 'all'): Promise<JobAnswer[]> {
  const which = { open: isNull(job.closedAt), closed: isNotNull(job.closedAt), all: undefined }[state];
  return jobsWhere(tx, which);
}

/** One job; refused where this workshop has none of that id. */
export async function jobById(tx: Tx, id: string): Promise<JobAnswer> {
  const [found] = await jobsWhere(tx, eq(job.id, id));
  if (!found) throw notFound('job', id);
  return found;
}

async function jobsWhere(tx: Tx, which: SQL | undefined): Promise<JobAnswer[]> {
  const needs = await tx.execute<{ job: string; count: number }>(
    sql`select job, count(*)::int as count from need group by job`,
  );
  const counts = new Map(needs.map(row => [row.job, row.count]));
  const rows = await tx.select().from(job).where(and(which)).orderBy(desc(job.number));
  const models = await modelRefs(tx, [...new Set(rows.flatMap(row => row.model ?? []))]);
  return rows.map(row => ({
    id: row.id,
    number: row.number,
    model: row.model === null ? null : (models.get(row.model) ?? null),
    serial: row.serial,
    owner: row.owner,
    fault: row.fault,
    limit:
      row.limitMinor === null || row.currency === null
        ? null
        : { minor: row.limitMinor, currency: row.currency },
    promised: row.promised,
    closedAt: row.closedAt?.toISOString() ?? null,
    createdAt: row.createdAt.toISOString(),
    needs: counts.get(row.id) ?? 0,
  }));
}
