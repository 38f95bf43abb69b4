import { and, desc, eq, lt, or } from 'drizzle-orm';
import type { Trail } from '../answers/people.ts';
import { apiToken, audit, member } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { notFound } from '../refusal.ts';

/** Who did what, the latest first; `before` is the id of the last entry that was seen. */
export async function listTrail(tx: Tx, before: string | undefined, limit: number): Promise<Trail> {
  const from = before === undefined ? undefined : await momentOf(tx, before);
  const rows = await tx
    .select({
      id: audit.id,
      at: audit.at,
      deed: audit.deed,
      about: audit.about,
      member: audit.member,
      token: audit.token,
    })
    .from(audit)
    .where(from && or(lt(audit.at, from.at), and(eq(audit.at, from.at), lt(audit.id, from.id))))
    .orderBy(desc(audit.at), desc(audit.id))
    .limit(limit + 1);
  const members = new Map(
    (await tx.select({ id: member.id, name: member.name }).from(member)).map(one => [one.id, one.name]),
  );
  const tokens = new Map(
    (await tx.select({ id: apiToken.id, name: apiToken.name }).from(apiToken)).map(one => [one.id, one.name]),
  );
  const someone = (id: string | undefined | null) => (id ? { id, name: members.get(id) ?? null } : null);
  const program = (id: string | undefined | null) => (id ? { id, name: tokens.get(id) ?? null } : null);
  const entries = rows.slice(0, limit).map(({ id, at, deed, about, member: by, token }) => ({
    id,
    at: at.toISOString(),
    deed,
    by: someone(by),
    byToken: program(token),
    of: someone(about.member),
    ofToken: program(about.token),
    from: about.from ?? null,
    to: about.to ?? null,
    kind: about.kind ?? null,
  }));
  return { entries, next: rows.length > limit ? entries.at(-1)!.id : null };
}

async function momentOf(tx: Tx, id: string) {
  const [found] = await tx.select({ id: audit.id, at: audit.at }).from(audit).where(eq(audit.id, id));
  if (!found) throw notFound('entry', id);
  return found;
}
