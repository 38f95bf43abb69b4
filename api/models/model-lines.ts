import { sql } from 'drizzle-orm';

/** What the model of a column of a list has of `row`, as the column says; null where it says nothing. */
const qtyOfColumn = sql`
  (select (each.value ->> 'qty')::real from jsonb_array_elements(row.variants) as each
   where each.value ->> 'model' = model_column.name limit 1)`;

/** What every model of a list has of `row`, where its columns agree on that. */
export const agreedQty = sql`
  (select case when count(distinct each.value ->> 'qty') = 1 then min(each.value ->> 'qty')::real end
   from jsonb_array_elements(row.variants) as each)`;

/** What each model of a list has of `row`: an object of quantities by model, empty where no column tells them apart. */
export const qtyByModel = sql`
  coalesce((select jsonb_object_agg(model_column.model, coalesce(${qtyOfColumn}, 0)) from model_column
            where model_column.diagram = row.diagram and row.variants <> '[]'), '{}')`;

/**
 * The models that a row is a line of, to be joined to `row` and `diagram`: `model`, its own `qty` where the list has a
 * column for each model, and `family`, true for the name that such a list goes by as a whole. A row whose column says
 * none of it is no line of that model; `qty` is null where the row's own quantity counts.
 */
export const ofModel = sql`
  join lateral (
    select counted.model, counted.qty, false as family
    from (
      select model_column.model, ${qtyOfColumn} as qty
      from model_column where model_column.diagram = diagram.id
    ) as counted
    where counted.qty > 0 or row.variants = '[]'
    union all
    select diagram.model, ${agreedQty},
           exists (select from model_column where model_column.diagram = diagram.id)
  ) as of_model on true`;

/** The lists of models: their own, and those with a column for one. */
export const listsOf = (...models: string[]) => sql`(
  select diagram.id from diagram where diagram.model in ${models}
  union select model_column.diagram from model_column where model_column.model in ${models})`;
