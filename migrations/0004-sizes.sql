-- Loads pg_trgm into this session, so that its settings are known when a function names one.
select show_trgm('bearing');

-- Sizes apart from the parts that have them, so that what is near is looked for among sizes and not among parts.

create table size (
  workshop uuid not null references workshop (workshop),
  size text not null,
  category text not null generated always as (split_part(size, ' ', 1)) stored,
  -- With its pitch where it is metric, as the size writes it; null for a size of lengths alone.
  thread text generated always as (substring(size from
    '^\S+ (M[0-9.]+x[0-9.]+|[0-9]+(?:/[0-9]+)?-[0-9]+|[0-9]+BA)')) stored,
  -- The other figures in order, in millimetres.
  lengths double precision[] not null generated always as (coalesce(string_to_array(nullif(substring(size from
    '^\S+ (?:(?:M[0-9.]+x[0-9.]+|[0-9]+(?:/[0-9]+)?-[0-9]+|[0-9]+BA)(?:x|$))?((?:[0-9]+(?:\.[0-9]+)?(?:x|$))*)$'), ''),
    'x')::double precision[], '{}')) stored,
  primary key (workshop, size)
);
create index size_category on size (workshop, category);

-- Which models take a size, in whichever of their lists.
create table size_model (
  workshop uuid not null,
  size text not null,
  model uuid not null,
  primary key (workshop, size, model),
  foreign key (workshop, model) references model (workshop, id) on delete cascade
);
create index size_model_model on size_model (workshop, model);

select guard('size'), guard('size_model');

-- Parts of a size come in the order of their numbers without being sorted.
drop index part_size;
create index part_size on part (workshop, size, number_key);

-- What is there already. The owner is under row-level security too, so the keeper puts it in.
set local role fettle_keeper;
insert into size (workshop, size) select distinct workshop, size from part where size is not null;
insert into size_model (workshop, size, model)
select distinct part.workshop, part.size, diagram.model
from part
join row on row.workshop = part.workshop and row.part = part.id
join diagram on diagram.workshop = row.workshop and diagram.id = row.diagram
where part.size is not null;
set local role fettle_owner;

-- Only words without digits are ever taken for others, so only their fragments are looked through. Whatever begins
-- with what was typed is found by its order.
drop index word_fragments;
create index word_fragments on word using gin (word gin_trgm_ops) where word !~ '[0-9]';
create index word_beginning on word (workshop, word text_pattern_ops);

grant create on schema public to fettle_find;
drop function find_parts_by_words(text[]);
drop function nearest_words(text);

-- Known words nearest to one as typed, the nearest first: itself, then those it begins, then, where it has no digit,
-- those that share fragments with it or hold something like it, by how many letters it takes to get there.
create function nearest_words(word text) returns setof text
  language plpgsql stable security definer rows 50
  set search_path = pg_catalog, public, pg_temp
  -- Two letters changed about in a word of six leave it 0.27 alike.
  set pg_trgm.similarity_threshold = 0.25
as $$
declare
  typed constant text := lower(word);
begin
  return query
    select known.word from word as known where known.workshop = this_workshop() and known.word = typed;
  if found then return; end if;
  return query
    select known.word from word as known
    where known.workshop = this_workshop()
      and known.word ~>=~ typed and known.word ~<~ (typed || chr(1114111))
    order by known.word using ~<~
    limit 8;
  if found or typed ~ '[0-9]' then return; end if;
  return query
    select known.word from word as known
    where known.workshop = this_workshop() and known.word !~ '[0-9]'
      and (known.word % typed or known.word %> typed)
    order by levenshtein(left(known.word, 100), left(typed, 100)), similarity(known.word, typed) desc, known.word
    limit 8;
end
$$;

-- Parts that hold every word as it is, or what begins with it; a number only as it is where it is known. Where no part
-- holds them all: those that lack one of them, then those that hold any. The best first, of the first two thousand.
create function find_parts_by_words(words text[]) returns setof uuid
  language plpgsql stable security definer rows 50
  set search_path = pg_catalog, public, pg_temp
  -- How many parts hold a word is not known when this is planned.
  set enable_seqscan = off
as $$
declare
  terms tsquery[];
  every tsquery;
  but_one tsquery;
  any_of tsquery;
begin
  -- Quoted, so that nothing in it is an operator, and parsed as the parts' words were; `:*` also takes what it begins.
  select array_agg(term) into terms
  from (
    select to_tsquery('simple', '''' || replace(replace(typed, '\', '\\'), '''', '''''') || '''' ||
      case when length(typed) > 1 and (typed !~ '[0-9]' or not exists (
        select from word as known where known.workshop = this_workshop() and known.word = typed
      )) then ':*' else '' end) as term
    from (select distinct lower(word) as typed from unnest(words) as word where word ~ '[[:alnum:]]') as typed
  ) as parsed
  where numnode(term) > 0;
  if terms is null then return; end if;

  select string_agg('(' || term::text || ')', ' & ')::tsquery, string_agg('(' || term::text || ')', ' | ')::tsquery
  into every, any_of from unnest(terms) as term;
  return query
    select held.id
    from (
      select part.id, part.find_words from part
      where part.workshop = this_workshop() and part.find_words @@ every limit 2000
    ) as held
    order by ts_rank(held.find_words, every) desc, held.id
    limit 200;
  if found or cardinality(terms) = 1 then return; end if;

  select string_agg('(' || rest || ')', ' | ')::tsquery into but_one
  from (
    select string_agg('(' || term.query::text || ')', ' & ') as rest
    from generate_series(1, cardinality(terms)) as lacked(place)
    join unnest(terms) with ordinality as term(query, place) on term.place <> lacked.place
    group by lacked.place
  ) as without;
  return query
    select held.id
    from (
      select part.id, part.find_words from part
      where part.workshop = this_workshop() and part.find_words @@ but_one limit 2000
    ) as held
    order by ts_rank(held.find_words, any_of) desc, held.id
    limit 200;
  if found then return; end if;

  return query
    select held.id
    from (
      select part.id, part.find_words from part
      where part.workshop = this_workshop() and part.find_words @@ any_of limit 2000
    ) as held
    order by (select count(*) from unnest(terms) as term where held.find_words @@ term) desc,
             ts_rank(held.find_words, any_of) desc, held.id
    limit 200;
end
$$;

revoke all on function nearest_words(text), find_parts_by_words(text[]) from public;
grant execute on function nearest_words(text), find_parts_by_words(text[]) to fettle_app;
alter function nearest_words(text) owner to fettle_find;
alter function find_parts_by_words(text[]) owner to fettle_find;
revoke create on schema public from fettle_find;
