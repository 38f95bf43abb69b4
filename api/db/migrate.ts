import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Sql } from 'postgres';
import { refuse } from '../refusal.ts';
import { type Server, withConnection } from './server.ts';

/** One step of the schema: a file `migrations/NNNN-name.sql`. Its number is the schema version it leads to. */
export interface Migration {
  number: number;
  name: string;
  sql: string;
  sha256: string;
}

/** The folder of migrations, beside the sources and beside the built program alike. */
function migrationsFolder(): string {
  for (const up of ['../migrations/', '../../migrations/']) {
    const folder = fileURLToPath(new URL(up, import.meta.url));
    if (existsSync(folder)) return folder;
  }
  throw new Error('The folder "migrations" is missing beside the program.');
}

/** Every migration in order. A gap or a doubled number stops the program. */
export async function readMigrations(folder = migrationsFolder()): Promise<Migration[]> {
  const names = (await readdir(folder)).filter(name => /^\d{4}-[a-z0-9-]+\.sql$/.test(name)).sort();
  return Promise.all(
    names.map(async (name, index) => {
      const number = Number(name.slice(0, 4));
      if (number !== index + 1) throw new Error(`Migration ${name} is out of order: expected ${index + 1}.`);
      const sql = await readFile(`${folder}/${name}`, 'utf8');
      return { number, name, sql, sha256: createHash('sha256').update(sql).digest('hex') };
    }),
  );
}

export interface MigrateOptions {
  migrations?: Migration[];
  /** Go no further than this schema version. */
  upTo?: number;
  /** Called before the first pending migration of a database that holds anything; gets its schema version. */
  before?: (version: number) => Promise<void>;
}

/**
 * Brings the database to the newest schema, or up to `upTo`; answers the schema version it has then. Each migration
 * is one transaction as `fettle_owner`; processes that start at once wait for each other. A past migration that was
 * changed, and a database newer than the program, are refused.
 */
export async function migrate(server: Server, options: MigrateOptions = {}): Promise<number> {
  const migrations = options.migrations ?? (await readMigrations());
  return withConnection(server, 'fettle_admin', async sql => {
    await sql`select pg_advisory_lock(hashtext('fettlebench migrations'))`;
    const done = await readJournal(sql);
    checkJournal(done, migrations);
    const pending = migrations.slice(done.length, options.upTo ?? migrations.length);
    if (pending.length > 0 && done.length > 0) await options.before?.(done.length);
    for (const migration of pending) await apply(sql, migration);
    return done.length + pending.length;
  });
}

type Done = Pick<Migration, 'number' | 'name' | 'sha256'>;

async function readJournal(sql: Sql): Promise<Done[]> {
  return sql.begin(async tx => {
    await tx`set local role fettle_owner`;
    await tx`create table if not exists migration (
      number integer primary key,
      name text not null,
      sha256 text not null,
      at timestamptz not null default now()
    )`;
    await tx`grant select on migration to fettle_keeper`;
    return tx<Done[]>`select number, name, sha256 from migration order by number`;
  }) as Promise<Done[]>;
}

function checkJournal(done: Done[], migrations: Migration[]): void {
  if (done.length > migrations.length)
    throw refuse('database-newer', {
      place: 'data folder',
      message: `The data has schema version ${done.length}; this program knows versions up to ${migrations.length}.`,
      remedy: 'Start the newer program that this data was last opened with.',
    });
  for (const [index, one] of done.entries())
    if (one.sha256 !== migrations[index]!.sha256)
      throw refuse('migration-changed', {
        place: `migrations/${migrations[index]!.name}`,
        message: `This migration has been changed since it was applied to the data (as ${one.name}).`,
        remedy: 'Put the file back as it was and write the change as a new migration.',
      });
}

async function apply(sql: Sql, migration: Migration): Promise<void> {
  await sql.begin(async tx => {
    await tx`set local role fettle_owner`;
    await tx.unsafe(migration.sql).simple();
    // A migration may have become another role on its way.
    await tx`set local role fettle_owner`;
    await tx`insert into migration ${tx({ number: migration.number, name: migration.name, sha256: migration.sha256 })}`;
  });
}
