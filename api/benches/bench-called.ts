import { workshop } from '../db/schema/index.ts';
import type { Store } from '../db/store.ts';
import { refuse } from '../refusal.ts';

/** The benches of this name, whoever's: for the command line of whoever runs the program. */
export async function benchesCalled(store: Store, name: string): Promise<string[]> {
  const found: string[] = [];
  for (const id of await store.benches()) {
    const [row] = await store.inWorkshop(id, tx => tx.select({ name: workshop.name }).from(workshop));
    if (row?.name === name) found.push(id);
  }
  return found;
}

/** The one bench of this name; refused where there is none, or several. */
export async function benchCalled(store: Store, name: string): Promise<string> {
  const [id, ...others] = await benchesCalled(store, name);
  if (id && others.length === 0) return id;
  throw refuse('bench-not-found', {
    place: '--bench',
    message: id ? `Several benches bear the name "${name}".` : `There is no bench named "${name}".`,
    remedy: id ? 'Give one of them another name first.' : 'Look on the page what it is called.',
  });
}
