import { sql } from 'drizzle-orm';
import { designationsOf, parseSize, toolsOf } from '../../indexer/index.ts';
import { notAnApproval } from '../../indexer/verdict.ts';
import type { SizeAnswer } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { criticalSizes } from '../duty/critical-sizes.ts';
import { openAttrs } from '../ordering/gather-pool.ts';
import { refuse } from '../refusal.ts';
import { nearSizes } from './near-sizes.ts';
import { usesOf } from './uses-of.ts';

/** A size: which lines take it and how we know, the articles of that size, and what comes near without being it. */
export async function sizePage(tx: Tx, size: string): Promise<SizeAnswer> {
  const parsed = parseSize(size);
  if (!parsed)
    throw refuse('not-found', {
      place: `size ${size}`,
      message: `"${size}" is not a size as sizes are written here.`,
      remedy: 'Find it first: GET /api/find?q= takes a size in any writing and answers how it is written.',
    });
  return {
    size,
    ...parsed,
    designations: designationsOf(parsed.category, parsed.dims),
    caution: (await criticalSizes(tx, [size])).has(size) ? notAnApproval : null,
    ...(await usesOf(tx, size)),
    items: await itemsOf(tx, size),
    near: await nearSizes(tx, size, 8),
    tools: toolsOf(parsed.category, parsed.dims),
  };
}

/** The articles of this size, each with what nothing states of it. */
async function itemsOf(tx: Tx, size: string): Promise<SizeAnswer['items']> {
  const rows = await tx.execute<{
    item: string;
    category: string;
    dims: never;
    attrs: never;
    parts: number;
  }>(sql`
    select item, min(category) as category, (array_agg(dims))[1] as dims, (array_agg(attrs))[1] as attrs,
           count(*)::int as parts
    from part where size = ${size} and item is not null
    group by item order by count(*) desc, item`);
  return rows.map(({ item, category, dims, attrs, parts }) => ({
    item,
    open: openAttrs(category, dims, attrs, size),
    parts,
  }));
}
