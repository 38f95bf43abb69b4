import { randomUUID } from 'node:crypto';
import { addOwner } from '../benches/start-bench.ts';
import { workshop } from '../db/schema/index.ts';
import type { Store } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { addPerson, nameTaken } from './add-person.ts';
import { memberHere } from './member-here.ts';
import { hashPassword } from './password.ts';

/** The bench of this name, whoever's; undefined where there is none. For whoever runs the server. */
export async function benchNamed(store: Store, name: string): Promise<string | undefined> {
  for (const id of await store.benches()) {
    const [row] = await store.inWorkshop(id, tx => tx.select({ name: workshop.name }).from(workshop));
    if (row?.name === name) return id;
  }
  return undefined;
}

/** Makes somebody who can sign in; refused where the name is taken. Answers their id. */
export async function makePerson(store: Store, signIn: string, password: string): Promise<string> {
  const [id, kept] = [randomUUID(), await hashPassword(password)];
  return store.asPerson(id, tx => addPerson(tx, id, signIn, kept)).catch(nameTaken);
}

/** Makes a person an owner of the bench of this name, which is started where there is none. Answers the bench's id. */
export async function ownBench(store: Store, person: string, bench: string): Promise<string> {
  const known = await benchNamed(store, bench);
  const id = known ?? randomUUID();
  await store.asPerson(
    person,
    async tx => {
      if (!known) await tx.insert(workshop).values({ workshop: thisWorkshop, name: bench });
      if (!(await memberHere(tx, person))) await addOwner(tx, person);
    },
    id,
  );
  return id;
}
