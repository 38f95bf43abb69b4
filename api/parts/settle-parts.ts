import { sql } from 'drizzle-orm';
import { type CategoryName, categories, designationsOf, parseSize } from '../../indexer/index.ts';
import type { Tx } from '../db/store.ts';

/**
 * Gives every part of the temporary table `touched` (id uuid) its name, category, size and item from its evidence,
 * and the words it is found by. Evidence is weighed, never added up: a person's correction first, then what gives a
 * size, then print before measuring, then what states more. Where evidence of one rank does not agree, a person
 * should look.
 */
export async function settleParts(tx: Tx): Promise<void> {
  await settleSizes(tx);
  await tx.execute(sql`
    insert into item (workshop, name, category, size)
    select distinct on (part.item) this_workshop(), part.item, part.category, part.size
    from part join touched on touched.id = part.id
    where part.item is not null
    order by part.item
    on conflict (workshop, name) do nothing`);
  await settleWords(tx);
  await tx.execute(sql`
    insert into outbox (workshop, kind, subject)
    select this_workshop(), 'part', id from touched order by id
    on conflict (workshop, kind, subject) do update set id = excluded.id, at = excluded.at`);
}

/** Attributes that make another article, of whichever category. */
const itemAttrs = [...new Set([...categories.values()].flatMap(category => category.itemAttrs))];

async function settleSizes(tx: Tx): Promise<void> {
  await tx.execute(sql`
    with said as (
      select evidence.*, touched.id as touched, coalesce(reading.review, false) as doubted,
             coalesce(row.description, evidence.detail) as name,
             bool_or(evidence.kind = 'corrected') over (partition by evidence.part) as person_spoke
      from touched
      join evidence on evidence.part = touched.id
      left join row on row.diagram = evidence.diagram and row.key = evidence.row_key
      left join reading on reading.row = row.id
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
    )
    update part
    set name = best.name, category = best.category, size = best.size, item = best.item, dims = best.dims,
        attrs = best.attrs, certainty = best.certainty,
        review = sizes.differ or coalesce(stated.differ, false) or (best.doubted and not best.person_spoke)
    from best
    join sizes on sizes.part = best.part
    left join stated on stated.part = best.part
    where part.id = best.part`);
}

/** Everything that finding looks through, as words of letters and digits alone, and those words in the list of known ones. */
async function settleWords(tx: Tx): Promise<void> {
  await tx.execute(sql`
    with told as (
      select evidence.part, string_agg(distinct evidence.detail, ' ') as words
      from evidence join touched on touched.id = evidence.part
      group by evidence.part
    ),
    used as (
      select row.part, string_agg(distinct model.name, ' ') as models
      from row
      join touched on touched.id = row.part
      join diagram on diagram.id = row.diagram
      join model on model.id = diagram.model
      group by row.part
    ),
    named as (
      select size, words from jsonb_each_text(${await sizeWords(tx)}::jsonb) as known(size, words)
    )
    update part
    set find_text = left(trim(regexp_replace(lower(concat_ws(' ', maker.name, part.number,
      case when part.number is not null then part.number_key end, part.category, told.words, named.words, used.models)),
      '[^[:alnum:]]+', ' ', 'g')), 20000)
    from touched
    left join told on told.part = touched.id
    left join used on used.part = touched.id,
    maker, part as own
    left join named on named.size = own.size
    where part.id = touched.id and own.id = touched.id and maker.id = part.maker`);
  await tx.execute(sql`
    insert into word (workshop, word)
    select distinct this_workshop(), word
    from touched
    join part on part.id = touched.id,
    regexp_split_to_table(part.find_text, ' ') as word
    where length(word) between 1 and 64
    order by word
    on conflict do nothing`);
}

/** Every designation of the sizes that are touched, by size, as JSON: `MR115` for bearing 5x11x4. */
async function sizeWords(tx: Tx): Promise<string> {
  const rows = await tx.execute<{ size: string; category: CategoryName }>(sql`
    select distinct part.size, part.category from part join touched on touched.id = part.id
    where part.size is not null`);
  const words = rows.map(({ size, category }) => {
    const parsed = parseSize(size);
    return [size, parsed ? designationsOf(category, parsed.dims).join(' ') : ''];
  });
  return JSON.stringify(Object.fromEntries(words));
}
