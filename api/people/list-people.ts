import { asc, eq, sql } from 'drizzle-orm';
import type { PersonHere } from '../answers/people.ts';
import { invitation, member } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { notFound } from '../refusal.ts';

/** Everyone who works here, is invited, or did work here, those with most to say first. */
export async function listPeople(tx: Tx): Promise<PersonHere[]> {
  const rows = await tx
    .select({
      id: member.id,
      name: member.name,
      role: member.role,
      signsIn: sql<boolean>`${member.person} is not null`,
      leftAt: member.leftAt,
      invitedUntil: invitation.until,
      since: member.createdAt,
    })
    .from(member)
    .leftJoin(invitation, eq(invitation.member, member.id))
    .orderBy(
      sql`${member.leftAt} is not null`,
      sql`array_position(array['owner', 'repairer', 'counter', 'reader'], ${member.role})`,
      asc(member.name),
      asc(member.id),
    );
  return rows.map(({ signsIn, leftAt, invitedUntil, since, ...row }) => ({
    ...row,
    state: leftAt ? 'left' : signsIn ? 'here' : 'invited',
    invitedUntil: invitedUntil?.toISOString() ?? null,
    since: since.toISOString(),
  }));
}

export async function personHere(tx: Tx, id: string): Promise<PersonHere> {
  const found = (await listPeople(tx)).find(one => one.id === id);
  if (!found) throw notFound('person', id);
  return found;
}
