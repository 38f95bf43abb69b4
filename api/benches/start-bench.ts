import { createHash } from 'node:crypto';
import { eq } from 'drizzle-orm';
import type { Bench, NewBench } from '../answers/index.ts';
import { member, person as people, workshop } from '../db/schema/index.ts';
import type { Store, Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { once } from '../edge/once.ts';
import { writeDown } from '../people/write-down.ts';
import { benchOf } from './list-benches.ts';

/**
 * Starts a bench and opens it; who starts it owns it. Its id follows from the key, and from the person where there is
 * one, so that a repeat meets the same bench; the key then keeps the answer in the bench itself.
 */
export function startBench(
  store: Store,
  key: string,
  request: string,
  { name }: NewBench,
  person: string | null,
): Promise<Bench> {
  const id = benchId(person ? `${person} ${key}` : key);
  const start = async (tx: Tx) => {
    await tx
      .insert(workshop)
      .values({ workshop: thisWorkshop, name, openedAt: new Date() })
      .onConflictDoNothing();
    return once(tx, key, request, async () => {
      if (person) await addOwner(tx, person);
      return benchOf(tx, person ? { person, role: null } : null);
    });
  };
  return person ? store.asPerson(person, start, id) : store.inWorkshop(id, start);
}

/** Makes a person the first owner of this transaction's bench, under the name they sign in by until they choose another. */
export async function addOwner(tx: Tx, person: string, name?: string): Promise<void> {
  const [own] = await tx.select({ signIn: people.signIn }).from(people).where(eq(people.person, person));
  const [added] = await tx
    .insert(member)
    .values({
      workshop: thisWorkshop,
      person,
      name: name ?? own!.signIn,
      role: 'owner',
      openedAt: new Date(),
    })
    .returning({ id: member.id });
  await writeDown(tx, { member: added!.id, token: null }, 'bench-started');
}

/** Makes this transaction's bench the one last opened, by this person where there is one. */
export async function openBench(tx: Tx, person: string | null): Promise<Bench> {
  if (person) await tx.update(member).set({ openedAt: new Date() }).where(eq(member.person, person));
  else await tx.update(workshop).set({ openedAt: new Date() });
  return benchOf(tx, person ? { person, role: null } : null);
}

/** A name-based UUID (RFC 9562, version 8) of the key. */
function benchId(key: string): string {
  const bytes = createHash('sha256').update(`fettlebench bench ${key}`).digest().subarray(0, 16);
  bytes[6] = (bytes[6]! & 0x0f) | 0x80;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
