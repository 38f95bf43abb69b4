-- Finding and claiming pass row-level security on purpose, because `@@`, `%` and LIKE are not leakproof and so use no
-- index under it. Each such function sets its search path, is closed to the public, filters by the workshop itself,
-- and returns keys alone; what they name is read back under row-level security.

-- Loads pg_trgm into this session, so that its settings are known when a function names one.
select show_trgm('bearing');

-- A role can be given a function only where it may create one.
grant create on schema public to fettle_find, fettle_claim;

grant select (workshop, id, number, number_key, find_words) on part to fettle_find;
grant select (workshop, word) on word to fettle_find;
grant select (workshop, opened_at, created_at) on workshop to fettle_find;
grant select (workshop, id, state, lease, lease_until, attempts, created_at),
      update (state, lease, lease_until, attempts) on diagram to fettle_claim;

-- The workshop that this transaction was opened for; null outside one.
create function this_workshop() returns uuid
  language sql stable
  return nullif(current_setting('app.workshop', true), '')::uuid;
revoke all on function this_workshop() from public;
grant execute on function this_workshop() to fettle_app, fettle_find;

-- The LIKE pattern for what begins with the text, nothing in it being a wildcard.
create function beginning(text) returns text
  language sql immutable
  return replace(replace(replace($1, '\', '\\'), '%', '\%'), '_', '\_') || '%';
revoke all on function beginning(text) from public;
grant execute on function beginning(text) to fettle_find;

-- Known words nearest to one as typed, the nearest first: itself, then those it begins, then those
-- that share fragments with it or hold something like it, by how many letters it takes to get there.
create function nearest_words(word text) returns setof text
  language sql stable security definer rows 50
  set search_path = pg_catalog, public, pg_temp
  -- Two letters changed about in a word of six leave it 0.27 alike.
  set pg_trgm.similarity_threshold = 0.25
as $$
  select known.word
  from word as known
  where known.workshop = this_workshop()
    and (known.word % lower($1) or known.word %> lower($1) or known.word like beginning(lower($1)))
  order by known.word = lower($1) desc, starts_with(known.word, lower($1)) desc,
           levenshtein(left(known.word, 100), left(lower($1), 100)), similarity(known.word, lower($1)) desc, known.word
  limit 8
$$;

-- Parts that hold every word, each as typed, as a beginning, or corrected to the nearest known word. Where no part
-- holds them all: those that hold the most of them. The best first.
create function find_parts_by_words(words text[]) returns setof uuid
  language sql stable security definer rows 50
  set search_path = pg_catalog, public, pg_temp
as $$
  with typed as (
    select distinct lower(word) as word from unnest(words) as word where word ~ '[[:alnum:]]'
  ),
  meant as (
    select typed.word, coalesce((select nearest from nearest_words(typed.word) as nearest limit 1), typed.word) as known
    from typed
  ),
  -- Quoted, so that nothing in it is an operator, and parsed as the parts' words were; `:*` also takes what it begins.
  terms as (
    select term from meant, to_tsquery('simple', '''' || replace(replace(
      case when starts_with(known, word) then word else known end, '\', '\\'), '''', '''''') || ''':*') as term
    where numnode(term) > 0
  ),
  asked as (
    select string_agg('(' || term::text || ')', ' & ')::tsquery as every,
           string_agg('(' || term::text || ')', ' | ')::tsquery as any_of
    from terms
  ),
  with_all as (
    select part.id, ts_rank(part.find_words, asked.every) as rank
    from part, asked
    where part.workshop = this_workshop() and part.find_words @@ (select every from asked)
    order by rank desc, part.id
    limit 200
  ),
  with_some as (
    select part.id, (select count(*) from terms where part.find_words @@ terms.term) as held,
           ts_rank(part.find_words, asked.any_of) as rank
    from part, asked
    where not exists (select from with_all)
      and part.workshop = this_workshop() and part.find_words @@ (select any_of from asked)
    order by held desc, rank desc, part.id
    limit 200
  ),
  found as (
    select id, 0::bigint as held, rank from with_all
    union all
    select id, held, rank from with_some
  )
  select id from found order by held desc, rank desc, id
$$;

-- Parts whose printed number holds a fragment, hyphens and spaces aside; whole numbers and beginnings first.
-- Fragments under three characters only as beginnings.
create function find_parts_by_number(fragment text) returns setof uuid
  language sql stable security definer rows 50
  set search_path = pg_catalog, public, pg_temp
as $$
  with typed as (select upper(regexp_replace(fragment, '[^[:alnum:]]', '', 'g')) as key)
  select part.id
  from part, typed
  where part.workshop = this_workshop()
    and typed.key <> ''
    and part.number is not null
    and part.number_key like (select case when length(key) < 3 then '' else '%' end || key || '%' from typed)
  order by part.number_key = typed.key desc, starts_with(part.number_key, typed.key) desc, part.number_key, part.id
  limit 200
$$;

-- The benches there are, the one last opened first.
create function benches() returns setof uuid
  language sql stable security definer rows 50
  set search_path = pg_catalog, public, pg_temp
as $$
  select workshop from workshop order by opened_at desc nulls last, created_at, workshop
$$;

-- Takes the document that has waited longest, of whichever workshop, for so many seconds. One whose reader was lost
-- waits again once its lease has run out. Two that claim at once never get the same one.
create function claim_diagram(lease_seconds integer) returns table (workshop uuid, id uuid, lease uuid)
  language sql volatile security definer rows 1
  set search_path = pg_catalog, public, pg_temp
as $$
  update diagram as claimed
  set state = 'reading', lease = gen_random_uuid(), attempts = claimed.attempts + 1,
      lease_until = clock_timestamp() + make_interval(secs => lease_seconds)
  where (claimed.workshop, claimed.id) = (
    select waiting.workshop, waiting.id
    from diagram as waiting
    where waiting.state = 'waiting' or (waiting.state = 'reading' and waiting.lease_until < clock_timestamp())
    order by waiting.created_at, waiting.id
    limit 1
    for update skip locked
  )
  returning claimed.workshop, claimed.id, claimed.lease
$$;

revoke all on function nearest_words(text), find_parts_by_words(text[]), find_parts_by_number(text),
  benches(), claim_diagram(integer) from public;
grant execute on function nearest_words(text), find_parts_by_words(text[]), find_parts_by_number(text),
  benches(), claim_diagram(integer) to fettle_app;

alter function nearest_words(text) owner to fettle_find;
alter function find_parts_by_words(text[]) owner to fettle_find;
alter function find_parts_by_number(text) owner to fettle_find;
alter function benches() owner to fettle_find;
alter function claim_diagram(integer) owner to fettle_claim;

revoke create on schema public from fettle_find, fettle_claim;
