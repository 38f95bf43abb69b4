import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import postgres from 'postgres';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { isRoot } from '../../../api/db/account.ts';
import type { Cluster } from '../../../api/db/cluster.ts';
import { type EmbeddedOptions, openEmbedded } from '../../../api/db/open-cluster.ts';
import { isAlive } from '../../../api/db/postmaster.ts';
import { withConnection } from '../../../api/db/server.ts';
import { openStore } from '../../../api/db/store.ts';
import { type Folders, makeFolders } from '../../support/folders.ts';

let folders: Folders;
let open: Cluster[] = [];

beforeAll(async () => {
  folders = await makeFolders();
});
afterEach(async () => {
  for (const cluster of open) await cluster.close();
  open = [];
});
afterAll(() => folders.cleanUp());

async function openFolder(folder: string, options: EmbeddedOptions = {}): Promise<Cluster> {
  const cluster = await openEmbedded(folder, { ...folders.options, ...options });
  open.push(cluster);
  return cluster;
}

const ask = async (cluster: Cluster, question: string) =>
  withConnection(
    cluster.server,
    'fettle_login',
    async sql => Object.values((await sql.unsafe(question))[0]!)[0],
    {
      database: 'postgres',
    },
  );

describe('a data folder', () => {
  test('in a path with spaces, quotes and 200 characters', async () => {
    const odd = join(
      folders.root,
      `a bench's "own" folder ${'long '.repeat(60)}`.slice(0, 200 - folders.root.length - 6),
    );
    const folder = join(odd.trimEnd(), 'data');
    await mkdir(odd, { recursive: true });
    const store = await openStore(await openFolder(folder));
    expect(await store.benches()).toEqual([]);
    await store.close();
  });

  test('belongs to one process: a second is told who has it', async () => {
    const folder = await folders.fresh('two');
    const first = await openFolder(folder, { port: 4180 });
    const second = openFolder(folder);
    await expect(second).rejects.toMatchObject({ code: 'folder-in-use' });
    await expect(second).rejects.toThrow(
      new RegExp(`process: number ${process.pid}, which serves on port 4180 since \\d{4}-\\d\\d-\\d\\dT`),
    );
    await first.announce(5001);
    await expect(openFolder(folder)).rejects.toThrow('port 5001');
    // The one that was refused left the holder's PostgreSQL alone.
    expect(await ask(first, 'select 1')).toBe(1);
  });

  test('is closed in order, and PostgreSQL with it', async () => {
    const folder = await folders.fresh('closed');
    const cluster = await openEmbedded(folder, folders.options);
    const pid = folders.postgresOf(folder)!;
    const socketFolder = cluster.server.at.replace(/\/[^/]*$/, '');
    expect(statSync(socketFolder).mode & 0o777).toBe(0o700);
    await cluster.close();
    expect(isAlive(pid)).toBe(false);
    expect(existsSync(socketFolder)).toBe(false);
    expect(readFileSync(join(folder, 'postgres.log'), 'utf8')).toContain('database system is shut down');
  });

  test('of another major version is refused with both versions and the way over', async () => {
    const folder = await folders.fresh('old');
    writeFileSync(join(folder, 'postgres/PG_VERSION'), '15\n');
    const opening = openFolder(folder);
    await expect(opening).rejects.toMatchObject({
      code: 'other-major-version',
      remedy: expect.stringContaining('backup'),
    });
    await expect(opening).rejects.toThrow(/PostgreSQL 15; the programs here are PostgreSQL 18/);
  });

  test('whose postmaster.pid names some other process that lives is opened all the same', async () => {
    const folder = await folders.fresh('reused');
    const pidFile = join(folder, 'postgres/postmaster.pid');
    writeFileSync(
      pidFile,
      `${process.ppid}\n${join(folder, 'postgres')}\n1700000000\n5432\n/tmp\n\n  1  1\nready\n`,
    );
    if (isRoot()) execFileSync('chown', ['--reference', join(folder, 'postgres'), pidFile]);
    expect(await ask(await openFolder(folder), 'select 1')).toBe(1);
  });

  test('where making the database was broken off is made anew', async () => {
    const folder = join(folders.root, 'broken off');
    await mkdir(join(folder, `postgres.new-${process.pid}/data`), { recursive: true });
    await openFolder(folder);
    expect(existsSync(join(folder, 'postgres/PG_VERSION'))).toBe(true);
  });

  test('that cannot be made is refused with its name', async () => {
    writeFileSync(join(folders.root, 'a file'), '');
    await expect(openFolder(join(folders.root, 'a file/data'))).rejects.toMatchObject({
      code: 'folder-not-writable',
      place: expect.stringContaining('a file/data'),
    });
  });
});

