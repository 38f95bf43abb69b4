import { execFileSync } from 'node:child_process';
import { randomBytes, randomUUID } from 'node:crypto';
import { mkdirSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql } from 'drizzle-orm';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { isRoot } from '../../../api/db/account.ts';
import type { Cluster } from '../../../api/db/cluster.ts';
import { openEmbedded } from '../../../api/db/open-cluster.ts';
import { reserveBytes, roomIn } from '../../../api/db/room.ts';
import { idempotency, maker } from '../../../api/db/schema/index.ts';
import { openStore, type Store } from '../../../api/db/store.ts';
import { type Folders, makeFolders } from '../../support/folders.ts';
import { createTestStore, type TestStore } from '../../support/postgres.ts';

describe('reserveBytes', () => {
  test.each([
    [undefined, 64],
    ['', 64],
    ['128', 128],
    ['0', 0],
    ['-5', 64],
    ['much', 64],
  ])('FETTLE_RESERVE_MB=%s keeps %d MiB', (setting, megabytes) => {
    expect(reserveBytes(setting)).toBe(megabytes * 2 ** 20);
  });
});

describe('with less room than the reserve', () => {
  let store: TestStore;
  let free = 100;
  const bench = randomUUID();

  beforeAll(async () => {
    store = await createTestStore({ hasRoom: roomIn('/', 50, async () => free) });
    await store.createWorkshop({ id: bench, name: 'Quay Street' });
  });
  afterAll(() => store.close());

  test('writes are refused with the remedy, reads go on, and writes do again once there is room', async () => {
    const write = (name: string) =>
      store.inWorkshop(bench, tx => tx.insert(maker).values({ workshop: bench, name }));
    await write('Brindlow');
    free = 49;
    await expect(write('Corvane')).rejects.toMatchObject({
      code: 'disk-full',
      status: 507,
      place: 'data folder',
      remedy: expect.stringContaining('Make room'),
    });
    expect(await store.inWorkshop(bench, tx => tx.select().from(maker))).toHaveLength(1);
    expect(await store.benches()).toEqual([bench]);
    free = 50;
    await write('Hestrel');
    expect(await store.inWorkshop(bench, tx => tx.select().from(maker))).toHaveLength(2);
  });

  test('PostgreSQL’s own "disk full" is the same refusal', async () => {
    const raised = store.inWorkshop(bench, tx =>
      tx.execute(sql`do $$ begin raise exception 'no room' using errcode = '53100'; end $$`),
    );
    await expect(raised).rejects.toMatchObject({ code: 'disk-full', status: 507 });
  });
});

