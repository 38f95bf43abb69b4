import { sql } from 'drizzle-orm';
import type { JobPage, NewJob } from '../answers/index.ts';
import { job } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { checkModel } from './change-job.ts';
import { jobPage } from './job-page.ts';

/** Opens a job under the next number of the workshop. Two at once wait for each other, so no number is left out. */
export async function openJob(tx: Tx, given: NewJob): Promise<JobPage> {
  await checkModel(tx, given.model);
  await tx.execute(sql`select from workshop where workshop = this_workshop() for no key update`);
  const [last] = await tx.select({ number: sql<number>`coalesce(max(${job.number}), 0)::int` }).from(job);
  const [opened] = await tx
    .insert(job)
    .values({
      workshop: thisWorkshop,
      number: last!.number + 1,
      owner: given.owner,
      fault: given.fault ?? '',
      model: given.model ?? null,
      serial: given.serial ?? null,
      limitMinor: given.limit?.minor ?? null,
      currency: given.limit?.currency ?? null,
      promised: given.promised ?? null,
    })
    .returning({ id: job.id });
  return jobPage(tx, opened!.id);
}
