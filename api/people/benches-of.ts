import { sql } from 'drizzle-orm';
import type { Store, Tx } from '../db/store.ts';
import type { About, Deed } from './deed.ts';
import { memberHere } from './member-here.ts';
import { writeDown } from './write-down.ts';

/** Where this transaction's person works, the bench they last opened first; with those they left, where asked for. */
export async function benchesOfThisPerson(tx: Tx, leftToo = false): Promise<string[]> {
  const rows = await tx.execute<{ id: string }>(
    sql`select benches_of_person as id from benches_of_person(${leftToo})`,
  );
  return rows.map(row => row.id);
}

export const benchesOf = (store: Store, person: string, leftToo = false): Promise<string[]> =>
  store.asPerson(person, tx => benchesOfThisPerson(tx, leftToo));

/** Adds a deed that is about the person themselves to the trail of every bench they work at. */
export async function writeDownEverywhere(
  store: Store,
  person: string,
  deed: Deed,
  about: About = {},
): Promise<void> {
  for (const workshop of await benchesOf(store, person))
    await store.inWorkshop(workshop, async tx => {
      const member = await memberHere(tx, person);
      if (member) await writeDown(tx, { member: member.id, token: null }, deed, about);
    });
}
