import { randomBytes } from 'node:crypto';
import { chown, lstat, mkdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import { refuse } from '../refusal.ts';
import { type Account, canReach } from './account.ts';
import { errorCode } from './errors.ts';
import { hashOf } from './place.ts';

/** A Unix socket's path may have some 107 bytes on Linux and 103 on macOS, `/.s.PGSQL.5432` included. */
const longest = 100 - '/.s.PGSQL.5432'.length;

/**
 * A short folder for PostgreSQL's socket, private to the account it runs as. Named by the data folder; by chance where
 * somebody else already sits on that name. A long TMPDIR is passed over.
 */
export async function makeSocketFolder(
  data: string,
  account: Account,
  bases = usualBases(),
): Promise<string> {
  const name = `fettle-${hashOf(data)}`;
  for (const base of bases) {
    if (Buffer.byteLength(join(base, name)) + 9 > longest || !canReach(base, account)) continue;
    const folder =
      (await claim(join(base, name), account)) ?? (await claim(join(base, `${name}-${chance()}`), account));
    if (folder) return folder;
  }
  throw refuse('no-socket-folder', {
    place: bases.join(', '),
    message: 'None of these folders is short and open enough to hold the socket of the database.',
    remedy: 'Set TMPDIR to a short path that you may write to, such as /tmp.',
  });
}

const chance = () => randomBytes(4).toString('hex');

const usualBases = () =>
  [...new Set([tmpdir(), '/tmp', process.env.XDG_RUNTIME_DIR ?? ''])].filter(base => isAbsolute(base));

/** The folder, made or found to be the account's own and closed to others; null where it cannot be. */
async function claim(folder: string, account: Account): Promise<string | null> {
  const uid = account.uid ?? process.getuid!();
  try {
    await mkdir(folder, { mode: 0o700 });
    if (account.uid !== undefined) await chown(folder, account.uid, account.gid!);
    return folder;
  } catch (error) {
    if (errorCode(error) !== 'EEXIST') return null;
    const found = await lstat(folder);
    return found.isDirectory() && found.uid === uid && (found.mode & 0o077) === 0 ? folder : null;
  }
}
