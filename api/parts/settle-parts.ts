import { sql } from 'drizzle-orm';
import { categories, designationsOf, parseSize } from '../../indexer/index.ts';
import type { Tx } from '../db/store.ts';

/**
 * Gives every part of the temporary table `touched` (id uuid) its name, category, size and item from its evidence,
 * and the words it is found by. Evidence is weighed, never added up: a person's correction first, then what gives a
 * size, then print before measuring, then what states more. Where evidence of one rank does not agree, a person
 * should look.
 */
export async function settleParts(tx: Tx): Promise<void> {
  await planForMany(tx, () => updateParts(tx));
  await tx.execute(sql`
    insert into item (workshop, name, category, size)
    select distinct on (part.item) this_workshop(), part.item, part.category, part.size
    from part join touched on touched.id = part.id
    where part.item is not null
    order by part.item
    on conflict (workshop, name) do nothing`);
  await tx.execute(sql`
    insert into word (workshop, word)
    select distinct this_workshop(), word
    from touched
    join part on part.id = touched.id,
    regexp_split_to_table(part.find_text, ' ') as word
    where length(word) between 1 and 64
    order by word
    on conflict do nothing`);
  await tx.execute(sql`
    insert into outbox (workshop, kind, subject)
    select this_workshop(), 'part', id from touched order by id
    on conflict (workshop, kind, subject) do update set id = excluded.id, at = excluded.at`);
}

/** From how many parts on reading through tables is quicker than looking each part up. */
const many = 1000;

/**
 * Runs `work` without nested loops where many parts are touched. The rows of a large list are too new for the planner's
 * statistics: it takes them for a handful, and would compare each with each, in minutes instead of a second.
 */
async function planForMany(tx: Tx, work: () => Promise<void>): Promise<void> {
  const [touched] = await tx.execute<{ count: number }>(sql`select count(*)::int as count from touched`);
  if (touched!.count < many) return work();
  await tx.execute(sql`set local enable_nestloop = off`);
  await work();
  await tx.execute(sql`set local enable_nestloop = on`);
}

/** Attributes that make another article, of whichever category. */
const itemAttrs = [...new Set([...categories.values()].flatMap(category => category.itemAttrs))];

/**
 * The best evidence of each part, whether the rest agrees with it, and everything that finding looks through, as words
 * of letters and digits alone. In one statement, for each writes the part and all its indexes anew.
 */
async function updateParts(tx: Tx): Promise<void> {
  await tx.execute(sql`
    with said as (
      select evidence.*, coalesce(reading.review, false) as doubted,
             coalesce(row.description, evidence.detail) as name, model.name as model,
             (select string_agg(other.name, ' ') from model_column join model as other on other.id = model_column.model
              where model_column.diagram = evidence.diagram) as of_columns,
             bool_or(evidence.kind = 'corrected') over (partition by evidence.part) as person_spoke
      from touched
      join evidence on evidence.part = touched.id
      left join row on row.diagram = evidence.diagram and row.key = evidence.row_key
      left join reading on reading.row = row.id
      left join diagram on diagram.id = evidence.diagram
      left join model on model.id = diagram.model
    ),
    counted as (select * from said where kind = 'corrected' or not person_spoke),
    best as (
      select distinct on (part) *
      from counted
      order by part, size is null, array_position(array['corrected', 'printed', 'designation', 'stated', 'measured'], kind),
               (select count(*) from jsonb_object_keys(attrs)) desc, certainty desc, length(detail), detail, id
    ),
    sizes as (select part, count(distinct size) > 1 as differ from counted group by part),
    stated as (
      select part, bool_or(differ) as differ
      from (
        select counted.part, count(distinct attr.value) > 1 as differ
        from counted, jsonb_each(counted.attrs) as attr
        where attr.key in ${itemAttrs}
        group by counted.part, attr.key
      ) as attrs
      group by part
    ),
    told as (
      select part, string_agg(distinct detail, ' ') as words,
             concat_ws(' ', string_agg(distinct model, ' '), string_agg(distinct of_columns, ' ')) as models
      from said group by part
    ),
    called as (select key as size, value as words from jsonb_each_text(${await designationsHere(tx)}::jsonb))
    update part
    set name = best.name, category = best.category, size = best.size, item = best.item, dims = best.dims,
        attrs = best.attrs, certainty = best.certainty,
        review = sizes.differ or coalesce(stated.differ, false) or (best.doubted and not best.person_spoke),
        find_text = left(trim(regexp_replace(lower(concat_ws(' ', maker.name, own.number,
          case when own.number is not null then own.number_key end, best.category, told.words, called.words, told.models)),
          '[^[:alnum:]]+', ' ', 'g')), 20000)
    from best
    join part as own on own.id = best.part
    join maker on maker.id = own.maker
    join sizes on sizes.part = best.part
    join told on told.part = best.part
    left join stated on stated.part = best.part
    left join called on called.size = best.size
    where part.id = best.part`);
}

/** The designations of every size that is told of a touched part, by size, as JSON: `MR115` for bearing 5x11x4. */
async function designationsHere(tx: Tx): Promise<string> {
  const rows = await tx.execute<{ size: string }>(sql`
    select distinct evidence.size from evidence join touched on touched.id = evidence.part
    where evidence.size is not null`);
  const words = rows.map(({ size }) => {
    const parsed = parseSize(size);
    return [size, parsed ? designationsOf(parsed.category, parsed.dims).join(' ') : ''];
  });
  return JSON.stringify(Object.fromEntries(words));
}