describe('PostgreSQL in it', () => {
  let cluster: Cluster;
  let folder: string;
  const settings = async (name: string) => ask(cluster, `show ${name}`);

  beforeAll(async () => {
    folder = await folders.fresh('settings');
    cluster = await openEmbedded(folder, folders.options);
  });
  afterAll(() => cluster.close());

  test('listens on no network', async () => expect(await settings('listen_addresses')).toBe(''));
  test('is durable', async () => {
    for (const name of ['fsync', 'synchronous_commit', 'full_page_writes'])
      expect(await settings(name)).toBe('on');
  });
  test('knows the letters of every script', async () => {
    // show_trgm is in the application's database only.
    const [row] = await withConnection(
      { ...cluster.server, database: 'postgres' },
      'fettle_login',
      sql => sql`
      select datlocprovider as provider, datlocale as locale, datctype as letters from pg_database
      where datname = current_database()`,
    );
    expect(row).toEqual({ provider: 'b', locale: 'C.UTF-8', letters: expect.stringMatching(/UTF-8$/) });
  });
  test('lets nobody in without the password, not even its own user', async () => {
    for (const user of ['postgres', 'fettle_admin', 'fettle_login'])
      for (const password of ['', 'postgres', user]) {
        const sql = postgres({
          path: cluster.server.at,
          user,
          password,
          database: 'postgres',
          max: 1,
          connect_timeout: 5,
        });
        await expect(sql`select 1`).rejects.toMatchObject({ code: expect.stringMatching(/^28|SASL/) });
        await sql.end();
      }
  });
  test('runs in a process group of its own, so that Ctrl-C reaches the application first', () => {
    const pid = folders.postgresOf(folder)!;
    const group = (of: number) =>
      execFileSync('ps', ['-o', 'pgid=', '-p', String(of)], { encoding: 'utf8' }).trim();
    expect(group(pid)).toBe(String(pid));
    expect(group(process.pid)).not.toBe(group(pid));
  });
  test('has a password file that we alone can read', () => {
    const file = statSync(join(folder, 'postgres-password'));
    expect(file.mode & 0o777).toBe(0o600);
    expect(file.uid).toBe(process.getuid!());
  });
  test('keeps its data to itself', () => expect(statSync(join(folder, 'postgres')).mode & 0o777).toBe(0o700));
  test('serves without the administrator ever connecting again', async () => {
    const store = await openStore(cluster);
    await store.benches();
    const users = await withConnection(
      cluster.server,
      'fettle_admin',
      sql => sql<{ name: string }[]>`
      select distinct usename as name from pg_stat_activity where backend_type = 'client backend'`,
    );
    expect(users.map(user => user.name)).not.toContain('postgres');
    await store.close();
  });
});

test('letters beyond ASCII that a server does not know are told at the start', async () => {
  const cluster = await openFolder(await folders.fresh('letters'));
  await withConnection(
    cluster.server,
    'administrator',
    sql =>
      sql.unsafe(`create database plain template template0 lc_ctype 'C' lc_collate 'C' locale_provider libc`),
    { database: 'postgres' },
  );
  await expect(openStore({ ...cluster.server, database: 'plain' })).rejects.toMatchObject({
    code: 'database-letters',
  });
});
