import { eq } from 'drizzle-orm';
import type { JobChange, JobPage } from '../answers/index.ts';
import { job } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { modelRefs } from '../models/model-refs.ts';
import { notFound } from '../refusal.ts';
import { jobPage } from './job-page.ts';
import { jobById } from './list-jobs.ts';

/** Changes what is given and leaves the rest. Closing a closed job keeps the moment it was closed. */
export async function changeJob(tx: Tx, id: string, change: JobChange): Promise<JobPage> {
  const known = await jobById(tx, id);
  await checkModel(tx, change.model);
  const { limit, closed, ...plain } = change;
  const set = {
    ...plain,
    ...(limit === undefined ? {} : { limitMinor: limit?.minor ?? null, currency: limit?.currency ?? null }),
    ...(closed === undefined || closed === (known.closedAt !== null)
      ? {}
      : { closedAt: closed ? new Date() : null }),
  };
  if (Object.keys(set).length > 0) await tx.update(job).set(set).where(eq(job.id, id));
  return jobPage(tx, id);
}

/** Refuses a model that this workshop does not have. */
export async function checkModel(tx: Tx, model: string | null | undefined): Promise<void> {
  if (model && !(await modelRefs(tx, [model])).has(model)) throw notFound('model', model);
}
