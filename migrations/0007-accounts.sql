-- People who sign in. A person stands outside the workshops, since one may work in several: what is theirs alone
-- (sign-in name, password, sessions) is under a rule of its own, as strict as a workshop's. What a workshop knows of
-- its people (name, role, tokens, who did what) is the workshop's.

-- Puts a table under the person's rule: row-level security, forced, one policy.
create function guard_person(target regclass) returns void
  language plpgsql
  set search_path = pg_catalog, public, pg_temp
as $$
declare
  own constant text := 'person = nullif(current_setting(''app.person'', true), '''')::uuid';
begin
  execute format('alter table %s enable row level security', target);
  execute format('alter table %s force row level security', target);
  execute format('create policy own_person on %s using (%s) with check (%s)', target, own, own);
  execute format('grant select, insert, update, delete on %s to fettle_app', target);
  execute format('grant select, insert on %s to fettle_keeper', target);
end
$$;
revoke all on function guard_person(regclass) from public;

create table person (
  person uuid primary key,
  sign_in text not null,
  password text not null,
  password_at timestamptz not null default now(),
  created_at timestamptz not null default now()
);
-- The one key that goes across people: a name stands for one person.
create unique index person_sign_in on person (sign_in);

create table session (
  person uuid not null references person (person) on delete cascade,
  id uuid not null default gen_random_uuid(),
  secret text not null,
  device text not null,
  created_at timestamptz not null default now(),
  seen_at timestamptz not null default now(),
  primary key (person, id)
);

-- A link by which a person sets a new password, once.
create table password_link (
  person uuid primary key references person (person) on delete cascade,
  secret text not null,
  until timestamptz not null
);

-- Someone who works here, or did. No foreign key to the person: a workshop's rows stay when a person goes, and no
-- check may tell of a person who is none of its own.
create table member (
  workshop uuid not null references workshop (workshop),
  id uuid not null default gen_random_uuid(),
  person uuid,
  name text,
  role text not null,
  created_at timestamptz not null default now(),
  opened_at timestamptz,
  left_at timestamptz,
  primary key (workshop, id),
  constraint member_role check (role in ('owner', 'repairer', 'counter', 'reader'))
);
create unique index member_person on member (workshop, person) where left_at is null;
create index member_of on member (person);

-- A link by which a member comes in, once: the first time, or after a forgotten password.
create table invitation (
  workshop uuid not null,
  member uuid not null,
  secret text not null,
  until timestamptz not null,
  primary key (workshop, member),
  foreign key (workshop, member) references member (workshop, id) on delete cascade
);

create table api_token (
  workshop uuid not null references workshop (workshop),
  id uuid not null default gen_random_uuid(),
  member uuid not null,
  name text not null,
  scope text not null,
  secret text not null,
  until timestamptz not null,
  created_at timestamptz not null default now(),
  used_at timestamptz,
  revoked_at timestamptz,
  primary key (workshop, id),
  foreign key (workshop, member) references member (workshop, id),
  constraint api_token_scope check (scope in ('read', 'write'))
);

-- Who did what, when. Holds ids alone, so that a name that is erased is gone from here too.
create table audit (
  workshop uuid not null references workshop (workshop),
  id uuid not null default gen_random_uuid(),
  at timestamptz not null default clock_timestamp(),
  member uuid,
  token uuid,
  deed text not null,
  about jsonb not null,
  primary key (workshop, id),
  foreign key (workshop, member) references member (workshop, id),
  foreign key (workshop, token) references api_token (workshop, id)
);
create index audit_at on audit (workshop, at, id);

select guard_person(name::regclass) from unnest(array['person', 'session', 'password_link']) as name;
select guard(name::regclass) from unnest(array['member', 'invitation', 'api_token', 'audit']) as name;

-- What was written down of a deed stays as it is.
revoke update, delete on audit from fettle_app;

-- How often something was tried lately: the same for every process. A bucket is a keyed digest of what it counts.
-- Nobody's rows: under row-level security without a policy, so that only the function below comes to it.
create table attempt (
  bucket text primary key,
  tries integer not null,
  until timestamptz not null
);
create index attempt_until on attempt (until);
alter table attempt enable row level security;
alter table attempt force row level security;

grant create on schema public to fettle_find, fettle_claim;

grant select (person, sign_in) on person to fettle_find;
grant select (workshop, person, opened_at, left_at) on member to fettle_find;
grant select, insert, update, delete on attempt to fettle_claim;

-- The person that this transaction was opened for; null outside one.
create function this_person() returns uuid
  language sql stable
  return nullif(current_setting('app.person', true), '')::uuid;
revoke all on function this_person() from public;
grant execute on function this_person() to fettle_app, fettle_find;

-- Who signs in by this name: the one step before it is known whose rows to look at.
create function person_named(sign_in text) returns setof uuid
  language sql stable security definer rows 1
  set search_path = pg_catalog, public, pg_temp
as $$
  select person from person where person.sign_in = $1
$$;

-- Where this person works, the bench they last opened first; with those they left, where asked for.
create function benches_of_person(left_too boolean) returns setof uuid
  language sql stable security definer rows 50
  set search_path = pg_catalog, public, pg_temp
as $$
  select member.workshop from member
  where member.person = this_person() and (left_too or member.left_at is null)
  order by member.opened_at desc nulls last, member.workshop
$$;

-- Counts one more try in a bucket. Answers the seconds to wait where there were more than `most` within `seconds`, else 0.
create function count_attempt(bucket text, most integer, seconds integer) returns integer
  language sql volatile security definer
  set search_path = pg_catalog, public, pg_temp
as $$
  with past as (
    delete from attempt where attempt.bucket in (
      select old.bucket from attempt as old
      where old.until < clock_timestamp() and old.bucket <> $1
      limit 20
      for update skip locked
    )
  )
  insert into attempt as counted (bucket, tries, until)
  values ($1, 1, clock_timestamp() + make_interval(secs => seconds))
  on conflict (bucket) do update set
    tries = case when counted.until < clock_timestamp() then 1 else counted.tries + 1 end,
    until = case when counted.until < clock_timestamp() then excluded.until else counted.until end
  returning case when tries > most then ceil(extract(epoch from until - clock_timestamp()))::integer else 0 end
$$;

-- Forgets what was counted in a bucket: the right password came.
create function forget_attempts(bucket text) returns void
  language sql volatile security definer
  set search_path = pg_catalog, public, pg_temp
as $$
  delete from attempt where attempt.bucket = $1
$$;

revoke all on function person_named(text), benches_of_person(boolean), count_attempt(text, integer, integer),
  forget_attempts(text) from public;
grant execute on function person_named(text), benches_of_person(boolean), count_attempt(text, integer, integer),
  forget_attempts(text) to fettle_app;

alter function person_named(text) owner to fettle_find;
alter function benches_of_person(boolean) owner to fettle_find;
alter function count_attempt(text, integer, integer) owner to fettle_claim;
alter function forget_attempts(text) owner to fettle_claim;

revoke create on schema public from fettle_find, fettle_claim;
