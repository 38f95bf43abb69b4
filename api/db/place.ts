import { createHash } from 'node:crypto';
import { constants, existsSync, readFileSync } from 'node:fs';
import { access, chmod, mkdir, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { refuse } from '../refusal.ts';
import { type Account, accountFor, canReach, isRoot } from './account.ts';
import { errorCode } from './errors.ts';

/** Where things are: the folder that the person named, and the one that PostgreSQL keeps its data in. */
export interface Place {
  folder: string;
  data: string;
  account: Account;
}

/** Where data goes that PostgreSQL, run as another user than root, could not reach below a closed home. */
export const commonFolder = '/var/lib/fettlebench';

/** Twelve letters that stand for a folder's path. */
export const hashOf = (path: string) => createHash('sha256').update(path).digest('hex').slice(0, 12);

/**
 * Settles where PostgreSQL keeps its data: in `postgres` below the folder; but as root, where the folder cannot be
 * reached by the user that PostgreSQL then runs as, below /var/lib/fettlebench, which is told on the console and
 * remembered in the folder, so that it is found again after the folder was moved.
 */
export async function settlePlace(
  named: string,
  say: (line: string) => void,
  common = commonFolder,
): Promise<Place> {
  const folder = resolve(named);
  await makeFolder(folder);
  const inside = join(folder, 'postgres');
  const pointer = join(folder, 'postgres-is-at');
  const elsewhere = existsSync(pointer) ? readFileSync(pointer, 'utf8').trim() : null;
  const account = accountFor(elsewhere ?? inside);

  if (elsewhere) return { folder, data: elsewhere, account };
  if (account.uid === undefined || canReach(folder, account)) return { folder, data: inside, account };
  if (existsSync(join(inside, 'PG_VERSION')))
    throw refuse('folder-not-reachable', {
      place: inside,
      message: `PostgreSQL runs as user ${account.uid} here, and a folder above the data is closed to that user.`,
      remedy: 'Move the data folder to a place that user can enter, and name it with FETTLE_DATA.',
    });
  const data = join(common, hashOf(folder), 'postgres');
  await makeFolder(join(common, hashOf(folder)), 0o755);
  await writeFile(pointer, `${data}\n`);
  say(
    `${folder} is closed to the user that PostgreSQL runs as (${account.uid}): the database is kept in ${data}.`,
  );
  return { folder, data, account };
}

/** Makes the data folder, for us alone; as root it may be passed through, since PostgreSQL's own lies below it. */
async function makeFolder(folder: string, mode = isRoot() ? 0o711 : 0o700): Promise<void> {
  try {
    const made = await mkdir(folder, { recursive: true });
    // The mode given to mkdir is narrowed by the umask, and is not applied to the folders above.
    if (made) await chmod(folder, mode);
    await access(folder, constants.R_OK | constants.W_OK | constants.X_OK);
  } catch (error) {
    throw refuse(
      'folder-not-writable',
      {
        place: folder,
        message: `The data folder cannot be made or written to (${errorCode(error)}).`,
        remedy: 'Name a folder that you may write to with FETTLE_DATA.',
      },
      error,
    );
  }
}
