import type { Bench, Benches } from '../answers/index.ts';
import { workshop } from '../db/schema/index.ts';
import type { Store, Tx } from '../db/store.ts';

/** Every bench, the one last opened first. */
export async function listBenches(store: Store): Promise<Benches> {
  const ids = await store.benches();
  const benches: Bench[] = [];
  for (const id of ids) benches.push(await store.inWorkshop(id, benchOf));
  return { benches, current: ids[0] ?? null };
}

/** The bench of this transaction. */
export async function benchOf(tx: Tx): Promise<Bench> {
  const [row] = await tx.select().from(workshop);
  const { workshop: id, name, demo, createdAt, openedAt } = row!;
  return {
    id,
    name,
    demo,
    createdAt: createdAt.toISOString(),
    openedAt: openedAt?.toISOString() ?? null,
  };
}
