import { randomUUID } from 'node:crypto';
import { and, desc, eq, ne, sql } from 'drizzle-orm';
import { session } from '../db/schema/index.ts';
import type { Store, Tx } from '../db/store.ts';
import { thisPerson } from '../db/this-workshop.ts';
import { notFound } from '../refusal.ts';
import { matches, mint, parse } from './credential.ts';

/** A session ends when it was not seen for 14 days, and after 90 in any case. */
export const lasts = { unseenDays: 14, days: 90 };

export const standing = sql`${session.seenAt} > now() - make_interval(days => ${lasts.unseenDays})
  and ${session.createdAt} > now() - make_interval(days => ${lasts.days})`;

/** Starts a session in this transaction's person; answers the word that the browser keeps. What has ended is swept out. */
export async function startSession(tx: Tx, person: string, device: string): Promise<string> {
  await tx.delete(session).where(sql`not (${standing})`);
  const id = randomUUID();
  const { word, digest } = mint('session', person, id);
  await tx.insert(session).values({ person: thisPerson, id, secret: digest, device });
  return word;
}

/** The person and the session that a browser's word stands for; null where it has ended, or never was. */
export async function sessionOf(
  store: Store,
  word: string,
): Promise<{ person: string; session: string } | null> {
  const credential = parse('session', word);
  if (!credential) return null;
  const { owner, id } = credential;
  const [found] = await store.asPerson(owner, tx =>
    tx
      .select({ secret: session.secret })
      .from(session)
      .where(and(eq(session.id, id), standing)),
  );
  return found && matches(credential, found.secret) ? { person: owner, session: id } : null;
}

/** The person's sessions, the one last seen first. */
export const listSessions = (store: Store, person: string, current: string) =>
  store.asPerson(person, async tx => {
    const rows = await tx
      .select({
        id: session.id,
        device: session.device,
        createdAt: session.createdAt,
        seenAt: session.seenAt,
      })
      .from(session)
      .where(standing)
      .orderBy(desc(session.seenAt));
    return rows.map(({ createdAt, seenAt, ...row }) => ({
      ...row,
      startedAt: createdAt.toISOString(),
      seenAt: seenAt.toISOString(),
      current: row.id === current,
    }));
  });

/** Ends one session, wherever it is open. */
export async function endSession(store: Store, person: string, id: string): Promise<void> {
  const ended = await store.asPerson(person, tx =>
    tx.delete(session).where(eq(session.id, id)).returning({ id: session.id }),
  );
  if (ended.length === 0) throw notFound('session', id);
}

/** Ends every session but one. */
export async function endOtherSessions(tx: Tx, keep: string): Promise<void> {
  await tx.delete(session).where(ne(session.id, keep));
}
