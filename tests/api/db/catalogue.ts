import type { Sql } from 'postgres';

/** The journal of migrations: no row of a workshop or a person. */
const journal = 'migration';
/** Counts of attempts: nobody's rows. Under row-level security without a policy, for `fettle_claim` alone. */
const counts = 'attempt';
/** What is a person's alone, under a rule of its own, as strict. */
const ofPersons = ['person', 'session', 'password_link'];

const texts = async (rows: Promise<{ complaint: string }[]>) => (await rows).map(row => row.complaint).sort();

/** Tables that are not under forced row-level security with exactly the one policy, or not the owner's. */
export const wrongTables = (sql: Sql) =>
  texts(sql<{ complaint: string }[]>`
    with tables as (
      select oid, relname, relkind, relrowsecurity, relforcerowsecurity, pg_get_userbyid(relowner) as owner
      from pg_class
      where relnamespace = 'public'::regnamespace and relkind in ('r', 'p', 'v', 'm', 'f')
        and relname <> ${journal}
    ),
    rule(name, whose, text) as (values
      ('own_workshop', false, '(workshop = (NULLIF(current_setting(''app.workshop''::text, true), ''''::text))::uuid)'),
      ('own_person', true, '(person = (NULLIF(current_setting(''app.person''::text, true), ''''::text))::uuid)')
    )
    select relname || ': a view, not a table' as complaint from tables where relkind not in ('r', 'p')
    union all
    select relname || ': row-level security is off' from tables where not relrowsecurity
    union all
    select relname || ': row-level security is not forced' from tables where not relforcerowsecurity
    union all
    select relname || ': owned by ' || owner from tables where owner <> 'fettle_owner'
    union all
    select relname || ': not exactly the one policy'
    from tables join rule on rule.whose = (relname = any (${ofPersons}))
    where case when relname = ${counts} then exists (select from pg_policy where polrelid = tables.oid) else
          1 <> (select count(*) from pg_policy where polrelid = tables.oid)
       or not exists (
         select from pg_policy
         where polrelid = tables.oid and polpermissive and polcmd = '*' and polroles = '{0}'
           and polname = rule.name and pg_get_expr(polqual, polrelid) = rule.text
           and pg_get_expr(polwithcheck, polrelid) = rule.text
       ) end`);

/**
 * Primary, unique and foreign keys that do not begin with the workshop, on either side; with the person, where it is
 * theirs. A sign-in name alone stands for one person among all.
 */
export const wrongKeys = (sql: Sql) =>
  texts(sql<{ complaint: string }[]>`
    with first as (
      select indexrelid::regclass::text as key, indrelid as of, indkey[0] as at
      from pg_index join pg_class on pg_class.oid = indrelid
      where indisunique and relnamespace = 'public'::regnamespace
      union all
      select conname, conrelid, conkey[1] from pg_constraint
      where contype = 'f' and connamespace = 'public'::regnamespace
      union all
      select conname, confrelid, confkey[1] from pg_constraint
      where contype = 'f' and connamespace = 'public'::regnamespace
    )
    select distinct first.key || ' on ' || of::regclass || ': does not begin with the workshop' as complaint
    from first
    where of::regclass::text not in (${journal}, ${counts}) and first.key <> 'person_sign_in'
      and (select attname from pg_attribute where attrelid = of and attnum = at) is distinct from
          case when of::regclass::text = any (${ofPersons}) then 'person' else 'workshop' end`);

/**
 * Functions that run with another's rights and break a rule. Finding ones are stable, filter by the workshop and give
 * keys; those that must look beyond one workshop are listed with what they give.
 */
export const wrongFunctions = (sql: Sql) =>
  texts(sql<{ complaint: string }[]>`
    with across(name, gives, owner) as (values
      ('benches', 'SETOF uuid', 'fettle_find'),
      ('claim_diagram', 'TABLE(workshop uuid, id uuid, lease uuid)', 'fettle_claim'),
      ('person_named', 'SETOF uuid', 'fettle_find'),
      ('benches_of_person', 'SETOF uuid', 'fettle_find'),
      ('count_attempt', 'integer', 'fettle_claim'),
      ('forget_attempts', 'void', 'fettle_claim'),
      ('forget_trail', 'void', 'fettle_claim')
    ),
    definer as (
      select pg_proc.*, pg_get_function_result(oid) as result, pg_get_userbyid(proowner) as has_owner,
             across.name is not null as looks_across, across.gives, coalesce(across.owner, 'fettle_find') as needs_owner
      from pg_proc left join across on across.name = proname
      where prosecdef and pronamespace = 'public'::regnamespace
    )
    select proname || ': sets no search path' as complaint from definer
    where not coalesce(proconfig @> array['search_path=pg_catalog, public, pg_temp'], false)
    union all
    select proname || ': owned by ' || has_owner from definer where has_owner <> needs_owner
    union all
    select proname || ': does not filter by the workshop' from definer
    where not looks_across and prosrc !~ 'workshop = this_workshop\\(\\)'
    union all
    select proname || ': returns more than keys' from definer
    where result <> coalesce(gives, case when proname = 'nearest_words' then 'SETOF text' else 'SETOF uuid' end)
    union all
    select proname || ': not stable' from definer where provolatile <> 's' and has_owner <> 'fettle_claim'
    union all
    select proname || ': not declared "rows 50"' from definer
    where prorows <> 50 and has_owner <> 'fettle_claim' and proname <> 'person_named'
    union all
    select proname || ': not in SQL' from definer
    where prolang not in (select oid from pg_language where lanname in ('sql', 'plpgsql'))
    union all
    select proname || ': runs a text as SQL' from definer where prosrc ~* '\\mexecute\\M'
    union all
    select proname || ': open to the public' from pg_proc
    where pronamespace = 'public'::regnamespace and has_function_privilege('public', oid, 'execute')
      and not exists (select from pg_depend where objid = pg_proc.oid and deptype = 'e')`);

/** Rights on tables beyond what each role's work needs. */
export const wrongGrants = (sql: Sql) =>
  texts(sql<{ complaint: string }[]>`
    with allowed(role, rights) as (values
      ('fettle_app', array['SELECT', 'INSERT', 'UPDATE', 'DELETE']),
      ('fettle_keeper', array['SELECT', 'INSERT'])
    ),
    exceptions(role, relation, rights) as (values
      ('fettle_app', 'migration', array['SELECT']), ('fettle_keeper', 'migration', array['SELECT']),
      ('fettle_app', 'attempt', '{}'), ('fettle_keeper', 'attempt', '{}'),
      ('fettle_claim', 'attempt', array['SELECT', 'INSERT', 'UPDATE', 'DELETE']),
      -- What was written down of a deed stays as it is.
      ('fettle_app', 'audit', array['SELECT', 'INSERT']),
      ('fettle_claim', 'audit', array['DELETE'])
    )
    select who.role || ' may ' || privilege_type || ' ' || relname as complaint
    from pg_class cross join aclexplode(relacl)
    cross join lateral (select case grantee when 0 then 'public' else pg_get_userbyid(grantee) end as role) as who
    left join exceptions on exceptions.role = who.role and exceptions.relation = relname
    left join allowed on allowed.role = who.role
    where relnamespace = 'public'::regnamespace and relkind in ('r', 'p', 'v') and grantee <> relowner
      and not privilege_type = any (coalesce(exceptions.rights, allowed.rights, '{}'))`);
