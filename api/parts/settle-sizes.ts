import { sql } from 'drizzle-orm';
import type { Tx } from '../db/store.ts';

/**
 * Keeps the sizes that finding looks through in line with the parts: those of the temporary table `touched` (id uuid,
 * size text as it was before), and the given model, whose lines were put in or taken out. Another model changes only
 * where a part that it names has got another size.
 */
export async function settleSizes(tx: Tx, model: string): Promise<void> {
  await tx.execute(sql`
    insert into size (workshop, size)
    select distinct this_workshop(), part.size from part join touched on touched.id = part.id
    where part.size is not null and part.size is distinct from touched.size
    order by part.size
    on conflict do nothing`);
  await tx.execute(sql`
    create temporary table resized on commit drop as
    select ${model}::uuid as model
    union
    select diagram.model
    from touched
    join part on part.id = touched.id
    join row on row.part = part.id
    join diagram on diagram.id = row.diagram
    where part.size is distinct from touched.size`);
  // Without statistics it is taken for thousands of models, and every line there is would be read.
  await tx.execute(sql`analyze resized`);
  await tx.execute(sql`
    create temporary table taken on commit drop as
    select distinct part.size, diagram.model
    from resized
    join diagram on diagram.model = resized.model
    join row on row.diagram = diagram.id
    join part on part.id = row.part
    where part.size is not null`);
  await tx.execute(sql`
    delete from size_model
    using resized
    where size_model.model = resized.model
      and not exists (select from taken where taken.size = size_model.size and taken.model = size_model.model)`);
  await tx.execute(sql`
    insert into size_model (workshop, size, model)
    select this_workshop(), size, model from taken order by size, model
    on conflict do nothing`);
  await tx.execute(sql`drop table resized, taken`);
}
