import { randomUUID } from 'node:crypto';
import { benchesCalled } from '../benches/bench-called.ts';
import { addOwner } from '../benches/start-bench.ts';
import { workshop } from '../db/schema/index.ts';
import type { Store } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { addPerson, nameTaken } from './add-person.ts';
import { changeMember } from './change-member.ts';
import { memberHere } from './member-here.ts';
import { hashPassword } from './password.ts';

/** Makes somebody who can sign in; refused where the name is taken. Answers their id. */
export async function makePerson(store: Store, signIn: string, password: string): Promise<string> {
  const [id, kept] = [randomUUID(), await hashPassword(password)];
  return store.asPerson(id, tx => addPerson(tx, id, signIn, kept)).catch(nameTaken);
}

/** Makes a person an owner of the bench of this name, which is started where there is none. Answers the bench's id. */
export async function ownBench(store: Store, person: string, bench: string): Promise<string> {
  const [known] = await benchesCalled(store, bench);
  const id = known ?? randomUUID();
  await store.asPerson(
    person,
    async tx => {
      if (!known) await tx.insert(workshop).values({ workshop: thisWorkshop, name: bench });
      const here = await memberHere(tx, person);
      if (!here) await addOwner(tx, person);
      else await changeMember(tx, null, here.id, { role: 'owner' });
    },
    id,
  );
  return id;
}
