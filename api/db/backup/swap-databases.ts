import { setTimeout as sleep } from 'node:timers/promises';
import type { Sql } from 'postgres';
import { refuse } from '../../refusal.ts';
import { errorCode } from '../errors.ts';
import { databaseRights } from '../roles.ts';
import { type Server, withConnection } from '../server.ts';

/** Runs `work` as the owner of our databases, standing in another one. */
function asOwnerBeside<T>(server: Server, work: (sql: Sql) => Promise<T>): Promise<T> {
  return withConnection(
    server,
    'fettle_admin',
    async sql => {
      await sql`set role fettle_owner`;
      return work(sql);
    },
    { database: 'postgres' },
  );
}

/** Makes an empty database beside ours. */
export async function createBeside(server: Server, database: string): Promise<Server> {
  await asOwnerBeside(server, async sql => {
    await sql`create database ${sql(database)} template template0`;
    await sql.unsafe(databaseRights(database));
  });
  return { ...server, database };
}

export async function dropBeside(server: Server, database: string): Promise<void> {
  await asOwnerBeside(server, sql => sql`drop database if exists ${sql(database)}`);
}

/** A name has 63 bytes at most, the moment's seventeen included. */
const keptName = (database: string) => `${database.slice(0, 30)}_before_restore_`;

/**
 * Puts the database `restored` in the place of ours, both renamed in one transaction; ours is kept beside it under
 * the name that is answered. Nobody may be connected to it: one that stays is told, with the remedy.
 */
export async function swapIn(server: Server, restored: string): Promise<string> {
  const stamp = new Date().toISOString().replace(/\D/g, '').slice(0, 17);
  const kept = keptName(server.database) + stamp;
  await asOwnerBeside(server, async sql => {
    for (const until = Date.now() + 5_000; ; await sleep(100)) {
      try {
        await sql.begin(async tx => {
          await tx`alter database ${tx(server.database)} rename to ${tx(kept)}`;
          await tx`alter database ${tx(restored)} rename to ${tx(server.database)}`;
        });
        return;
      } catch (error) {
        if (errorCode(error) !== '55006') throw error;
        if (Date.now() > until) throw stillInUse(error);
      }
    }
  });
  return kept;
}

const stillInUse = (cause: unknown) =>
  refuse(
    'in-use',
    {
      place: 'database',
      message: 'Another process is connected to the database, so the restored one cannot take its place.',
      remedy: 'Nothing was changed. Stop the other processes that use the database, and restore again.',
    },
    cause,
  );

/** Drops what former restores kept, but for the one named. */
export async function dropKept(server: Server, except: string): Promise<void> {
  await asOwnerBeside(server, async sql => {
    const old = await sql<{ name: string }[]>`
      select datname as name from pg_database
      where starts_with(datname, ${keptName(server.database)}) and datname <> ${except}`;
    for (const { name } of old) await sql`drop database ${sql(name)}`;
  });
}
