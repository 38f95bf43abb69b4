import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { isRoot } from '../../../api/db/account.ts';
import { restoreBackup } from '../../../api/db/backup/restore-backup.ts';
import { asKeeper, digestOf, tablesInOrder } from '../../../api/db/backup/tables.ts';
import { findPackage } from '../../../api/db/binaries.ts';
import { openEmbedded } from '../../../api/db/open-cluster.ts';
import type { Server } from '../../../api/db/server.ts';
import { openStore } from '../../../api/db/store.ts';
import type { Fixture } from '../../fixtures/fixture.ts';
import { type Folders, makeFolders } from '../../support/folders.ts';
import { createTestStore } from '../../support/postgres.ts';

const kept = fileURLToPath(new URL('../../fixtures/', import.meta.url));
const fixtures = readdirSync(kept)
  .filter(name => name.endsWith('.json'))
  .map(name => JSON.parse(readFileSync(join(kept, name), 'utf8')) as Fixture);

let folders: Folders;
beforeAll(async () => {
  folders = await makeFolders();
});
afterAll(() => folders.cleanUp());

/** How many rows each of the tables has that were there at the time. */
const rowsOf = (server: Server, { rows }: Fixture) =>
  asKeeper(server, async tx => {
    const found: Record<string, number> = {};
    for (const table of await tablesInOrder(tx))
      if (table.name in rows) found[table.name] = (await digestOf(tx, table)).rows;
    return found;
  });

test('there is at least one', () => expect(fixtures.length).toBeGreaterThan(0));

test('they are small enough to keep', () => {
  for (const { version } of fixtures) {
    const sizes = ['backup', 'folder.tar.gz'].map(end => statSync(join(kept, `${version}.${end}`)).size);
    expect(sizes[0]! + sizes[1]!).toBeLessThan(8_000_000);
  }
});

describe.each(fixtures)('what was kept of $version', fixture => {
  test('its backup is restored', async () => {
    const store = await createTestStore();
    await restoreBackup(store.server, join(kept, `${fixture.version}.backup`), store.whileClosed);
    expect(await rowsOf(store.server, fixture)).toEqual(fixture.rows);
    expect(await store.benches()).toHaveLength(fixture.rows.workshop!);
    await store.close();
  });

  const { version } = JSON.parse(readFileSync(join(findPackage(), 'package.json'), 'utf8')) as {
    version: string;
  };
  const here = { postgres: Number.parseInt(version, 10), processor: `${process.platform}-${process.arch}` };
  const fits = here.postgres === fixture.postgres && here.processor === fixture.processor;
  if (!fits)
    console.log(
      `The data folder of ${fixture.version} is for PostgreSQL ${fixture.postgres} on ${fixture.processor}; here is ${here.postgres} on ${here.processor}, so it is not opened.`,
    );

  test.runIf(fits)('its data folder is opened', async () => {
    const root = join(folders.root, fixture.version);
    await mkdir(root);
    await openKept(root);
    const cluster = await openEmbedded(join(root, 'data'), folders.options);
    const store = await openStore(cluster);
    expect(await rowsOf(store.server, fixture)).toEqual(fixture.rows);
    await store.close();
    await cluster.close();
  });

  async function openKept(root: string): Promise<void> {
    execFileSync('tar', [
      '-xzf',
      join(kept, `${fixture.version}.folder.tar.gz`),
      '-C',
      root,
      '--no-same-owner',
    ]);
    if (!isRoot()) return;
    // As root PostgreSQL runs as nobody, who must own its data and be able to get there.
    for (const folder of [root, join(root, 'data')]) execFileSync('chmod', ['711', folder]);
    execFileSync('chown', ['-R', '65534:65534', join(root, 'data/postgres')]);
  }
});
