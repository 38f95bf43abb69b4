import { errorCode } from '../db/errors.ts';
import { person } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisPerson } from '../db/this-workshop.ts';
import { refuse } from '../refusal.ts';

/** Makes this transaction's person: someone who can sign in. `password` is what is kept of it. */
export async function addPerson(tx: Tx, id: string, signIn: string, password: string): Promise<string> {
  await tx.insert(person).values({ person: thisPerson, signIn, password });
  return id;
}

/** The refusal for a sign-in name that is somebody's; any other error stays as it is. */
export function nameTaken(error: unknown): never {
  if (errorCode(error) !== '23505') throw error;
  throw refuse('name-taken', {
    place: 'sign-in name',
    message: 'Somebody signs in by this name already.',
    remedy: 'Choose another name to sign in by.',
  });
}
