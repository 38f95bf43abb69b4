import type { Sql } from 'postgres';
import { refuse } from '../refusal.ts';
import { errorCode } from './errors.ts';
import { rolePassword, type Server, withConnection } from './server.ts';

/** Raised whenever the roles below change, so that the next start sets them up again. */
const rolesVersion = 'Fettlebench roles 1';

/**
 * The roles, each with no right beyond its work:
 * `fettle_owner` owns the tables and migrates; `fettle_app` serves, under row-level security; `fettle_find` owns the
 * finding functions and `fettle_claim` the claiming one, each seeing a few columns of every workshop; `fettle_keeper`
 * reads and fills every workshop for backup and restore. `fettle_login` may become `fettle_app` and has no right of
 * its own; `fettle_admin` may become owner and keeper, and no request ever uses it.
 */
const roles = [
  ['fettle_owner', 'nologin noinherit nobypassrls createdb'],
  ['fettle_find', 'nologin noinherit bypassrls nocreatedb'],
  ['fettle_claim', 'nologin noinherit bypassrls nocreatedb'],
  ['fettle_app', 'nologin noinherit nobypassrls nocreatedb'],
  ['fettle_keeper', 'nologin noinherit bypassrls nocreatedb'],
  ['fettle_login', 'login noinherit nobypassrls nocreatedb'],
  ['fettle_admin', 'login noinherit nobypassrls nocreatedb'],
] as const;

const memberships = [
  ['fettle_app', 'fettle_login'],
  ['fettle_owner', 'fettle_admin'],
  ['fettle_keeper', 'fettle_admin'],
  // Only so that a migration can hand its functions over.
  ['fettle_find', 'fettle_owner'],
  ['fettle_claim', 'fettle_owner'],
] as const;

/**
 * Makes roles and database where they are missing: the one step that needs the administrator. Afterwards it is seen
 * from `fettle_admin` that all is there, and the administrator never connects again.
 */
export async function prepareServer(server: Server): Promise<void> {
  if (await isPrepared(server)) return;
  await withConnection(
    server,
    'administrator',
    async sql => {
      await refuseOldServer(sql);
      // Several processes may start at once; the second waits here and finds the work done.
      await sql`select pg_advisory_lock(hashtext('fettlebench roles'))`;
      await makeRoles(sql, server);
      await makeDatabase(sql, server.database);
    },
    { database: await maintenanceDatabase(server) },
  );
}

/** True when `fettle_admin` can connect, the roles are of this version, and the database is the owner's. */
async function isPrepared(server: Server): Promise<boolean> {
  try {
    return await withConnection(server, 'fettle_admin', async sql => {
      const [row] = await sql<{ prepared: boolean }[]>`
        select pg_get_userbyid(datdba) = 'fettle_owner'
           and shobj_description(to_regrole('fettle_admin'), 'pg_authid') is not distinct from ${rolesVersion} as prepared
        from pg_database where datname = current_database()`;
      return row?.prepared === true;
    });
  } catch (error) {
    // No such password, role or database yet, or no right to connect: all of them are what preparing is for.
    if (['28P01', '28000', '3D000', '42501', '42704'].includes(errorCode(error) ?? '')) return false;
    throw error;
  }
}

/** The database to stand in while ours is made: `postgres` where there is one, else the one of the address. */
async function maintenanceDatabase(server: Server): Promise<string> {
  try {
    await withConnection(server, 'administrator', sql => sql`select 1`, { database: 'postgres' });
    return 'postgres';
  } catch (error) {
    if (errorCode(error) === '3D000') return server.database;
    throw error;
  }
}

async function refuseOldServer(sql: Sql): Promise<void> {
  const [row] = await sql<{ version: number; shown: string }[]>`
    select current_setting('server_version_num')::int as version, current_setting('server_version') as shown`;
  if (row!.version < 160000)
    throw refuse('database-too-old', {
      place: 'DATABASE_URL',
      message: `The database is PostgreSQL ${row!.shown}; 16 or later is needed.`,
      remedy: 'Use a PostgreSQL of version 16 or later.',
    });
}

async function makeRoles(sql: Sql, server: Server): Promise<void> {
  for (const [role, rights] of roles) {
    const [known] = await sql`select 1 from pg_roles where rolname = ${role}`;
    await sql.unsafe(`${known ? 'alter' : 'create'} role ${role} ${rights}`);
  }
  for (const [role, member] of memberships) {
    await sql.unsafe(`grant ${role} to ${member} with inherit false, set true`);
  }
  for (const role of ['fettle_login', 'fettle_admin'] as const)
    await sql.unsafe(`alter role ${role} password '${rolePassword(server, role)}'`);
  await sql.unsafe(`comment on role fettle_admin is '${rolesVersion}'`);
}

async function makeDatabase(sql: Sql, database: string): Promise<void> {
  const [known] = await sql<{ owner: string }[]>`
    select pg_get_userbyid(datdba) as owner from pg_database where datname = ${database}`;
  if (!known) await sql`create database ${sql(database)} owner fettle_owner template template0`;
  else if (known.owner !== 'fettle_owner') await sql`alter database ${sql(database)} owner to fettle_owner`;
  await sql.unsafe(databaseRights(database));
}

/** Who may connect and make temporary tables. Run as the owner of the database. */
export const databaseRights = (database: string) => {
  const name = `"${database.replaceAll('"', '""')}"`;
  return `revoke all on database ${name} from public;
    grant connect on database ${name} to fettle_login, fettle_admin;
    grant temporary on database ${name} to fettle_app, fettle_keeper;`;
};
