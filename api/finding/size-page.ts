import { sql } from 'drizzle-orm';
import { designationsOf, parseSize, toolsOf } from '../../indexer/index.ts';
import { notAnApproval } from '../../indexer/verdict.ts';
import type { SizeAnswer, Use } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { openAttrs } from '../ordering/gather-pool.ts';
import { listLines } from '../parts/list-lines.ts';
import { partRefs } from '../parts/part-refs.ts';
import { refuse } from '../refusal.ts';
import { nearSizes } from './near-sizes.ts';

/** A size: which lines take it and how we know, the articles of that size, and what comes near without being it. */
export async function sizePage(tx: Tx, size: string): Promise<SizeAnswer> {
  const parsed = parseSize(size);
  if (!parsed)
    throw refuse('not-found', {
      place: `size ${size}`,
      message: `"${size}" is not a size as sizes are written here.`,
      remedy: 'Find it first: GET /api/find?q= takes a size in any writing and answers how it is written.',
    });
  const uses = await usesOf(tx, size);
  return {
    size,
    ...parsed,
    designations: designationsOf(parsed.category, parsed.dims),
    caution: uses.some(use => use.duty.critical) ? notAnApproval : null,
    uses,
    items: await itemsOf(tx, size),
    near: await nearSizes(tx, size, 8),
    tools: toolsOf(parsed.category, parsed.dims),
  };
}

async function usesOf(tx: Tx, size: string): Promise<Use[]> {
  const lines = await listLines(tx, sql`row.part in (select id from part where part.size = ${size})`);
  const parts = await partRefs(tx, [...new Set(lines.flatMap(line => line.part ?? []))]);
  const told = await tx.execute<{ row: string; kind: string; detail: string; certainty: number }>(sql`
    select row.id as row, evidence.kind, evidence.detail, evidence.certainty
    from part
    join row on row.part = part.id
    join evidence on evidence.part = part.id and evidence.diagram = row.diagram and evidence.row_key = row.key
    where part.size = ${size}`);
  const evidence = new Map(told.map(({ row, ...one }) => [row, one]));
  return lines.map(line => ({
    part: parts.get(line.part!)!,
    model: line.model,
    diagram: line.diagram.id,
    row: line.row,
    ref: line.ref,
    qty: line.qty,
    qtyText: line.qtyText,
    evidence: evidence.get(line.row) ?? null,
    duty: line.duty,
  }));
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
