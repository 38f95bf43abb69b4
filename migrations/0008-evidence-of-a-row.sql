-- The evidence that a row gave is looked up by its key, one row at a time: by the list alone every other row of it is read too.
create index evidence_row on evidence (workshop, diagram, row_key);
drop index evidence_diagram;
