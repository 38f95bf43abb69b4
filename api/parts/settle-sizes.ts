import { sql } from 'drizzle-orm';
import type { Tx } from '../db/store.ts';
import { ofModel } from '../models/model-lines.ts';

/**
 * Keeps the sizes that finding looks through in line with the parts: those of the temporary table `touched` (id uuid,
 * size text as it was before), and the given models, whose lines were put in or taken out. Another model changes only
 * where a part that it names has got another size.
 */
export async function settleSizes(tx: Tx, models: string[]): Promise<void> {
  await tx.execute(sql`
    insert into size (workshop, size)
    select distinct this_workshop(), part.size from part join touched on touched.id = part.id
    where part.size is not null and part.size is distinct from touched.size
    order by part.size
    on conflict do nothing`);
  await tx.execute(sql`
    create temporary table resized on commit drop as
    select model::uuid from jsonb_array_elements_text(${JSON.stringify(models)}::jsonb) as given(model)
    union
    select of_model.model
    from touched
    join part on part.id = touched.id
    join row on row.part = part.id
    join diagram on diagram.id = row.diagram
    ${ofModel}
    where part.size is distinct from touched.size`);
  // Without statistics it is taken for thousands of models, and every line there is would be read.
  await tx.execute(sql`analyze resized`);
  await tx.execute(sql`
    create temporary table taken on commit drop as
    select distinct part.size, of_model.model
    from (
      select diagram.id from resized join diagram on diagram.model = resized.model
      union select model_column.diagram from resized join model_column on model_column.model = resized.model
    ) as list
    join diagram on diagram.id = list.id
    join row on row.diagram = diagram.id
    ${ofModel}
    join resized on resized.model = of_model.model
    join part on part.id = row.part
    where part.size is not null and not of_model.family`);
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
