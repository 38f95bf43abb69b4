import { eq } from 'drizzle-orm';
import { member, person } from '../db/schema/index.ts';
import type { Store } from '../db/store.ts';
import { benchesOf } from './benches-of.ts';
import { eraseMember, notTheLastOwner } from './change-member.ts';
import { memberHere } from './member-here.ts';

/**
 * Takes a person out of everything: their name goes from every bench, their sign-in and sessions end; what they did
 * stays. Refused while they are the last owner of a bench. Safe to repeat: the sign-in goes last.
 */
export async function erasePerson(store: Store, id: string): Promise<void> {
  for (const workshop of await benchesOf(store, id))
    await store.inWorkshop(workshop, async tx => {
      const here = await memberHere(tx, id);
      if (here?.role === 'owner') await notTheLastOwner(tx, here.id);
    });
  for (const workshop of await benchesOf(store, id, true))
    await store.inWorkshop(workshop, async tx => {
      const mine = await tx.select({ id: member.id }).from(member).where(eq(member.person, id));
      for (const one of mine) await eraseMember(tx, { member: one.id, token: null }, one.id);
    });
  await store.asPerson(id, tx => tx.delete(person));
}
