import { asc, eq, sql } from 'drizzle-orm';
import { type CategoryName, designationsOf, parseSize, toolsOf } from '../../indexer/index.ts';
import type { EvidenceAnswer, PartAnswer } from '../answers/index.ts';
import { diagram, evidence, part } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { gravest } from '../duty/line-duty.ts';
import { openAttrs } from '../ordering/gather-pool.ts';
import { notFound } from '../refusal.ts';
import { listLines } from './list-lines.ts';
import { partRefs, partRefsInOrder } from './part-refs.ts';
import { supersessionOf } from './supersession-of.ts';

/** A part with why it has its size, where it is used, and what it hangs together with. */
export async function partPage(tx: Tx, id: string): Promise<PartAnswer> {
  const ref = (await partRefs(tx, [id])).get(id);
  const [own] = await tx.select().from(part).where(eq(part.id, id));
  if (!ref || !own) throw notFound('part', id);
  const parsed = own.size === null ? null : parseSize(own.size);
  const told = await evidenceOf(tx, id);
  const lines = await listLines(tx, sql`row.part = ${id}`);
  return {
    ...ref,
    dims: own.dims,
    attrs: own.attrs,
    implied: parsed?.implied ?? {},
    open: openAttrs(own.category, own.dims, own.attrs, own.size),
    certainty: own.certainty,
    disagreement: disagreementOf(told),
    designations: parsed ? designationsOf(own.category as CategoryName, parsed.dims) : [],
    evidence: told,
    lines,
    supersession: await supersessionOf(tx, id),
    includes: await hangingTogether(tx, id, 'child'),
    partOf: await hangingTogether(tx, id, 'parent'),
    duty: gravest(lines.map(line => line.duty)),
    tools: toolsOf(own.category as CategoryName, own.dims, own.attrs),
  };
}

async function evidenceOf(tx: Tx, id: string): Promise<EvidenceAnswer[]> {
  const rows = await tx
    .select({ told: evidence, diagram: { id: diagram.id, name: diagram.name } })
    .from(evidence)
    .leftJoin(diagram, eq(diagram.id, evidence.diagram))
    .where(eq(evidence.part, id))
    .orderBy(
      sql`array_position(array['corrected', 'printed', 'designation', 'stated', 'measured'], ${evidence.kind})`,
      asc(evidence.createdAt),
      asc(evidence.detail),
    );
  return rows.map(({ told, diagram: list }) => ({
    kind: told.kind,
    category: told.category,
    size: told.size,
    item: told.item,
    dims: told.dims,
    attrs: told.attrs,
    certainty: told.certainty,
    detail: told.detail,
    diagram: list,
    createdAt: told.createdAt.toISOString(),
  }));
}

/** Sizes that evidence of one rank does not agree in; a person's word settles it. */
function disagreementOf(told: EvidenceAnswer[]): string | null {
  const corrected = told.filter(one => one.kind === 'corrected');
  const counted = corrected.length > 0 ? corrected : told;
  const sizes = [...new Set(counted.flatMap(one => one.size ?? []))];
  return sizes.length > 1 ? `The lists do not agree: ${sizes.join(' or ')}.` : null;
}

async function hangingTogether(tx: Tx, id: string, wanted: 'child' | 'parent') {
  const [own, other] =
    wanted === 'child'
      ? [sql`assembly.parent_key`, sql`assembly.child_key`]
      : [sql`assembly.child_key`, sql`assembly.parent_key`];
  const rows = await tx.execute<{ part: string }>(sql`
    select linked.part, min(linked.position) as position
    from row
    join assembly on assembly.diagram = row.diagram and ${own} = row.key
    join row as linked on linked.diagram = row.diagram and linked.key = ${other}
    where row.part = ${id} and linked.part is not null and linked.part <> ${id}
    group by linked.part
    order by position`);
  return partRefsInOrder(
    tx,
    rows.map(row => row.part),
  );
}
