import type { Sql } from 'postgres';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { connect } from '../../../api/db/server.ts';
import { createTestDatabase } from '../../support/postgres.ts';
import { wrongFunctions, wrongGrants, wrongKeys, wrongTables } from './catalogue.ts';

/** What breaks the rules is put into a database of its own and must be told; what is really there must not be. */
let sql: Sql;

beforeAll(async () => {
  const server = await createTestDatabase();
  sql = connect(server, 'fettle_admin');
  await sql`set role fettle_owner`;
});
afterAll(() => sql.end());

/** What `check` complains of once `change` is made; the change is undone. */
async function complaints(change: string, check: (sql: Sql) => Promise<string[]>): Promise<string[]> {
  const undo = new Error('undo');
  let found: string[] = [];
  await sql
    .begin(async tx => {
      await tx.unsafe(change).simple();
      found = await check(tx as unknown as Sql);
      throw undo;
    })
    .catch(error => expect(error).toBe(undo));
  return found;
}

test('every table is under the rule of its workshop', async () => expect(await wrongTables(sql)).toEqual([]));
test('every key begins with the workshop', async () => expect(await wrongKeys(sql)).toEqual([]));
test('every function that passes the rule keeps to its own', async () =>
  expect(await wrongFunctions(sql)).toEqual([]));
test('no role has more rights than its work needs', async () => expect(await wrongGrants(sql)).toEqual([]));

const guarded = "create table bad (workshop uuid, id uuid, primary key (workshop, id)); select guard('bad');";

describe('what is told of a table', () => {
  test.each([
    [
      'no row-level security',
      'create table bad (workshop uuid primary key)',
      'bad: row-level security is off',
    ],
    [
      'not forced',
      `${guarded} alter table bad no force row level security`,
      'bad: row-level security is not forced',
    ],
    ['no policy', `${guarded} drop policy own_workshop on bad`, 'bad: not exactly the one policy'],
    [
      'a second policy',
      `${guarded} create policy open on bad using (true)`,
      'bad: not exactly the one policy',
    ],
    [
      'no check on writing',
      `${guarded} drop policy own_workshop on bad; create policy own_workshop on bad
         using (workshop = nullif(current_setting('app.workshop', true), '')::uuid)`,
      'bad: not exactly the one policy',
    ],
    ['no workshop column', `${guarded} create table worse (id uuid)`, 'worse: row-level security is off'],
    [
      'a person’s table under a workshop’s rule',
      `drop policy own_person on session; create policy own_workshop on session using (true) with check (true)`,
      'session: not exactly the one policy',
    ],
    [
      'counts open to all',
      'create policy open on attempt using (true)',
      'attempt: not exactly the one policy',
    ],
    ['another owner', `${guarded} alter table bad owner to fettle_find`, 'bad: owned by fettle_find'],
  ])('%s', async (_, change, complaint) => {
    const prepare = change.includes('owner to') ? 'grant create on schema public to fettle_find;' : '';
    expect(await complaints(prepare + change, wrongTables)).toContain(complaint);
  });
  test('a view, which would run with the rights of its owner', async () => {
    expect(await complaints('create view seen as select * from part', wrongTables)).toContain(
      'seen: a view, not a table',
    );
  });
});

describe('what is told of a key', () => {
  test.each([
    ['a primary key', 'create table bad (id uuid primary key, workshop uuid)', 'bad_pkey on bad'],
    ['a unique key', 'create unique index bad_name on part (name)', 'bad_name on part'],
    [
      'a foreign key',
      'create unique index one on maker (id); create table bad (maker uuid references maker (id))',
      'bad_maker_fkey on bad',
    ],
  ])('%s', async (_, change, complaint) => {
    expect(await complaints(change, wrongKeys)).toContain(`${complaint}: does not begin with the workshop`);
  });
});

describe('what is told of a function', () => {
  const header = 'create function bad(text) returns setof uuid language sql stable security definer rows 50';
  const path = 'set search_path = pg_catalog, public, pg_temp';
  const body = 'as $$ select id from part where workshop = this_workshop() $$';
  const close = '; revoke all on function bad(text) from public';
  test.each([
    [
      'nothing of a good one',
      `${header} ${path} ${body}${close}; grant create on schema public to fettle_find;
      alter function bad(text) owner to fettle_find`,
      null,
    ],
    ['no search path', `${header} ${body}${close}`, 'sets no search path'],
    ['open to the public', `${header} ${path} ${body}`, 'open to the public'],
    [
      'more than keys',
      `${header.replace('setof uuid', 'setof part')} ${path}
      as $$ select * from part where workshop = this_workshop() $$${close}`,
      'returns more than keys',
    ],
    [
      'no workshop in it',
      `${header} ${path} as $$ select id from part $$${close}`,
      'does not filter by the workshop',
    ],
    [
      'the planner expects 1000 rows',
      `${header.replace('rows 50', '')} ${path} ${body}${close}`,
      'not declared "rows 50"',
    ],
    ['volatile', `${header.replace('stable', '')} ${path} ${body}${close}`, 'not stable'],
    ['of the owner', `${header} ${path} ${body}${close}`, 'owned by fettle_owner'],
  ])('%s', async (_, change, complaint) => {
    const told = await complaints(change, wrongFunctions);
    if (complaint) expect(told).toContain(`bad: ${complaint}`);
    else expect(told).toEqual([]);
  });
});

describe('what is told of a right', () => {
  test.each([
    ['finding may write', 'grant update on part to fettle_find', 'fettle_find may UPDATE part'],
    ['finding may see a whole table', 'grant select on part to fettle_find', 'fettle_find may SELECT part'],
    ['the login has a right', 'grant select on part to fettle_login', 'fettle_login may SELECT part'],
    ['the public has a right', 'grant select on part to public', 'public may SELECT part'],
    ['the trail may be changed', 'grant update on audit to fettle_app', 'fettle_app may UPDATE audit'],
    ['counts may be read', 'grant select on attempt to fettle_app', 'fettle_app may SELECT attempt'],
    ['the keeper may delete', 'grant delete on part to fettle_keeper', 'fettle_keeper may DELETE part'],
  ])('%s', async (_, change, complaint) => {
    expect(await complaints(change, wrongGrants)).toContain(complaint);
  });
});
