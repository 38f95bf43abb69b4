import { createHash } from 'node:crypto';
import { eq } from 'drizzle-orm';
import type { Context } from 'hono';
import { idempotency } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { refuse } from '../refusal.ts';
import type { Service } from '../service.ts';
import type { AppEnv } from './bench.ts';

/** The key under which a client may repeat a POST without doing it twice. */
export function idempotencyKey(c: Context<AppEnv>): string {
  const key = c.req.header('Idempotency-Key')?.trim();
  if (key === undefined || !/^[\x21-\x7e]{8,200}$/.test(key))
    throw refuse('idempotency-key-missing', {
      place: 'Idempotency-Key',
      message: 'This changes something, and could be done twice if the answer is lost on the way.',
      remedy:
        'Send the header "Idempotency-Key" with 8 to 200 characters of your own, new for each deed, the same for each try.',
    });
  return key;
}

/** What a repeat must agree in: method, path and what was asked. */
export function fingerprint(c: Context<AppEnv>, asked: unknown): string {
  return createHash('sha256')
    .update(`${c.req.method} ${c.req.path}\n${JSON.stringify(asked)}`)
    .digest('hex');
}

/**
 * Does `work` once for a key: the answer is kept in the same transaction, and a repeat of the same request gets it
 * again. Two at once wait for each other on the key. The same key with another request is refused.
 */
export async function once<Answer>(
  tx: Tx,
  key: string,
  request: string,
  work: () => Promise<Answer>,
): Promise<Answer> {
  const claimed = await tx
    .insert(idempotency)
    .values({ workshop: thisWorkshop, key, request, status: 0, answer: {} })
    .onConflictDoNothing()
    .returning({ key: idempotency.key });
  if (claimed.length === 0) return kept<Answer>(tx, key, request);
  const answer = await work();
  await tx.update(idempotency).set({ status: 200, answer }).where(eq(idempotency.key, key));
  return answer;
}

async function kept<Answer>(tx: Tx, key: string, request: string): Promise<Answer> {
  const [known] = await tx
    .select({ request: idempotency.request, answer: idempotency.answer })
    .from(idempotency)
    .where(eq(idempotency.key, key));
  if (known?.request === request) return known.answer as Answer;
  throw refuse('idempotency-key-reused', {
    place: 'Idempotency-Key',
    message: 'This key was used before, for something else.',
    remedy: 'Use a new key for a new deed.',
  });
}

/** What a writing POST does, once for its key, in one transaction on the request's bench. `asked` is what it was asked. */
export function doOnce<Answer>(
  service: Service,
  c: Context<AppEnv>,
  asked: unknown,
  work: (tx: Tx) => Promise<Answer>,
): Promise<Answer> {
  const key = idempotencyKey(c);
  const request = fingerprint(c, asked);
  return service.store.inWorkshop(c.get('workshop'), tx => once(tx, key, request, () => work(tx)));
}
