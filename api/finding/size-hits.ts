import { sql } from 'drizzle-orm';
import { designationsOf, parseSize } from '../../indexer/index.ts';
import { notAnApproval } from '../../indexer/verdict.ts';
import type { SizeHit } from '../answers/index.ts';
import { planned, textArray } from '../db/planned.ts';
import type { Tx } from '../db/store.ts';
import { criticalSizes } from '../duty/critical-sizes.ts';

/** Sizes as a list shows them, in the order given, with how many parts and models here have each. */
export async function sizeHits(tx: Tx, sizes: string[]): Promise<SizeHit[]> {
  const parsed = sizes.flatMap(size => {
    const one = parseSize(size);
    return one ? [{ size, ...one }] : [];
  });
  if (parsed.length === 0) return [];
  // Counted in one index each, however many parts there are.
  const counts = await planned<{ size: string; parts: number; models: number }>(
    tx,
    sql`
    select asked.size, (select count(*)::int from part where part.size = asked.size) as parts,
           (select count(*)::int from size_model where size_model.size = asked.size) as models
    from unnest(${textArray(sizes)}::text[]) as asked(size)`,
  );
  const countOf = new Map(counts.map(row => [row.size, row]));
  const critical = await criticalSizes(tx, sizes);
  return parsed.map(({ size, category, dims, implied }) => ({
    size,
    category,
    dims,
    implied,
    designations: designationsOf(category, dims),
    parts: countOf.get(size)?.parts ?? 0,
    models: countOf.get(size)?.models ?? 0,
    caution: critical.has(size) ? notAnApproval : null,
  }));
}
