import { createWriteStream } from 'node:fs';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Found } from '../../../api/answers/index.ts';
import { addBench } from '../../../api/db/backup/add-bench.ts';
import { verifyBackup } from '../../../api/db/backup/read-backup.ts';
import { restoreBackup } from '../../../api/db/backup/restore-backup.ts';
import { asKeeper, tablesInOrder } from '../../../api/db/backup/tables.ts';
import { writeBackup, writeBenchBackup } from '../../../api/db/backup/write-backup.ts';
import { makePerson } from '../../../api/people/add-owner.ts';
import { benchAs, openBench, openService, type TestBench, type TestService } from '../routes/bench.ts';
import { openAccounts, password, signInAs } from '../routes/people.ts';

let home: TestService;
let moved: TestBench;
let stays: TestBench;
let server: TestService;
let folder: string;
let file: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'fettle-bench-'));
  file = join(folder, 'bench.fettle');
  // On this machine alone, as it began.
  home = await openService();
  moved = await openBench(home, 'Harbour bench');
  stays = await openBench(home, 'Other bench');
  for (const [bench, secret] of [
    [moved, 'MOVED'],
    [stays, 'STAYS'],
  ] as const) {
    await bench.take('Brindlow', `Tern ${secret}`, [`2,${secret}-1,BALL BEARING 5X11X4,2,`]);
    await bench.good('/api/jobs', { method: 'POST', body: { owner: `Owner ${secret}` } });
  }
  await writeBenchBackup(home.store, moved.id, createWriteStream(file));
  // A server, where people sign in.
  server = await openAccounts();
});
afterAll(async () => {
  await home.close();
  await server.close();
  await rm(folder, { recursive: true, force: true });
});

const rowsOf = (service: TestService, bench: TestBench) =>
  asKeeper(service.store.server, async tx => {
    const counts: Record<string, number> = {};
    for (const { name, columns } of await tablesInOrder(tx)) {
      if (!columns.includes('workshop')) continue;
      const [row] = await tx.unsafe(`select count(*)::integer as rows from "${name}" where workshop = $1`, [
        bench.id,
      ]);
      counts[name] = row!.rows as number;
    }
    return counts;
  });

describe('a backup of one bench', () => {
  test('holds its work, and nothing of another', async () => {
    const manifest = await verifyBackup(file);
    expect(manifest).toMatchObject({ format: 2, bench: { id: moved.id, name: 'Harbour bench' } });
    const here = await rowsOf(home, moved);
    for (const { name, rows } of manifest.tables) expect([name, rows]).toEqual([name, here[name]]);
    const text = gunzipSync(await readFile(file)).toString('latin1');
    expect(text).toContain('MOVED-1');
    expect(text).not.toMatch(/STAYS|Other bench/);
    expect(text).not.toContain(stays.id);
  });

  test('cannot take the place of everything', async () => {
    await expect(restoreBackup(home.store.server, file)).rejects.toMatchObject({
      code: 'backup-of-one-bench',
    });
  });

  test('is not added where it is already', async () => {
    await expect(addBench(home.store.server, file, null)).rejects.toMatchObject({ code: 'already-there' });
  });

  test('a backup of everything is no bench to add', async () => {
    const all = join(folder, 'all.fettle');
    await writeBackup(home.store.server, createWriteStream(all));
    await expect(addBench(server.store.server, all, null)).rejects.toMatchObject({
      code: 'backup-of-everything',
    });
  });

  test('is added on a server under an owner, who finds everything there', async () => {
    const person = await makePerson(server.store, 'marta', password);
    const added = await addBench(server.store.server, file, { person, name: 'Marta' });
    expect(added.bench.name).toBe('Harbour bench');
    const [before, after] = [await rowsOf(home, moved), await rowsOf(server, moved)];
    const own = { member: 1, audit: 1, outbox: before.part };
    expect(after).toEqual({ ...before, ...own });
    const marta = benchAs(server, moved.id, await signInAs(server, 'marta'));
    expect((await marta.good<Found>('/api/find?q=MOVED-1')).parts).toHaveLength(1);
    expect(await marta.good('/api/people')).toMatchObject({ people: [{ name: 'Marta', role: 'owner' }] });
    // What both answer of the work is the same.
    for (const path of ['/api/models', '/api/jobs?state=all', '/api/order', '/api/find?q=5x11x4'])
      expect(await marta.good(path)).toEqual(await moved.good(path));
  });

  test('leaves nothing behind where it fails on the way', async () => {
    const other = await openService();
    const nobody = 'not-a-person';
    await expect(
      addBench(other.store.server, file, { person: nobody, name: 'Nobody' }),
    ).rejects.toMatchObject({ code: '22P02' });
    expect(await other.store.benches()).toEqual([]);
    const left = await asKeeper(
      other.store.server,
      tx =>
        tx`select datname from pg_database where datname like ${`${other.store.server.database}_restore_%`}`,
    );
    expect(left).toHaveLength(0);
    await other.close();
  });
});
