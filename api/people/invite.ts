import { sql } from 'drizzle-orm';
import type { NewPerson } from '../answers/people.ts';
import { invitation, member } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { refuse } from '../refusal.ts';
import { mint } from './credential.ts';
import { personHere } from './list-people.ts';
import { type Doer, writeDown } from './write-down.ts';

const days = 7;

/** Adds someone to the bench, who comes in by a link. */
export async function addMember(tx: Tx, doer: Doer, { name, role }: NewPerson): Promise<string> {
  const [added] = await tx
    .insert(member)
    .values({ workshop: thisWorkshop, name, role })
    .returning({ id: member.id });
  await writeDown(tx, doer, 'invited', { member: added!.id, to: role });
  return added!.id;
}

/**
 * A link by which a member comes in, once, within a week; an earlier one is void. For one who signs in already it is
 * the way back after a forgotten password: who uses it chooses a password for this bench anew. It never opens what the
 * same person has at another bench.
 */
export async function makeInvitation(tx: Tx, workshop: string, id: string): Promise<string> {
  const here = await personHere(tx, id);
  if (here.state === 'left')
    throw refuse('has-left', {
      place: here.name ?? 'this person',
      message: 'They no longer work here.',
      remedy: 'Invite them anew.',
    });
  const { word, digest } = mint('invitation', workshop, id);
  const fresh = { secret: digest, until: sql`now() + make_interval(days => ${days})` };
  await tx
    .insert(invitation)
    .values({ workshop: thisWorkshop, member: id, ...fresh })
    .onConflictDoUpdate({ target: [invitation.workshop, invitation.member], set: fresh });
  return word;
}
