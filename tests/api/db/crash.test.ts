import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openEmbedded } from '../../../api/db/open-cluster.ts';
import { maker } from '../../../api/db/schema/index.ts';
import { connect, withConnection } from '../../../api/db/server.ts';
import { openStore } from '../../../api/db/store.ts';
import { type Folders, makeFolders } from '../../support/folders.ts';
import { type Holder, startHolder } from '../../support/holder.ts';

let folders: Folders;
const started: Holder[] = [];

beforeAll(async () => {
  folders = await makeFolders();
});
afterAll(async () => {
  for (const holder of started) await holder.end('SIGKILL');
  await folders.cleanUp();
});

function hold(folder: string): Holder {
  const holder = startHolder(folder, join(folders.root, 'common'));
  started.push(holder);
  return holder;
}

/** The names of all makers in a folder that nobody holds. */
async function namesIn(folder: string): Promise<string[]> {
  const cluster = await openEmbedded(folder, folders.options);
  const store = await openStore(cluster);
  const names: string[] = [];
  for (const bench of await store.benches())
    names.push(...(await store.inWorkshop(bench, tx => tx.select().from(maker))).map(row => row.name));
  await store.close();
  await cluster.close();
  return names;
}

/** Nothing acknowledged is lost, and nothing is there twice. */
function expectAllKept(found: string[], acknowledged: string[]): void {
  expect(new Set(found).size).toBe(found.length);
  expect(acknowledged.filter(name => !found.includes(name))).toEqual([]);
  expect(acknowledged.length).toBeGreaterThan(0);
}

test('kill -9 of the application loses nothing; the next start adopts PostgreSQL and needs no help', async () => {
  const folder = await folders.fresh('killed');
  const acknowledged: string[] = [];
  let postgres: number | null = null;
  for (let round = 0; round < 3; round++) {
    const holder = hold(folder);
    await holder.line('ready');
    if (postgres !== null) expect(folders.postgresOf(folder)).toBe(postgres);
    await holder.line('kept');
    await sleep(40 * round);
    await holder.end('SIGKILL');
    acknowledged.push(...holder.kept());
    postgres = folders.postgresOf(folder);
    expect(postgres).not.toBeNull();
  }
  expectAllKept(await namesIn(folder), acknowledged);
  expect(folders.postgresOf(folder)).toBeNull();
});

test('kill -9 of PostgreSQL: requests are refused, it is started again, and all goes on', async () => {
  const folder = await folders.fresh('postgres killed');
  const holder = hold(folder);
  for (let round = 0; round < 3; round++) {
    await holder.line('kept', holder.lines.length);
    const at = holder.lines.length;
    process.kill(folders.postgresOf(folder)!, 'SIGKILL');
    await holder.line('state away', at);
    await holder.line('state here', at);
    await holder.line('kept', holder.lines.length);
  }
  expect(new Set(holder.lines.filter(line => line.startsWith('refused')))).toEqual(
    new Set(['refused database-away']),
  );
  expect(await holder.end('SIGINT')).toBe(0);
  expectAllKept(await namesIn(folder), holder.kept());
});

test('kill -9 of both', async () => {
  const folder = await folders.fresh('both');
  const holder = hold(folder);
  await holder.line('kept');
  const postgres = folders.postgresOf(folder)!;
  process.kill(postgres, 'SIGKILL');
  await holder.end('SIGKILL');
  expectAllKept(await namesIn(folder), holder.kept());
});

test.each(['SIGINT', 'SIGTERM'] as const)('%s closes all in order', async signal => {
  const folder = await folders.fresh(signal);
  const holder = hold(folder);
  await holder.line('kept');
  expect(await holder.end(signal)).toBe(0);
  expect(holder.lines.at(-1)).toBe('closed');
  expect(folders.postgresOf(folder)).toBeNull();
  const log = readFileSync(join(folder, 'postgres.log'), 'utf8');
  expect(log.trim().split('\n').at(-1)).toContain('database system is shut down');
  expect(log).not.toContain('automatic recovery in progress');
  expectAllKept(await namesIn(folder), holder.kept());
});

test('processes that a killed PostgreSQL left behind are waited for', async () => {
  const folder = await folders.fresh('orphans');
  const cluster = await openEmbedded(folder, folders.options);
  const store = await openStore(cluster);
  const sql = connect(cluster.server, 'fettle_login', { database: 'postgres' });
  const busy = sql`select count(*) from generate_series(1, 12000000)`.catch(() => {});
  await sleep(200);
  const log = () => readFileSync(join(folder, 'postgres.log'), 'utf8');
  const back = new Promise<void>(resolve => cluster.onChange(state => state === 'here' && resolve()));
  process.kill(folders.postgresOf(folder)!, 'SIGKILL');
  await back;
  expect(log()).toContain('shared memory block');
  expect(await store.benches()).toEqual([]);
  await busy;
  await sql.end({ timeout: 0 });
  await store.close();
  await cluster.close();
});

