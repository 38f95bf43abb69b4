-- What of a document could not be read, and in how many stretches it is read; what is written on its pages, with places.
alter table diagram add column faults jsonb not null default '[]';
alter table diagram add column stretches integer not null default 1;
alter table page add column places jsonb not null default '[]';
