import { sql } from 'drizzle-orm';
import { designationsOf, parseSize } from '../../indexer/index.ts';
import { notAnApproval } from '../../indexer/verdict.ts';
import type { SizeHit } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { lineDuties } from '../duty/line-duty.ts';

/** Sizes as a list shows them, in the order given, with how many parts and models here have each. */
export async function sizeHits(tx: Tx, sizes: string[]): Promise<SizeHit[]> {
  const parsed = sizes.flatMap(size => {
    const one = parseSize(size);
    return one ? [{ size, ...one }] : [];
  });
  if (parsed.length === 0) return [];
  const counts = await tx.execute<{ size: string; parts: number; models: number }>(sql`
    select part.size, count(distinct part.id)::int as parts, count(distinct diagram.model)::int as models
    from part
    left join row on row.part = part.id
    left join diagram on diagram.id = row.diagram
    where part.size in ${sizes}
    group by part.size`);
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

/** Those of the sizes that a critical line takes. */
async function criticalSizes(tx: Tx, sizes: string[]): Promise<Set<string>> {
  const lines = await tx.execute<{ line: string; size: string }>(sql`
    select row.id as line, part.size from row join part on part.id = row.part where part.size in ${sizes}`);
  const duties = await lineDuties(tx, sql`row.part in (select id from part where size in ${sizes})`);
  return new Set(lines.filter(({ line }) => duties.get(line)?.critical).map(({ size }) => size));
}

/** Those of the parts that a critical line names. */
export async function criticalParts(tx: Tx, parts: string[]): Promise<Set<string>> {
  if (parts.length === 0) return new Set();
  const lines = await tx.execute<{ line: string; part: string }>(
    sql`select id as line, part from row where part in ${parts}`,
  );
  const duties = await lineDuties(tx, sql`row.part in ${parts}`);
  return new Set(lines.filter(({ line }) => duties.get(line)?.critical).map(({ part }) => part));
}