describe('the lock of the folder', () => {
  /** Breaks the connection that holds the lock, as a network or an administrator might. */
  const breakLock = (server: Parameters<typeof withConnection>[0]) =>
    withConnection(
      server,
      'administrator',
      sql => sql`select pg_terminate_backend(pid) from pg_locks where locktype = 'advisory'`,
      { database: 'postgres' },
    );

  test('lost: nothing is served until it is held again', async () => {
    const folder = await folders.fresh('lost');
    const cluster = await openEmbedded(folder, folders.options);
    const store = await openStore(cluster);
    const states: string[] = [];
    const back = new Promise<void>(resolve =>
      cluster.onChange(state => {
        states.push(state);
        if (state === 'away') {
          const refused = expect(store.benches()).rejects.toMatchObject({
            code: 'database-away',
            status: 503,
          });
          void refused.then(() => states.push('refused'));
        } else resolve();
      }),
    );
    await breakLock(cluster.server);
    await back;
    expect(states).toEqual(['away', 'refused', 'here']);
    expect(await store.benches()).toEqual([]);
    await store.close();
    await cluster.close();
  });

  test('what is in the middle when it is lost is broken off, and kept nowhere', async () => {
    const folder = await folders.fresh('middle');
    const cluster = await openEmbedded(folder, folders.options);
    const store = await openStore(cluster);
    const bench = crypto.randomUUID();
    await store.createWorkshop({ id: bench, name: 'Quay Street' });
    const back = new Promise<void>(resolve => cluster.onChange(state => state === 'here' && resolve()));
    const work = store.inWorkshop(bench, async tx => {
      await tx.insert(maker).values({ workshop: bench, name: 'Brindlow' });
      await breakLock(cluster.server);
      await back;
      await tx.insert(maker).values({ workshop: bench, name: 'Corvane' });
    });
    await expect(work).rejects.toMatchObject({ code: 'database-away' });
    await back;
    expect(await store.inWorkshop(bench, tx => tx.select().from(maker))).toEqual([]);
    await store.close();
    await cluster.close();
  });

  test('taken by another process meanwhile: this one gives up', async () => {
    const folder = await folders.fresh('taken');
    let gaveUp: (refusal: unknown) => void;
    const over = new Promise(resolve => {
      gaveUp = resolve;
    });
    const cluster = await openEmbedded(folder, { ...folders.options, onTaken: refusal => gaveUp(refusal) });
    const store = await openStore(cluster);
    // Waits for the lock, as a second process might at this moment, and gets it first.
    const other = connect(cluster.server, 'fettle_login', {
      database: 'postgres',
      connection: { application_name: `fettlebench pid ${process.pid} port 4999` },
    });
    const taken = other`select pg_advisory_lock(hashtextextended('fettlebench data folder', 0))`.execute();
    await sleep(100);
    await withConnection(
      cluster.server,
      'administrator',
      sql => sql`select pg_terminate_backend(pid) from pg_locks where locktype = 'advisory' and granted`,
      { database: 'postgres' },
    );
    await taken;
    expect(await over).toMatchObject({ code: 'folder-in-use', message: expect.stringContaining('4999') });
    await expect(store.benches()).rejects.toMatchObject({ code: 'database-away' });
    await store.close();
    await cluster.close();
    // The folder was no longer ours, so PostgreSQL was left to the one who has it.
    expect((await other`select 1 as one`)[0]).toEqual({ one: 1 });
    await other.end();
  });

  test('is held by a connection that is never recycled', () => {
    const source = readFileSync(new URL('../../../api/db/lock.ts', import.meta.url), 'utf8');
    for (const setting of ['max: 1,', 'idle_timeout: 0,', 'max_lifetime: null,'])
      expect(source).toContain(setting);
  });
});

test('no process of PostgreSQL is left by these tests', async () => {
  for (const holder of started) await holder.end('SIGKILL');
  const all = execFileSync('ps', ['-ww', '-eo', 'command='], { encoding: 'utf8' }).split('\n');
  const left = all.filter(line => line.includes('bin/postgres -D') && line.includes(folders.root));
  expect(left.filter(line => !line.includes('/taken/'))).toEqual([]);
});
