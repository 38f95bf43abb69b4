import { eq } from 'drizzle-orm';
import type { NeedAnswer, NeedChange } from '../answers/index.ts';
import { need } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { checkTakenAs } from './check-taken-as.ts';
import { needById } from './job-page.ts';

/** Changes how many are wanted, the note beside, or what it is taken as. */
export async function changeNeed(tx: Tx, id: string, change: NeedChange): Promise<NeedAnswer> {
  const { item } = await needById(tx, id);
  const takenAs = change.takenAs ? { takenAs: checkTakenAs(item, change.takenAs) } : {};
  if (Object.keys(change).length > 0)
    await tx
      .update(need)
      .set({ ...change, ...takenAs })
      .where(eq(need.id, id));
  return needById(tx, id);
}

/** Takes a need off its job, and answers what was there, so that it can be put back. */
export async function removeNeed(tx: Tx, id: string): Promise<NeedAnswer> {
  const removed = await needById(tx, id);
  await tx.delete(need).where(eq(need.id, id));
  return removed;
}
