import { createHmac } from 'node:crypto';
import { sql } from 'drizzle-orm';
import type { Store } from '../db/store.ts';
import { refuse } from '../refusal.ts';

/** How often something may be tried within so many seconds. */
export interface Limit {
  most: number;
  seconds: number;
}

const quarter = 15 * 60;

/** Signing in: for one name, and from one address, whichever names. */
export const signInLimits = {
  name: { most: 10, seconds: quarter },
  address: { most: 50, seconds: quarter },
} satisfies Record<string, Limit>;

/** Using links that let in, from one address: nobody needs many. */
export const linkLimit: Limit = { most: 30, seconds: quarter };

/** Routes that cost much, each for one person or token: documents taken in, lists read, the bench taken out. */
export const routeLimits: Record<string, Limit> = {
  'POST /api/diagrams': { most: 120, seconds: quarter },
  'POST /api/diagrams/text': { most: 120, seconds: quarter },
  'GET /api/backup': { most: 10, seconds: quarter },
  'POST /api/read': { most: 120, seconds: quarter },
};

/** What is counted together. A keyed digest, so that neither names nor addresses stand in the database. */
const bucketOf = (store: Store, what: string, whose: string) =>
  createHmac('sha256', store.server.password).update(`fettlebench ${what}\n${whose}`).digest('base64url');

/** Counts one more try, for all processes together. Refused beyond the limit, with the seconds to wait. */
export async function countAttempt(
  store: Store,
  what: string,
  whose: string,
  { most, seconds }: Limit,
): Promise<void> {
  const bucket = bucketOf(store, what, whose);
  const wait = await store.asNobody(async tx => {
    const [row] = await tx.execute<{ wait: number }>(
      sql`select count_attempt(${bucket}, ${most}, ${seconds}) as wait`,
    );
    return row!.wait;
  });
  if (wait > 0)
    throw refuse('too-often', {
      place: what,
      message: 'This was tried too often lately.',
      wait,
      remedy: `Wait ${wait < 120 ? `${wait} seconds` : `${Math.ceil(wait / 60)} minutes`}, then try again.`,
    });
}

/** Starts the count anew: it was the right one. */
export async function forgetAttempts(store: Store, what: string, whose: string): Promise<void> {
  await store.asNobody(tx => tx.execute(sql`select forget_attempts(${bucketOf(store, what, whose)})`));
}