/** A small disk of its own can be made by root alone, and not in every container. */
function canMount(at: string): boolean {
  if (!isRoot() || process.platform !== 'linux') return false;
  try {
    mkdirSync(at, { recursive: true });
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=220m,mode=711', 'tmpfs', at], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

const disk = `/tmp/fettle-small-disk-${process.pid}`;
const mounted = canMount(disk);
if (!mounted)
  console.log('No small disk can be mounted here: the full disk is tested with told free space alone.');

describe.runIf(mounted)('on a disk that is really full', () => {
  let folders: Folders;
  let cluster: Cluster;
  let store: Store;
  const bench = randomUUID();
  const filler = join(disk, 'filler');
  let kept: string[] = [];

  beforeAll(async () => {
    folders = await makeFolders();
  });
  afterAll(async () => {
    await folders.cleanUp();
    execFileSync('umount', [disk]);
    rmSync(disk, { recursive: true });
  });
  beforeEach(() => {
    kept = [];
  });
  afterEach(async () => {
    await store.close();
    await cluster.close();
    rmSync(join(disk, 'data'), { recursive: true, force: true });
    rmSync(filler, { force: true });
  });

  async function openOnDisk(reserve: number): Promise<void> {
    execFileSync('cp', ['-a', await folders.fresh(randomUUID()), join(disk, 'data')]);
    cluster = await openEmbedded(join(disk, 'data'), {
      ...folders.options,
      hasRoom: roomIn(join(disk, 'data/postgres'), reserve),
    });
    store = await openStore(cluster);
    await store.createWorkshop({ id: bench, name: 'Quay Street' });
  }

  /** Half a megabyte that no compression makes smaller. */
  async function keepOne(): Promise<void> {
    const key = randomUUID();
    await store.inWorkshop(bench, tx =>
      tx.insert(idempotency).values({
        workshop: bench,
        key,
        request: 'x',
        status: 200,
        answer: randomBytes(350_000).toString('base64'),
      }),
    );
    kept.push(key);
  }
  const keptNow = async () =>
    (await store.inWorkshop(bench, tx => tx.select({ key: idempotency.key }).from(idempotency))).map(
      row => row.key,
    );
  async function keepUntilRefused(): Promise<string> {
    for (let tries = 0; tries < 2000; tries++) {
      try {
        await keepOne();
      } catch (error) {
        return (error as { code: string }).code;
      }
    }
    return 'never';
  }
  const free = () => statfsSync(disk).bavail * statfsSync(disk).bsize;
  const fill = () => {
    for (let size = 2 ** 24; size >= 4096; size /= 2)
      try {
        for (;;) writeFileSync(filler, Buffer.alloc(size, 1), { flag: 'a' });
      } catch {
        // Full but for less than that.
      }
  };
  async function until(done: () => Promise<boolean>): Promise<void> {
    for (const end = Date.now() + 25_000; Date.now() < end; )
      if (await done().catch(() => false)) return;
      else await new Promise(resolve => setTimeout(resolve, 50));
    throw new Error('It did not come to that.');
  }

  test('new work stops at the reserve; even with no byte left all is read; with room it goes on', async () => {
    const ballast = join(disk, 'ballast');
    writeFileSync(ballast, Buffer.alloc(40 * 2 ** 20, 1));
    await openOnDisk(32 * 2 ** 20);
    expect(await keepUntilRefused()).toBe('disk-full');
    expect(kept.length).toBeGreaterThan(10);
    expect(free()).toBeGreaterThan(0);
    expect(new Set(await keptNow())).toEqual(new Set(kept));
    fill();
    expect(free()).toBeLessThan(4096);
    expect(new Set(await keptNow())).toEqual(new Set(kept));
    await expect(keepOne()).rejects.toMatchObject({ code: 'disk-full' });
    rmSync(filler);
    await expect(keepOne()).rejects.toMatchObject({ code: 'disk-full' });
    rmSync(ballast);
    await keepOne();
    expect(new Set(await keptNow())).toEqual(new Set(kept));
  });

  test('PostgreSQL killed on a full disk comes back by itself once there is room', async () => {
    await openOnDisk(0);
    for (let i = 0; i < 20; i++) await keepOne();
    fill();
    process.kill(folders.postgresOf(join(disk, 'data'))!, 'SIGKILL');
    await until(async () => cluster.isAway() || store.benches().then(() => true));
    rmSync(filler);
    await until(async () => !cluster.isAway() && (await keptNow()).length === kept.length);
    await keepOne();
    expect(new Set(await keptNow())).toEqual(new Set(kept));
  });

  test('filled in the middle of a write with no reserve at all, nothing acknowledged is lost', async () => {
    await openOnDisk(0);
    fill();
    rmSync(filler);
    writeFileSync(filler, Buffer.alloc(Math.max(0, free() - 40 * 2 ** 20), 1));
    expect(await keepUntilRefused()).toMatch(/^(disk-full|database-away)$/);
    rmSync(filler);
    await until(async () => !cluster.isAway() && (await store.benches()).length === 1);
    await until(async () => keepOne().then(() => true));
    expect((await keptNow()).filter(key => kept.includes(key)).sort()).toEqual([...kept].sort());
  });
});
