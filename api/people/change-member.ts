import { and, eq, isNotNull, isNull } from 'drizzle-orm';
import type { PersonChange } from '../answers/people.ts';
import { invitation, member } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { notFound, refuse } from '../refusal.ts';
import { type Doer, writeDown } from './write-down.ts';

/** The member, held until the transaction ends; every owner is held too, so that two at once can't remove the last. */
async function held(tx: Tx, id: string) {
  await tx
    .select({ id: member.id })
    .from(member)
    .where(and(eq(member.role, 'owner'), isNull(member.leftAt)))
    .orderBy(member.id)
    .for('update');
  const [found] = await tx.select().from(member).where(eq(member.id, id)).for('update');
  if (!found) throw notFound('person', id);
  return found;
}

/** Refused where the bench would be left without an owner who can sign in. */
export async function notTheLastOwner(tx: Tx, id: string): Promise<void> {
  const owners = await tx
    .select({ id: member.id })
    .from(member)
    .where(and(eq(member.role, 'owner'), isNull(member.leftAt), isNotNull(member.person)));
  if (owners.length > 0 && owners.every(owner => owner.id === id))
    throw refuse('last-owner', {
      place: 'the last owner',
      message: 'The bench would have no owner left.',
      remedy: 'Make somebody else an owner first, or erase the bench.',
    });
}

/** Gives a member another name or role. */
export async function changeMember(tx: Tx, doer: Doer, id: string, { name, role }: PersonChange) {
  const before = await held(tx, id);
  if (before.leftAt) throw notFound('person', id);
  if (role !== undefined && role !== before.role) {
    if (before.role === 'owner') await notTheLastOwner(tx, id);
    await tx.update(member).set({ role }).where(eq(member.id, id));
    await writeDown(tx, doer, 'role-changed', { member: id, from: before.role, to: role });
  }
  if (name !== undefined && name !== before.name) {
    await tx.update(member).set({ name }).where(eq(member.id, id));
    await writeDown(tx, doer, 'renamed', { member: id });
  }
}

/** Ends somebody's work here: from this moment they are not let in. Their name stays beside what they did. */
export async function removeMember(tx: Tx, doer: Doer, id: string): Promise<void> {
  const before = await held(tx, id);
  if (before.leftAt) return;
  if (before.role === 'owner') await notTheLastOwner(tx, id);
  await tx.update(member).set({ leftAt: new Date() }).where(eq(member.id, id));
  await tx.delete(invitation).where(eq(invitation.member, id));
  await writeDown(tx, doer, 'left', { member: id });
}

/** Takes somebody's name out of everything here; what they did stays, as done by someone whose name was erased. */
export async function eraseMember(tx: Tx, doer: Doer, id: string): Promise<void> {
  await removeMember(tx, doer, id);
  const erased = await tx
    .update(member)
    .set({ name: null, person: null })
    .where(and(eq(member.id, id), isNotNull(member.name)))
    .returning({ id: member.id });
  if (erased.length > 0) await writeDown(tx, doer, 'name-erased', { member: id });
}
