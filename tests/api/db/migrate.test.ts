import { randomUUID } from 'node:crypto';
import { existsSync, readdirSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { backUpBeforeMigrating } from '../../../api/db/backup/keep-backups.ts';
import { createBeside, dropBeside } from '../../../api/db/backup/swap-databases.ts';
import { type Migration, migrate, readMigrations } from '../../../api/db/migrate.ts';
import { type Server, withConnection } from '../../../api/db/server.ts';
import { createTestDatabase } from '../../support/postgres.ts';

const migrations = await readMigrations();
const next = (sql: string): Migration => ({
  number: migrations.length + 1,
  name: 'next.sql',
  sql,
  sha256: randomUUID(),
});

async function columnsOf(server: Server, table: string): Promise<number> {
  return withConnection(server, 'fettle_admin', async sql => {
    await sql`set role fettle_owner`;
    const [row] = await sql<{ count: number }[]>`
      select count(*)::int as count from pg_attribute where attrelid = to_regclass(${table}) and attnum > 0`;
    return row!.count;
  });
}

test('an empty database goes up step by step, and again does nothing', async () => {
  const server = await createBeside(
    await createTestDatabase(),
    `fettle_test_${randomUUID().slice(0, 8)}_steps`,
  );
  expect(await migrate(server, { upTo: 1 })).toBe(1);
  expect(await migrate(server)).toBe(migrations.length);
  expect(await migrate(server)).toBe(migrations.length);
  await dropBeside(server, server.database);
});

test('processes that start at once migrate it once', async () => {
  const server = await createBeside(
    await createTestDatabase(),
    `fettle_test_${randomUUID().slice(0, 8)}_race`,
  );
  const versions = await Promise.all([1, 2, 3, 4].map(() => migrate(server)));
  expect(versions).toEqual(Array(4).fill(migrations.length));
  await dropBeside(server, server.database);
});

test('one that fails leaves nothing of itself, and the ones before stay', async () => {
  const server = await createTestDatabase();
  const bad = next('create table half (workshop uuid); select 1 / 0;');
  await expect(migrate(server, { migrations: [...migrations, bad] })).rejects.toThrow('division by zero');
  expect(await columnsOf(server, 'half')).toBe(0);
  expect(await migrate(server)).toBe(migrations.length);
});

test('a past one that was changed is refused with its name', async () => {
  const server = await createTestDatabase();
  const changed = migrations.map((one, at) => (at === 0 ? { ...one, sha256: 'x' } : one));
  await expect(migrate(server, { migrations: changed })).rejects.toMatchObject({
    code: 'migration-changed',
    place: 'migrations/0001-base.sql',
  });
});

test('data of a newer program is refused', async () => {
  const server = await createTestDatabase();
  await expect(migrate(server, { migrations: migrations.slice(0, 1) })).rejects.toMatchObject({
    code: 'database-newer',
  });
});

test('before pending ones a backup is made, which holds the schema as it was', async () => {
  const server = await createTestDatabase();
  const folder = await mkdtemp(join(tmpdir(), 'fettle-migrate-'));
  let made = '';
  const options = {
    migrations: [
      ...migrations,
      next("create table extra (workshop uuid primary key); select guard('extra')"),
    ],
    before: async (version: number) => {
      expect(version).toBe(migrations.length);
      expect(await columnsOf(server, 'extra')).toBe(0);
      made = await backUpBeforeMigrating(folder, server, version);
    },
  };
  await migrate(server, options);
  expect(existsSync(made)).toBe(true);
  expect(await columnsOf(server, 'extra')).toBeGreaterThan(0);
  await migrate(server, options);
  expect(readdirSync(join(folder, 'backups'))).toHaveLength(1);
  await rm(folder, { recursive: true });
});
