import { randomBytes } from 'node:crypto';
import { chown, mkdir, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, dirname, isAbsolute, join } from 'node:path';
import { refuse } from '../refusal.ts';
import { type Account, canReach } from './account.ts';
import { hashOf } from './place.ts';

/** A Unix socket's path may have some 107 bytes on Linux and 103 on macOS, `/.s.PGSQL.5432` included. */
const longest = 100 - '/.s.PGSQL.5432'.length;

/**
 * A new short folder for PostgreSQL's socket, private to the account it runs as. A long TMPDIR is passed over. Named by
 * the data folder and by chance, so that no socket left by one that was killed, and nobody else, is in the way;
 * `postmaster.pid` tells where it is.
 */
export async function makeSocketFolder(
  data: string,
  account: Account,
  bases = usualBases(),
): Promise<string> {
  for (const base of bases) {
    const folder = join(base, `${prefix(data)}${randomBytes(3).toString('hex')}`);
    if (Buffer.byteLength(folder) > longest || !canReach(base, account)) continue;
    try {
      await mkdir(folder, { mode: 0o700 });
      if (account.uid !== undefined) await chown(folder, account.uid, account.gid!);
      return folder;
    } catch {
      // Not there either: the next one.
    }
  }
  throw refuse('no-socket-folder', {
    place: bases.join(', '),
    message: 'None of these folders is short and open enough to hold the socket of the database.',
    remedy: 'Set TMPDIR to a short path that you may write to, such as /tmp.',
  });
}

const prefix = (data: string) => `fettle-${hashOf(data)}-`;

/** Removes what former starts over this data left behind, now that the one in `current` runs. */
export async function removeOldSocketFolders(data: string, current: string): Promise<void> {
  for (const name of await readdir(dirname(current)))
    if (name.startsWith(prefix(data)) && name !== basename(current))
      await rm(join(dirname(current), name), { recursive: true, force: true }).catch(() => {});
}

const usualBases = () =>
  [...new Set([tmpdir(), '/tmp', process.env.XDG_RUNTIME_DIR ?? ''])].filter(base => isAbsolute(base));
