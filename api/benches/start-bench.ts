import { createHash } from 'node:crypto';
import type { Bench, NewBench } from '../answers/index.ts';
import { workshop } from '../db/schema/index.ts';
import type { Store, Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { once } from '../edge/once.ts';
import { benchOf } from './list-benches.ts';

/**
 * Starts a bench and opens it. Its id follows from the key, so that a repeat meets the same bench; the key then keeps
 * the answer in the bench itself.
 */
export function startBench(store: Store, key: string, request: string, { name }: NewBench): Promise<Bench> {
  return store.inWorkshop(benchId(key), async tx => {
    await tx
      .insert(workshop)
      .values({ workshop: thisWorkshop, name, openedAt: new Date() })
      .onConflictDoNothing();
    return once(tx, key, request, () => benchOf(tx));
  });
}

/** Makes this transaction's bench the one last opened. */
export async function openBench(tx: Tx): Promise<Bench> {
  await tx.update(workshop).set({ openedAt: new Date() });
  return benchOf(tx);
}

/** A name-based UUID (RFC 9562, version 8) of the key. */
function benchId(key: string): string {
  const bytes = createHash('sha256').update(`fettlebench bench ${key}`).digest().subarray(0, 16);
  bytes[6] = (bytes[6]! & 0x0f) | 0x80;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
