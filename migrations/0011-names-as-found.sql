-- Names as finding compares them, so that they are not folded anew for each model at every question.
alter table maker add column find_key text not null generated always as (translate(lower(name), ' -./_,', '')) stored;
alter table model add column find_key text not null generated always as (translate(lower(name), ' -./_,', '')) stored;
