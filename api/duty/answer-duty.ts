import { eq } from 'drizzle-orm';
import { type Duty, proposeDuty } from '../../indexer/index.ts';
import type { DutyAnswer } from '../answers/index.ts';
import { duty as dutyTable } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { dutyAnswer, notStated } from './line-duty.ts';

type Subject = { model: string } | { part: string };

/**
 * A person's answer for a model or a part. `not-stated` takes it back: a word that proposed one proposes it again.
 */
export async function answerDuty(tx: Tx, subject: Subject, duty: Duty): Promise<DutyAnswer> {
  const where = 'model' in subject ? eq(dutyTable.model, subject.model) : eq(dutyTable.part, subject.part);
  const from = 'model' in subject ? 'model' : 'part';
  const [known] = await tx.select().from(dutyTable).where(where).for('update');
  if (duty !== 'not-stated') {
    const word = known?.word ?? null;
    if (known) await tx.update(dutyTable).set({ duty, standing: 'confirmed' }).where(where);
    else
      await tx.insert(dutyTable).values({ workshop: thisWorkshop, ...subject, duty, standing: 'confirmed' });
    return dutyAnswer({ duty, standing: 'confirmed', word }, from);
  }
  const proposed = known?.word ? proposeDuty(known.word) : null;
  if (!known || !proposed) {
    await tx.delete(dutyTable).where(where);
    return notStated;
  }
  await tx.update(dutyTable).set({ duty: proposed.duty, standing: 'proposed' }).where(where);
  return dutyAnswer({ duty: proposed.duty, standing: 'proposed', word: known.word }, from);
}
