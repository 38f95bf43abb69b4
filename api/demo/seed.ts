import { and, eq } from 'drizzle-orm';
import { readDocument } from '../../indexer/intake/index.ts';
import { diagram, job, model, row } from '../db/schema/index.ts';
import type { Store, Tx } from '../db/store.ts';
import { uploadDiagram } from '../diagrams/upload-diagram.ts';
import { addNeed } from '../jobs/add-need.ts';
import { openJob } from '../jobs/open-job.ts';
import { readWaiting } from '../work/read-waiting.ts';
import { fell3 } from './drawn/fell-3.ts';
import { type DemoJob, demoJobs } from './jobs.ts';
import { demoLists } from './lists/index.ts';

/** The demo bench is one and the same everywhere. */
const demoBench = 'de300000-0000-4000-8000-00000000be7c';

/**
 * Puts the demo bench in where there is none: invented makers and models that share sizes under different numbers,
 * three open jobs and a sheet with an exploded drawing. What a crash left half done is gone on with at the next start.
 */
export async function seedDemo(store: Store): Promise<void> {
  if (!(await store.benches()).includes(demoBench))
    await store.createWorkshop({ id: demoBench, name: 'Demo bench, Harbour Row', demo: true });
  const jobs = await store.inWorkshop(demoBench, tx => tx.select({ id: job.id }).from(job));
  if (jobs.length > 0) return;
  await store.inWorkshop(demoBench, async tx => {
    for (const { maker, model, duty, file, mediaType, text } of demoLists)
      await uploadDiagram(tx, { maker, model, duty, name: file, mediaType, bytes: Buffer.from(text) });
  });
  // Our own lists need no child process to be read in.
  while (
    await readWaiting(store, async (bytes, { name, mediaType }) => readDocument(bytes, name, mediaType))
  );
  await store.inWorkshop(demoBench, async tx => {
    for (const given of demoJobs) await openDemoJob(tx, given);
    // A sheet with a drawing waits for the reader of documents, as one that is put in does.
    const { bytes, file, ...about } = fell3;
    await uploadDiagram(tx, { ...about, name: file, bytes: bytes() });
  });
}

async function openDemoJob(tx: Tx, given: DemoJob): Promise<void> {
  const [made] = await tx.select({ id: model.id }).from(model).where(eq(model.name, given.model));
  const promised = new Date(Date.now() + given.promisedIn * 86_400_000).toISOString().slice(0, 10);
  const opened = await openJob(tx, {
    owner: given.owner,
    fault: given.fault,
    model: made!.id,
    serial: given.serial,
    limit: given.limitMinor === null ? null : { minor: given.limitMinor, currency: 'EUR' },
    promised,
  });
  for (const { qty, note, ...what } of given.needs) {
    const wanted = 'item' in what ? { item: what.item } : { row: await lineOf(tx, made!.id, what.ref) };
    await addNeed(tx, opened.id, { ...wanted, qty, ...(note && { note }) });
  }
}

/** The line of a model's list under a reference number; the last where a serial break makes it two. */
async function lineOf(tx: Tx, modelId: string, ref: string): Promise<string> {
  const lines = await tx
    .select({ id: row.id })
    .from(row)
    .innerJoin(diagram, eq(diagram.id, row.diagram))
    .where(and(eq(diagram.model, modelId), eq(row.ref, ref)))
    .orderBy(row.position);
  return lines.at(-1)!.id;
}
