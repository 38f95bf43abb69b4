-- A bench can be erased, by whoever owns it. That the search engine has to hear of it outlives it, so what waits for the
-- engine hangs on no bench any more.
alter table outbox drop constraint outbox_workshop_fkey;

grant create on schema public to fettle_claim;
grant select (workshop), delete on audit to fettle_claim;

-- Takes the trail of this transaction's bench away: only together with the bench itself.
create function forget_trail() returns void
  language sql volatile security definer
  set search_path = pg_catalog, public, pg_temp
as $$
  delete from audit where workshop = this_workshop()
$$;
revoke all on function forget_trail() from public;
grant execute on function forget_trail() to fettle_app;
grant execute on function this_workshop() to fettle_claim;
alter function forget_trail() owner to fettle_claim;

revoke create on schema public from fettle_claim;
