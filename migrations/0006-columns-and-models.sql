-- What a document's tables were found to be, and what a person says that their columns hold.
alter table diagram add column tables jsonb not null default '[]';
alter table diagram add column columns jsonb;

-- The correction that put this row right as well, because it is like its own. No foreign key: it stays as history.
alter table correction add column taught_by uuid;

-- One list can hold several models, a column of quantities each: the model that a column counts for.
create table model_column (
  workshop uuid not null,
  diagram uuid not null,
  name text not null,
  model uuid not null,
  primary key (workshop, diagram, name),
  foreign key (workshop, diagram) references diagram (workshop, id) on delete cascade,
  foreign key (workshop, model) references model (workshop, id)
);
create index model_column_model on model_column (workshop, model);
select guard('model_column');
