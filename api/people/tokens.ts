import { desc, eq, sql } from 'drizzle-orm';
import type { NewToken, TokenAnswer } from '../answers/people.ts';
import { apiToken } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { notFound } from '../refusal.ts';
import { mint } from './credential.ts';
import { type Doer, writeDown } from './write-down.ts';

const answerOf = (row: typeof apiToken.$inferSelect): TokenAnswer => ({
  id: row.id,
  name: row.name,
  scope: row.scope,
  state: row.revokedAt ? 'revoked' : row.until < new Date() ? 'over' : 'good',
  until: row.until.toISOString(),
  createdAt: row.createdAt.toISOString(),
  usedAt: row.usedAt?.toISOString() ?? null,
});

/** The bench's tokens, the newest first. */
export const listTokens = async (tx: Tx): Promise<TokenAnswer[]> =>
  (await tx.select().from(apiToken).orderBy(desc(apiToken.createdAt))).map(answerOf);

/** Makes a token without its secret, which `giveSecret` mints: an answer that is kept for a repeat holds none. */
export async function makeToken(tx: Tx, doer: Doer, { name, scope, days }: NewToken): Promise<TokenAnswer> {
  const [made] = await tx
    .insert(apiToken)
    .values({
      workshop: thisWorkshop,
      member: doer!.member!,
      name,
      scope,
      secret: '',
      until: sql`now() + make_interval(days => ${days})`,
    })
    .returning();
  await writeDown(tx, doer, 'token-made', { token: made!.id, kind: scope });
  return answerOf(made!);
}

/** Mints the secret of a token and answers its word, which is shown once. */
export async function giveSecret(tx: Tx, workshop: string, id: string): Promise<string> {
  const { word, digest } = mint('token', workshop, id);
  await tx.update(apiToken).set({ secret: digest }).where(eq(apiToken.id, id));
  return word;
}

/** From this moment the token lets nobody in. */
export async function revokeToken(tx: Tx, doer: Doer, id: string): Promise<TokenAnswer> {
  const [revoked] = await tx
    .update(apiToken)
    .set({ revokedAt: sql`coalesce(revoked_at, now())` })
    .where(eq(apiToken.id, id))
    .returning();
  if (!revoked) throw notFound('token', id);
  await writeDown(tx, doer, 'token-revoked', { token: id });
  return answerOf(revoked);
}
