-- What a document shows beside its list: its pages, as pictures made once, and the balloons on them.
create table page (
  workshop uuid not null,
  diagram uuid not null,
  number integer not null,
  width real not null,
  height real not null,
  words text not null default '',
  primary key (workshop, diagram, number),
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade
);

create table page_picture (
  workshop uuid not null,
  diagram uuid not null,
  page integer not null,
  width integer not null,
  height integer not null,
  bytes bytea not null,
  primary key (workshop, diagram, page, width),
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade
);

create table balloon (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  diagram uuid not null,
  page integer not null,
  ref text not null,
  x real not null,
  y real not null,
  primary key (workshop, id),
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade
);
create index balloon_diagram on balloon (workshop, diagram);

create table balloon_correction (
  workshop uuid not null,
  id uuid not null default gen_random_uuid(),
  diagram uuid not null,
  page integer not null,
  from_ref text,
  from_x real,
  from_y real,
  ref text,
  x real,
  y real,
  replaces uuid,
  created_at timestamptz not null default now(),
  ended_at timestamptz,
  primary key (workshop, id),
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade,
  constraint balloon_correction_says check (from_ref is not null or ref is not null)
);
create index balloon_correction_standing on balloon_correction (workshop, diagram) where ended_at is null;

-- Where a row stands on its page, as fractions of it; null where its document has no pages.
alter table row add column area jsonb;

select guard(name::regclass) from unnest(array['page', 'page_picture', 'balloon', 'balloon_correction']) as name;
