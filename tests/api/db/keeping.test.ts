import { execFile } from 'node:child_process';
import { statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { verifyBackup } from '../../../api/db/backup/read-backup.ts';
import { openEmbedded } from '../../../api/db/open-cluster.ts';
import { openStore } from '../../../api/db/store.ts';
import { type Serving, serve } from '../../../api/main.ts';
import { announced } from '../../../api/work/announce.ts';
import { type Folders, makeFolders } from '../../support/folders.ts';

const program = fileURLToPath(new URL('../../../dist/fettle.js', import.meta.url));
const run = promisify(execFile);

let folders: Folders;
let folder: string;
let file: string;
const bench = crypto.randomUUID();

beforeAll(async () => {
  folders = await makeFolders();
  folder = await folders.fresh('kept');
  file = join(folders.root, 'all.backup');
  const cluster = await openEmbedded(folder, folders.options);
  const store = await openStore(cluster);
  await store.createWorkshop({ id: bench, name: 'Quay Street' });
  await store.close();
  await cluster.close();
});
afterAll(() => folders.cleanUp());

/** Runs the built program over a folder. */
async function fettle(
  data: string,
  ...args: string[]
): Promise<{ code: number; answer: unknown; said: string }> {
  const env = { ...process.env, FETTLE_DATA: data, DATABASE_URL: '' };
  const done = await run(process.execPath, [program, ...args], { env }).catch(error => error);
  return { code: done.code ?? 0, answer: done.stdout ? JSON.parse(done.stdout) : null, said: done.stderr };
}

describe('while nothing serves the folder', () => {
  test('backup writes one file and nothing but the answer', async () => {
    const { code, answer, said } = await fettle(folder, 'backup', file);
    expect([code, said]).toEqual([0, '']);
    expect(answer).toMatchObject({ file, rows: { workshop: 1 }, bytes: statSync(file).size });
    expect(folders.postgresOf(folder)).toBeNull();
  });

  test('restore into a folder that is not there yet gives everything back', async () => {
    const fresh = await folders.fresh('restored');
    const { code, answer } = await fettle(fresh, 'restore', file);
    expect(code).toBe(0);
    expect(answer).toMatchObject({
      rows: { workshop: 1 },
      before: expect.stringContaining('fettle_before_restore_'),
    });
    const cluster = await openEmbedded(fresh, folders.options);
    const store = await openStore(cluster);
    expect(await store.benches()).toEqual([bench]);
    await store.close();
    await cluster.close();
  });

  test('a folder without data, and a file that is no backup, are refused', async () => {
    const nothing = await fettle(join(folders.root, 'nothing'), 'backup', join(folders.root, 'x'));
    expect(nothing).toMatchObject({ code: 1, answer: null, said: expect.stringContaining('FETTLE_DATA') });
    writeFileSync(join(folders.root, 'no backup'), 'x');
    const foreign = await fettle(folder, 'restore', join(folders.root, 'no backup'));
    expect(foreign).toMatchObject({
      code: 1,
      answer: null,
      said: expect.stringContaining('Nothing was changed'),
    });
  });
});

describe('while the folder is served', () => {
  let serving: Serving;
  beforeAll(async () => {
    serving = await serve({ folder, port: 0, say: () => {}, log: () => {} });
  });
  afterAll(() => serving.stop());

  test('backup and restore go through the serving program', async () => {
    const through = join(folders.root, 'through.backup');
    expect(await fettle(folder, 'backup', through)).toMatchObject({
      code: 0,
      answer: { rows: { workshop: 1 } },
    });
    const later = crypto.randomUUID();
    await serving.store.createWorkshop({ id: later, name: 'Later' });
    expect(await serving.store.benches()).toHaveLength(2);
    expect(await fettle(folder, 'restore', through)).toMatchObject({ code: 0, answer: { file: through } });
    expect(await serving.store.benches()).toEqual([bench]);
    await verifyBackup(through);
  });

  test('the key is asked for', async () => {
    const { key, address } = (await announced(folder))!;
    for (const path of ['backup', 'restore'])
      for (const Authorization of ['', 'Bearer ', `Bearer ${key}x`, `Bearer ${key.slice(1)}x`, key]) {
        const answer = await fetch(`${address}/api/keeping/${path}`, {
          method: 'POST',
          headers: { Authorization },
        });
        expect(answer.status).toBe(401);
        expect(await answer.json()).toMatchObject({ code: 'key-wrong' });
      }
    expect(statSync(join(folder, 'serving.json')).mode & 0o777).toBe(0o600);
  });

  test('what is no backup is refused, the file named as the person named it', async () => {
    const { key, address } = (await announced(folder))!;
    const answer = await fetch(`${address}/api/keeping/restore`, {
      method: 'POST',
      headers: { Authorization: `Bearer ${key}` },
      body: 'x',
    });
    expect(await answer.json()).toMatchObject({ code: 'backup-not-readable', place: 'the backup' });
    expect(await serving.store.benches()).toEqual([bench]);
  });
});
