import { sql } from 'drizzle-orm';
import { duties, isCritical } from '../../indexer/index.ts';
import type { Tx } from '../db/store.ts';
import { lineDuties } from '../duty/line-duty.ts';

const criticalDuties = duties.filter(isCritical);

/** Those of the parts that a critical line names. */
export async function criticalParts(tx: Tx, parts: string[]): Promise<Set<string>> {
  if (parts.length === 0) return new Set();
  const lines = await tx.execute<{ line: string; part: string }>(
    sql`select id as line, part from row where part in ${parts}`,
  );
  const told = await lineDuties(tx, sql`row.part in ${parts}`);
  return new Set(lines.filter(({ line }) => told.get(line)?.critical).map(({ part }) => part));
}

/**
 * Those of the sizes that a critical line takes. A line can be critical only where its model is, or where a person said
 * something of a part; so where no model that takes the size is and nobody said anything, no line is looked at.
 */
export async function criticalSizes(tx: Tx, sizes: string[]): Promise<Set<string>> {
  if (sizes.length === 0) return new Set();
  const suspects = await tx.execute<{ size: string; model: string }>(sql`
    select distinct size_model.size, size_model.model from size_model
    join duty on duty.model = size_model.model and duty.duty in ${criticalDuties}
    where size_model.size in ${sizes}
    union
    select distinct size_model.size, size_model.model from size_model
    join diagram on diagram.model = size_model.model
    join row on row.diagram = diagram.id
    join duty on duty.part = row.part and duty.duty in ${criticalDuties}
    where size_model.size in ${sizes}`);
  const critical = new Set<string>();
  // A model's lines are looked at until one is critical: nearly always the first.
  for (const { size, model } of suspects) {
    if (critical.has(size)) continue;
    const which = sql`diagram.model = ${model} and row.part in (select id from part where part.size = ${size})`;
    const told = await lineDuties(tx, which);
    if ([...told.values()].some(duty => duty.critical)) critical.add(size);
  }
  return critical;
}
