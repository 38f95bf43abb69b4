import { spawnSync } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { join } from 'node:path';

/** As whom PostgreSQL runs: empty for "as ourselves". */
export interface Account {
  uid?: number;
  gid?: number;
}

/** "nobody" on Linux and in every container: PostgreSQL refuses to run as root. */
const nobody = 65534;

export const isRoot = () => process.getuid?.() === 0;

/**
 * As whom PostgreSQL runs over the data in `data`: as ourselves, but for root as the one who owns the data already, or
 * as nobody.
 */
export function accountFor(data: string): Account {
  if (!isRoot()) return {};
  const owner = statSync(join(data, 'PG_VERSION'), { throwIfNoEntry: false });
  return owner && owner.uid !== 0 ? { uid: owner.uid, gid: owner.gid } : { uid: nobody, gid: nobody };
}

/** Whether the account can enter and read the folder: tried, since modes of any folder above may forbid it. */
export function canReach(folder: string, account: Account): boolean {
  if (account.uid === undefined) {
    try {
      accessSync(folder, constants.R_OK | constants.X_OK);
      return true;
    } catch {
      return false;
    }
  }
  const tried = spawnSync('/bin/sh', ['-c', 'test -x "$0"', folder], { ...account, cwd: '/' });
  return tried.status === 0;
}
