import { and, eq, gt, sql } from 'drizzle-orm';
import { passwordLink, person, session } from '../db/schema/index.ts';
import type { Store } from '../db/store.ts';
import { thisPerson } from '../db/this-workshop.ts';
import { refuse } from '../refusal.ts';
import { writeDownEverywhere } from './benches-of.ts';
import { matches, mint, parse } from './credential.ts';
import { linkVoid } from './join.ts';
import { countAttempt, forgetAttempts, signInLimits } from './limits.ts';
import { hashPassword, isPassword } from './password.ts';
import { endOtherSessions, startSession } from './sessions.ts';
import { keptPassword } from './sign-in.ts';

/** Asks a person who is signed in for their password once more, before something that can't be undone. */
export async function confirmPassword(store: Store, id: string, password: string): Promise<void> {
  await countAttempt(store, 'password', id, signInLimits.name);
  if (!(await isPassword(password, await keptPassword(store, id))))
    throw refuse('password-wrong', {
      place: 'password',
      message: 'This is not your password.',
      remedy: 'Type it again. If you forgot it, ask an owner of the bench for a new link.',
    });
  await forgetAttempts(store, 'password', id);
}

/** Changes a password; every other session ends. */
export async function changePassword(
  store: Store,
  who: { person: string; session: string },
  asked: { password: string; newPassword: string },
): Promise<void> {
  await confirmPassword(store, who.person, asked.password);
  const password = await hashPassword(asked.newPassword);
  await store.asPerson(who.person, async tx => {
    await tx.update(person).set({ password, passwordAt: new Date() });
    await tx.delete(passwordLink);
    await endOtherSessions(tx, who.session);
  });
  await writeDownEverywhere(store, who.person, 'password-changed');
}

const hours = 24;

/** A link by which a person sets a new password, once, within a day; an earlier one is void. */
export function makePasswordLink(store: Store, id: string): Promise<string> {
  const { word, digest } = mint('password', id, id);
  const fresh = { secret: digest, until: sql`now() + make_interval(hours => ${hours})` };
  return store.asPerson(id, async tx => {
    await tx
      .insert(passwordLink)
      .values({ person: thisPerson, ...fresh })
      .onConflictDoUpdate({ target: passwordLink.person, set: fresh });
    return word;
  });
}

/** Sets a new password by a link, once. Every session ends; answers the word of a new one. */
export async function setPasswordByLink(
  store: Store,
  word: string,
  password: string,
  device: string,
): Promise<{ person: string; session: string }> {
  const credential = parse('password', word);
  if (!credential) throw linkVoid();
  const kept = await hashPassword(password);
  const id = credential.owner;
  const started = await store.asPerson(id, async tx => {
    const [link] = await tx
      .select({ secret: passwordLink.secret })
      .from(passwordLink)
      .where(and(eq(passwordLink.person, id), gt(passwordLink.until, sql`now()`)))
      .for('update');
    if (!link || !matches(credential, link.secret)) throw linkVoid();
    await tx.delete(passwordLink);
    await tx.update(person).set({ password: kept, passwordAt: new Date() });
    await tx.delete(session);
    return startSession(tx, id, device);
  });
  await writeDownEverywhere(store, id, 'password-changed');
  return { person: id, session: started };
}
