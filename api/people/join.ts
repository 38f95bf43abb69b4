import { randomUUID } from 'node:crypto';
import { and, eq, gt, isNull, sql } from 'drizzle-orm';
import type { Invited } from '../answers/people.ts';
import { invitation, member, person, workshop } from '../db/schema/index.ts';
import type { Store, Tx } from '../db/store.ts';
import { refuse } from '../refusal.ts';
import { addPerson, nameTaken } from './add-person.ts';
import { benchesOfThisPerson } from './benches-of.ts';
import { type Credential, matches, parse } from './credential.ts';
import { memberHere } from './member-here.ts';
import { hashPassword } from './password.ts';
import { startSession } from './sessions.ts';
import { writeDown } from './write-down.ts';

/** An invitation that is not, is used, or has run out; which of them is not told. */
export const linkVoid = () =>
  refuse('link-void', {
    place: 'the link',
    message: 'This link was used already, or has run out.',
    remedy: 'Ask whoever gave it to you for a new one.',
  });

function credentialOf(word: string): Credential {
  const credential = parse('invitation', word);
  if (!credential) throw linkVoid();
  return credential;
}

/** The invited member, held until the transaction ends; refused where the link no longer holds. */
async function invitedBy(tx: Tx, credential: Credential) {
  const [found] = await tx
    .select({ secret: invitation.secret, name: member.name, role: member.role, person: member.person })
    .from(invitation)
    .innerJoin(member, eq(member.id, invitation.member))
    .where(and(eq(invitation.member, credential.id), gt(invitation.until, sql`now()`), isNull(member.leftAt)))
    .for('update');
  if (!found || !matches(credential, found.secret)) throw linkVoid();
  return found;
}

/** What an invitation is to, for the one who holds its link. */
export const lookAtInvitation = (store: Store, word: string): Promise<Invited> => {
  const credential = credentialOf(word);
  return store.inWorkshop(credential.owner, async tx => {
    const { name, role, person } = await invitedBy(tx, credential);
    const [bench] = await tx.select({ name: workshop.name }).from(workshop);
    return { bench: bench!.name, name: name ?? '', role, again: person !== null };
  });
};

/** How somebody comes in by an invitation: with a sign-in of their own, or as who they are signed in as. */
export type As = { person: string } | { signIn: string; password: string };

/**
 * Takes an invitation up, once. A member who signed in before gets another sign-in: the one before no longer opens this
 * bench, and where it opens none, it ends. Answers the person, and the word of a new session where they made a sign-in.
 */
export async function join(
  store: Store,
  word: string,
  as: As,
  device: string,
): Promise<{ person: string; session: string | null; workshop: string }> {
  const credential = credentialOf(word);
  const workshop = credential.owner;
  await store.inWorkshop(workshop, tx => invitedBy(tx, credential));
  // Hashed before anything is held, since it takes its time.
  const password = 'password' in as ? await hashPassword(as.password) : null;
  const id = 'person' in as ? as.person : randomUUID();
  const session = await store
    .asPerson(
      id,
      async tx => {
        const invited = await invitedBy(tx, credential);
        if ('person' in as && (await memberHere(tx, id)) && invited.person !== id)
          throw refuse('already-there', {
            place: 'this bench',
            message: 'You work at this bench already, under another name.',
            remedy: 'Sign out, and open the link again to come in as somebody else.',
          });
        if (invited.person && invited.person !== id) await endFormer(tx, invited.person, id, workshop);
        if ('person' in as) await tx.select({ person: person.person }).from(person).for('share');
        if ('signIn' in as) await addPerson(tx, id, as.signIn, password!);
        await tx.update(member).set({ person: id }).where(eq(member.id, credential.id));
        await tx.delete(invitation).where(eq(invitation.member, credential.id));
        await writeDown(tx, { member: credential.id, token: null }, 'joined');
        return 'signIn' in as ? startSession(tx, id, device) : null;
      },
      workshop,
    )
    .catch(nameTaken);
  return { person: id, session, workshop };
}

/** Ends the sign-in that a member had before, sessions and all, where it opens nothing but this bench. */
async function endFormer(tx: Tx, former: string, now: string, workshop: string): Promise<void> {
  await tx.execute(sql`select set_config('app.person', ${former}, true)`);
  // Held, so that it cannot come in elsewhere meanwhile.
  await tx.select({ person: person.person }).from(person).for('update');
  if ((await benchesOfThisPerson(tx)).every(bench => bench === workshop)) await tx.delete(person);
  await tx.execute(sql`select set_config('app.person', ${now}, true)`);
}
