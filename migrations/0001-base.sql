-- The tables of a workshop. Every key begins with the workshop, ids are random: no check can tell of another's rows.
-- Runs as fettle_owner. The journal of migrations is made by the runner before the first of them.

create extension if not exists pg_trgm;
create extension if not exists unaccent;
create extension if not exists fuzzystrmatch;

revoke all on schema public from public;
grant usage on schema public to fettle_app, fettle_find, fettle_claim, fettle_keeper;

-- Puts a table under the workshop's rule: row-level security, forced, one policy for reading and writing, and the
-- rights of the roles. Every table that holds a workshop's rows passes through here.
create function guard(target regclass) returns void
  language plpgsql
  set search_path = pg_catalog, public, pg_temp
as $$
declare
  own constant text := 'workshop = nullif(current_setting(''app.workshop'', true), '''')::uuid';
begin
  execute format('alter table %s enable row level security', target);
  execute format('alter table %s force row level security', target);
  execute format('create policy own_workshop on %s using (%s) with check (%s)', target, own, own);
  execute format('grant select, insert, update, delete on %s to fettle_app', target);
  execute format('grant select, insert on %s to fettle_keeper', target);
end
$$;
revoke all on function guard(regclass) from public;

create table workshop (
  workshop uuid primary key,
  name text not null,
  demo boolean not null default false,
  created_at timestamptz not null default now(),
  opened_at timestamptz
);

create table maker (
  workshop uuid not null references workshop (workshop),
  id uuid not null default gen_random_uuid(),
  name text not null,
  created_at timestamptz not null default now(),
  primary key (workshop, id)
);
create unique index maker_name on maker (workshop, lower(name));

create table model (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  maker uuid not null,
  name text not null,
  created_at timestamptz not null default now(),
  primary key (workshop, id),
  foreign key (workshop, maker) references maker (workshop, id)
);
create unique index model_name on model (workshop, maker, lower(name));

create table diagram (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  model uuid not null,
  name text not null,
  media_type text not null,
  bytes bytea not null,
  byte_count integer not null,
  sha256 text not null,
  state text not null default 'waiting',
  refusal jsonb,
  rows_done integer not null default 0,
  rows_total integer,
  pages integer,
  language text,
  unit text,
  lease uuid,
  lease_until timestamptz,
  attempts integer not null default 0,
  read_at timestamptz,
  created_at timestamptz not null default now(),
  primary key (workshop, id),
  foreign key (workshop, model) references model (workshop, id)
);
create index diagram_model on diagram (workshop, model);
create index diagram_state on diagram (state, created_at);

create table part (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  maker uuid not null,
  number text,
  number_key text not null,
  name text not null,
  category text not null,
  size text,
  item text,
  dims jsonb not null,
  attrs jsonb not null,
  certainty real not null default 0,
  review boolean not null default false,
  find_text text not null default '',
  find_words tsvector generated always as (to_tsvector('simple', find_text)) stored,
  created_at timestamptz not null default now(),
  primary key (workshop, id),
  foreign key (workshop, maker) references maker (workshop, id)
);
create unique index part_number on part (workshop, maker, number_key);
create index part_size on part (workshop, size);
create index part_item on part (workshop, item);
create index part_category on part (workshop, category);
create index part_find_words on part using gin (find_words);
create index part_number_fragments on part using gin (number_key gin_trgm_ops);

create table row (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  diagram uuid not null,
  position integer not null,
  key text not null,
  page integer not null,
  ref text not null,
  part_number text not null,
  description text not null,
  qty real,
  qty_text text not null,
  remarks text not null,
  place text not null,
  parent text,
  variants jsonb not null,
  outcome text not null,
  reason text,
  fault jsonb,
  part uuid,
  primary key (workshop, id),
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade,
  foreign key (workshop, part) references part (workshop, id)
);
create unique index row_position on row (workshop, diagram, position);
create unique index row_key on row (workshop, diagram, key);
create index row_part on row (workshop, part);

create table reading (
  workshop uuid not null,
  row uuid not null,
  text text not null,
  category text not null,
  dims jsonb not null,
  attrs jsonb not null,
  implied jsonb not null,
  qty real,
  size text,
  item text,
  certainty real not null,
  review boolean not null,
  alternatives jsonb not null,
  spans jsonb not null,
  notes jsonb not null,
  primary key (workshop, row),
  foreign key (workshop, row) references row (workshop, id) on delete cascade
);

create table correction (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  diagram uuid not null,
  row_key text not null,
  category text not null,
  dims jsonb not null,
  attrs jsonb not null,
  qty real,
  created_at timestamptz not null default now(),
  undone_at timestamptz,
  primary key (workshop, id),
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade
);
create unique index correction_standing on correction (workshop, diagram, row_key) where undone_at is null;

create table item (
  workshop uuid not null references workshop (workshop),
  id uuid not null default gen_random_uuid(),
  name text not null,
  category text not null,
  size text,
  created_at timestamptz not null default now(),
  primary key (workshop, id)
);
create unique index item_name on item (workshop, name);

create table evidence (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  part uuid not null,
  kind text not null,
  category text not null,
  size text,
  item text,
  dims jsonb not null,
  attrs jsonb not null,
  certainty real not null,
  diagram uuid,
  row_key text,
  detail text not null,
  created_at timestamptz not null default now(),
  primary key (workshop, id),
  foreign key (workshop, part) references part (workshop, id) on delete cascade,
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade
);
create index evidence_part on evidence (workshop, part);
create index evidence_diagram on evidence (workshop, diagram);

create table supersession (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  diagram uuid not null,
  part uuid not null,
  successor_number text not null,
  successor_key text not null,
  serial_from text,
  serial_to text,
  primary key (workshop, id),
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade,
  foreign key (workshop, part) references part (workshop, id) on delete cascade
);
create index supersession_part on supersession (workshop, part);

create table assembly (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  diagram uuid not null,
  parent_key text not null,
  child_key text not null,
  primary key (workshop, id),
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade
);
create index assembly_diagram on assembly (workshop, diagram);

create table row_fact (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  diagram uuid not null,
  row_key text not null,
  kind text not null,
  serial_from text,
  serial_to text,
  mirror_key text,
  primary key (workshop, id),
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade
);
create index row_fact_diagram on row_fact (workshop, diagram);

create table duty (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  model uuid,
  part uuid,
  duty text not null,
  standing text not null,
  word text,
  created_at timestamptz not null default now(),
  primary key (workshop, id),
  foreign key (workshop, model) references model (workshop, id) on delete cascade,
  foreign key (workshop, part) references part (workshop, id) on delete cascade,
  constraint duty_of_one check (num_nonnulls(model, part) = 1)
);
create unique index duty_model on duty (workshop, model);
create unique index duty_part on duty (workshop, part);

create table job (
  workshop uuid not null references workshop (workshop),
  id uuid not null default gen_random_uuid(),
  number integer not null,
  model uuid,
  serial text,
  owner text not null,
  fault text not null,
  limit_minor bigint,
  currency text,
  promised date,
  closed_at timestamptz,
  created_at timestamptz not null default now(),
  primary key (workshop, id),
  foreign key (workshop, model) references model (workshop, id)
);
create unique index job_number on job (workshop, number);

create table need (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  job uuid not null,
  part uuid,
  diagram uuid,
  row_key text,
  item text,
  qty real,
  note text not null default '',
  created_at timestamptz not null default now(),
  primary key (workshop, id),
  foreign key (workshop, job) references job (workshop, id) on delete cascade,
  foreign key (workshop, part) references part (workshop, id),
  constraint need_of_one check (num_nonnulls(part, item) = 1)
);
create index need_job on need (workshop, job);
create index need_part on need (workshop, part);

create table word (
  workshop uuid not null references workshop (workshop),
  word text not null,
  primary key (workshop, word)
);
create index word_fragments on word using gin (word gin_trgm_ops);

create table outbox (
  workshop uuid not null references workshop (workshop),
  id uuid not null default gen_random_uuid(),
  kind text not null,
  subject uuid not null,
  at timestamptz not null default now(),
  primary key (workshop, id)
);
create unique index outbox_subject on outbox (workshop, kind, subject);

create table idempotency (
  workshop uuid not null references workshop (workshop),
  key text not null,
  request text not null,
  status integer not null,
  answer jsonb not null,
  created_at timestamptz not null default now(),
  primary key (workshop, key)
);

select guard(name::regclass)
from unnest(array[
  'workshop', 'maker', 'model', 'diagram', 'part', 'row', 'reading', 'correction', 'item', 'evidence',
  'supersession', 'assembly', 'row_fact', 'duty', 'job', 'need', 'word', 'outbox', 'idempotency'
]) as name;
