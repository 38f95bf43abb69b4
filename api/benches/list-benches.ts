import type { Bench, Benches } from '../answers/index.ts';
import { workshop } from '../db/schema/index.ts';
import type { Store, Tx } from '../db/store.ts';
import type { Actor } from '../people/actor.ts';
import { benchesOf } from '../people/benches-of.ts';
import { memberHere } from '../people/member-here.ts';
import type { Role } from '../people/role.ts';

/** The benches that somebody may know of: their own, a token's one, or all of them where nobody signs in. */
export async function benchesSeen(store: Store, actor: Actor | null): Promise<string[]> {
  if (!actor) return store.benches();
  return actor.person ? benchesOf(store, actor.person) : [actor.workshop!];
}

/** Those benches, the one last opened first. */
export async function listBenches(store: Store, actor: Actor | null): Promise<Benches> {
  const ids = await benchesSeen(store, actor);
  const benches: Bench[] = [];
  for (const id of ids) benches.push(await store.inWorkshop(id, tx => benchOf(tx, actor)));
  return { benches, current: ids[0] ?? null };
}

/** The bench of this transaction, as somebody sees it. */
export async function benchOf(tx: Tx, actor: Pick<Actor, 'person' | 'role'> | null): Promise<Bench> {
  const [row] = await tx.select().from(workshop);
  const { workshop: id, name, demo, createdAt, openedAt } = row!;
  return {
    id,
    name,
    demo,
    createdAt: createdAt.toISOString(),
    openedAt: openedAt?.toISOString() ?? null,
    role: actor && (await roleHere(tx, actor)),
  };
}

const roleHere = async (tx: Tx, { person, role }: Pick<Actor, 'person' | 'role'>): Promise<Role | null> =>
  person ? ((await memberHere(tx, person))?.role ?? null) : role;
