import { audit } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import type { Actor } from './actor.ts';
import type { About, Deed } from './deed.ts';

/** Who did it, as the trail keeps it: a member of the bench, a token, or neither for the one who runs the server. */
export type Doer = Pick<Actor, 'member' | 'token'> | null;

/** Adds a deed to the trail of this transaction's bench, so that it stands there if and only if it was done. */
export async function writeDown(tx: Tx, doer: Doer, deed: Deed, about: About = {}): Promise<void> {
  await tx.insert(audit).values({
    workshop: thisWorkshop,
    member: doer?.member ?? null,
    token: doer?.token ?? null,
    deed,
    about,
  });
}
