import { type SQL, sql } from 'drizzle-orm';
import {
  compareSizes,
  easilyConfused,
  type Neighbourhood,
  nearness,
  neighbourhoodOf,
  parseSize,
  type Size,
} from '../../indexer/index.ts';
import type { NearSize, SizeHit } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { sizeHits } from './size-hits.ts';

/** A size near another; `confusable` where a person could take one for the other. */
export interface Near {
  size: string;
  to: string;
  confusable: boolean;
}

/** How many sizes of the neighbourhood are looked at. */
const mostLookedAt = 300;

/**
 * The sizes of the same category that this workshop has and that come nearest, never the size itself: first those that
 * a person could take for it, then those twice as far off, the nearest first.
 */
export async function nearestSizes(tx: Tx, size: string, most: number): Promise<Near[]> {
  const wanted = parseSize(size);
  if (!wanted) return [];
  const near = (await neighbours(tx, size, wanted)).flatMap(other => {
    const parsed = parseSize(other);
    const distance = parsed && nearness(wanted, parsed);
    if (parsed === null || distance === null) return [];
    return [{ size: other, confusable: easilyConfused(wanted, parsed), distance }];
  });
  return near
    .sort(
      (a, b) =>
        Number(b.confusable) - Number(a.confusable) || a.distance - b.distance || (a.size < b.size ? -1 : 1),
    )
    .slice(0, most)
    .map(({ size: other, confusable }) => ({ size: other, to: size, confusable }));
}

/** Sizes that parts here have, of the same thread and lengths not far off, or of the same lengths and a thread like it. */
async function neighbours(tx: Tx, size: string, wanted: Size): Promise<string[]> {
  const { thread, threads, lengths } = neighbourhoodOf(wanted, 2);
  const rows = await tx.execute<{ size: string }>(sql`
    select size from size
    where category = ${wanted.category} and size <> ${size} and cardinality(lengths) = ${lengths.length}
      and (${sameThread(thread, lengths)} ${likeThread(thread, threads, lengths)})
      and exists (select from part where part.size = size.size)
    order by ${distance(lengths)}, size limit ${mostLookedAt}`);
  return rows.map(row => row.size);
}

/** `lengths[n]` less the wanted one. */
const apart = ({ value }: Neighbourhood['lengths'][number], at: number): SQL =>
  sql`abs(lengths[${sql.raw(String(at + 1))}] - ${value}::double precision)`;

const within = (lengths: Neighbourhood['lengths']): SQL[] =>
  lengths.map((length, at) => sql`${apart(length, at)} <= ${length.reach}::double precision`);

const sameThread = (thread: string | null, lengths: Neighbourhood['lengths']): SQL =>
  sql.join([sql`thread is not distinct from ${thread}::text`, ...within(lengths)], sql` and `);

/** Another thread of like diameter, or the same one in another pitch, on the same lengths. */
function likeThread(thread: string | null, threads: string[], lengths: Neighbourhood['lengths']): SQL {
  if (thread === null) return sql``;
  const same = lengths.map((length, at) => sql`${apart(length, at)} = 0`);
  const like = sql`(thread = any(${`{${threads.join(',')}}`}::text[]) or starts_with(thread, ${`${thread.split('x')[0]}x`}))`;
  return sql`or ${sql.join([like, ...same], sql` and `)}`;
}

/** How far off over all lengths, each counted by its reach. */
const distance = (lengths: Neighbourhood['lengths']): SQL =>
  lengths.length === 0
    ? sql`1`
    : sql.join(
        lengths.map((length, at) => sql`${apart(length, at)} / ${length.reach}::double precision`),
        sql` + `,
      );

/** The same as they are answered, each with what differs. */
export async function nearSizes(tx: Tx, size: string, most: number): Promise<NearSize[]> {
  const near = await nearestSizes(tx, size, most);
  return asNear(
    near,
    await sizeHits(
      tx,
      near.map(one => one.size),
    ),
  );
}

/** Near sizes as they are answered, from what is known of each. */
export function asNear(near: readonly Near[], hits: readonly SizeHit[]): NearSize[] {
  const hitOf = new Map(hits.map(hit => [hit.size, hit]));
  return near.flatMap(({ size, to, confusable }) => {
    const hit = hitOf.get(size);
    const differences = compareSizes(parseSize(to)!, parseSize(size)!);
    return hit ? [{ ...hit, confusable, differences }] : [];
  });
}
