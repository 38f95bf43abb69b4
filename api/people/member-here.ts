import { and, eq, isNull } from 'drizzle-orm';
import { member } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';

/** The person as a member of this transaction's bench; undefined where they are none. */
export async function memberHere(tx: Tx, person: string) {
  const [found] = await tx
    .select({ id: member.id, role: member.role })
    .from(member)
    .where(and(eq(member.person, person), isNull(member.leftAt)));
  return found;
}
