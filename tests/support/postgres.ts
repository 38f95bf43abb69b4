import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inject } from 'vitest';
import type { TestProject } from 'vitest/node';
import { openEmbedded } from '../../api/db/open-cluster.ts';
import { databaseRights } from '../../api/db/roles.ts';
import { addressOf, type Server, serverAt, withConnection } from '../../api/db/server.ts';
import { openStore, type Store, type StoreOptions } from '../../api/db/store.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** The administrator's address of a migrated database that each test copies. */
    templateAddress: string;
  }
}

interface Found {
  server: Server;
  what: string;
  stop(): Promise<void>;
}

/**
 * A real PostgreSQL for the whole run: `TEST_DATABASE_URL`, else a container where a container runtime answers, else
 * the binaries from the package registry in a temporary folder. One database in it is migrated and copied by the tests.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const found = (await named()) ?? (await inContainer()) ?? (await embedded());
  console.log(`Tests of "${project.name}" use PostgreSQL ${found.what}.`);
  const run = `fettle_test_${randomBytes(3).toString('hex')}`;
  const template = { ...found.server, database: `${run}_template` };
  const store = await openStore(template);
  await store.close();
  project.provide('templateAddress', addressOf(template));
  return async () => {
    await dropDatabases(found.server, run);
    await found.stop();
  };
}

async function named(): Promise<Found | null> {
  const url = process.env.TEST_DATABASE_URL;
  return url ? { server: serverAt(url), what: 'of TEST_DATABASE_URL', stop: async () => {} } : null;
}

async function inContainer(): Promise<Found | null> {
  const { DOCKER_HOST, XDG_RUNTIME_DIR } = process.env;
  const sockets = [
    '/var/run/docker.sock',
    `${XDG_RUNTIME_DIR}/docker.sock`,
    `${XDG_RUNTIME_DIR}/podman/podman.sock`,
  ];
  if (!DOCKER_HOST && !sockets.some(existsSync)) return null;
  try {
    // Loaded only here: it is large, and does not load on every version of Node.
    const { GenericContainer, Wait } = await import('testcontainers');
    const container = await new GenericContainer('postgres:18')
      .withEnvironment({ POSTGRES_PASSWORD: 'test', LC_ALL: 'C.UTF-8' })
      .withExposedPorts(5432)
      .withWaitStrategy(Wait.forLogMessage(/ready to accept connections/, 2))
      .start();
    const url = `postgres://postgres:test@${container.getHost()}:${container.getMappedPort(5432)}/fettle`;
    return { server: serverAt(url), what: 'in a container', stop: async () => void (await container.stop()) };
  } catch (error) {
    console.log(`No container for the tests: ${(error as Error).message}`);
    return null;
  }
}

async function embedded(): Promise<Found> {
  const folder = await mkdtemp(join(tmpdir(), 'fettle-tests-'));
  // As root PostgreSQL runs as another user, who must be able to pass through.
  await chmod(folder, 0o711);
  const cluster = await openEmbedded(join(folder, 'data'), { common: join(folder, 'common'), say: () => {} });
  return {
    server: cluster.server,
    what: 'of the package registry in a temporary folder',
    async stop() {
      await cluster.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

async function dropDatabases(server: Server, run: string): Promise<void> {
  await asOwner(server, async sql => {
    const names = await sql<{ name: string }[]>`
      select datname as name from pg_database where starts_with(datname, ${run})`;
    for (const { name } of names) await sql`drop database ${sql(name)}`;
  });
}

function asOwner<T>(server: Server, work: Parameters<typeof withConnection<T>>[2]): Promise<T> {
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

export interface TestStore extends Store {
  /** The administrator's address of the store's own database, for a program that is started. */
  url: string;
}

/** A store over a database of its own, empty and migrated. Closing it drops the database. */
export async function createTestStore(options: StoreOptions = {}): Promise<TestStore> {
  const server = await createTestDatabase();
  const store = await openStore(server, { connections: 4, ...options });
  const { close } = store;
  return Object.assign(store, {
    url: addressOf(server),
    async close() {
      await close();
      await asOwner(server, sql => sql`drop database if exists ${sql(server.database)}`);
    },
  });
}

/** A migrated database of its own, dropped at the end of the run. */
export async function createTestDatabase(): Promise<Server> {
  const template = serverAt(inject('templateAddress'));
  const database = template.database.replace('template', randomBytes(4).toString('hex'));
  await asOwner(template, async sql => {
    await sql`create database ${sql(database)} template ${sql(template.database)} strategy file_copy`;
    await sql.unsafe(databaseRights(database));
  });
  return { ...template, database };
}
