import { sql } from 'drizzle-orm';
import { person } from '../db/schema/index.ts';
import type { Store } from '../db/store.ts';
import { refuse } from '../refusal.ts';
import { writeDownEverywhere } from './benches-of.ts';
import { countAttempt, forgetAttempts, signInLimits } from './limits.ts';
import { isPassword } from './password.ts';
import { startSession } from './sessions.ts';

/** Who signs in by this name; undefined where nobody does. */
export async function personNamed(store: Store, signIn: string): Promise<string | undefined> {
  return store.asNobody(async tx => {
    const [row] = await tx.execute<{ id: string }>(
      sql`select person_named as id from person_named(${signIn})`,
    );
    return row?.id;
  });
}

/** What is kept of a person's password; null where there is no such person. */
export async function keptPassword(store: Store, id: string | undefined): Promise<string | null> {
  // One that is nobody's is looked up as well: it takes as long.
  const rows = await store.asPerson(id ?? crypto.randomUUID(), tx =>
    tx.select({ password: person.password }).from(person),
  );
  return rows[0]?.password ?? null;
}

/**
 * Signs a person in and answers the word of the new session. Whether the name or the password was wrong is not told,
 * nor can it be seen from the time it takes. Tries are counted before they are judged, for the name and for the address.
 */
export async function signIn(
  store: Store,
  asked: { signIn: string; password: string },
  from: { address: string; device: string },
): Promise<{ person: string; word: string }> {
  await countAttempt(store, 'sign-in', from.address, signInLimits.address);
  await countAttempt(store, 'sign-in of a name', asked.signIn, signInLimits.name);
  const id = await personNamed(store, asked.signIn);
  if (!(await isPassword(asked.password, await keptPassword(store, id))) || !id)
    throw refuse('sign-in-wrong', {
      place: 'sign-in',
      message: 'Name and password do not belong together.',
      remedy: 'Type both again. Who forgot the password asks an owner of the bench for a new link.',
    });
  await forgetAttempts(store, 'sign-in of a name', asked.signIn);
  const word = await store.asPerson(id, tx => startSession(tx, id, from.device));
  await writeDownEverywhere(store, id, 'signed-in');
  return { person: id, word };
}
