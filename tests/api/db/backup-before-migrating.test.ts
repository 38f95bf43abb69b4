import { randomBytes } from 'node:crypto';
import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { verifyBackup } from '../../../api/db/backup/read-backup.ts';
import { createBeside, dropBeside } from '../../../api/db/backup/swap-databases.ts';
import { migrate, readMigrations } from '../../../api/db/migrate.ts';
import { addressOf, type Server, withConnection } from '../../../api/db/server.ts';
import { serve } from '../../../api/main.ts';
import { createTestDatabase } from '../../support/postgres.ts';

/** A database over which several processes serve, as a program left it that knew fewer migrations. */
let old: Server;
let folder: string;
const before = 6;

beforeAll(async () => {
  const server = await createTestDatabase();
  old = await createBeside(server, `${server.database}_${randomBytes(3).toString('hex')}`);
  await migrate(old, { upTo: before });
  folder = await mkdtemp(join(tmpdir(), 'fettle-migrating-'));
});
afterAll(async () => {
  await dropBeside(old, old.database);
  await rm(folder, { recursive: true, force: true });
});

const versionOf = () =>
  withConnection(old, 'fettle_admin', async sql => {
    await sql`set role fettle_owner`;
    const [row] = await sql<{ version: number }[]>`select count(*)::integer as version from migration`;
    return row!.version;
  });

const start = (data: string, said: string[] = []) =>
  serve({ folder: data, databaseUrl: addressOf(old), port: 0, say: line => said.push(line), log: () => {} });

test('where no backup can be made first, nothing is migrated', async () => {
  const file = join(folder, 'a-file');
  await writeFile(file, '');
  await expect(start(file)).rejects.toMatchObject({
    code: 'no-backup-before-migrating',
    remedy: expect.stringContaining('FETTLE_DATA'),
  });
  expect(await versionOf()).toBe(before);
});

test('otherwise the backup is made, told of, and then it is migrated', async () => {
  const said: string[] = [];
  const serving = await start(folder, said);
  await serving.stop();
  const [made] = await readdir(join(folder, 'backups'));
  expect(said.join('\n')).toContain(made);
  expect((await verifyBackup(join(folder, 'backups', made!))).schema).toHaveLength(before);
  expect(await versionOf()).toBe((await readMigrations()).length);
});

test('with nothing to migrate no backup is made', async () => {
  await (await start(folder)).stop();
  expect(await readdir(join(folder, 'backups'))).toHaveLength(1);
});
