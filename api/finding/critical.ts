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
 * Those of the sizes that a critical line takes. A line can be critical only where a model of its list is, or where a
 * person said something of a part; so where no list that has the size is of such a model and nobody said anything, no
 * line is looked at. A list with columns for several models has what is said of its own name and of each of them.
 */
export async function criticalSizes(tx: Tx, sizes: string[]): Promise<Set<string>> {
  if (sizes.length === 0) return new Set();
  const suspects = await tx.execute<{ size: string; list: string }>(sql`
    with listed as (
      select size_model.size, diagram.id as list, diagram.model
      from size_model join diagram on diagram.model = size_model.model
      where size_model.size in ${sizes}
      union
      select size_model.size, diagram.id, diagram.model
      from size_model
      join model_column on model_column.model = size_model.model
      join diagram on diagram.id = model_column.diagram
      where size_model.size in ${sizes}
    ),
    of_model as (
      select size, list, model from listed
      union
      select listed.size, listed.list, model_column.model
      from listed join model_column on model_column.diagram = listed.list
    )
    select of_model.size, of_model.list from of_model
    join duty on duty.model = of_model.model and duty.duty in ${criticalDuties}
    union
    select listed.size, listed.list from listed
    join row on row.diagram = listed.list
    join duty on duty.part = row.part and duty.duty in ${criticalDuties}`);
  const critical = new Set<string>();
  // A list's lines are looked at until one is critical: nearly always the first.
  for (const { size, list } of suspects) {
    if (critical.has(size)) continue;
    const which = sql`row.diagram = ${list} and row.part in (select id from part where part.size = ${size})`;
    const told = await lineDuties(tx, which);
    if ([...told.values()].some(duty => duty.critical)) critical.add(size);
  }
  return critical;
}
