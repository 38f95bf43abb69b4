import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Cluster } from '../../api/db/cluster.ts';
import { type EmbeddedOptions, openEmbedded } from '../../api/db/open-cluster.ts';
import { runningPostmaster, stopPostmaster } from '../../api/db/postmaster.ts';

/** Temporary data folders for tests that start PostgreSQL themselves; nothing of them stays behind. */
export interface Folders {
  /** Where they lie; every user may pass through it. */
  root: string;
  /** Options for `openEmbedded` that keep all it makes below `root`, and quiet. */
  options: EmbeddedOptions;
  /** A data folder with an empty database that was stopped in order; made once and copied. */
  fresh(name: string): Promise<string>;
  /** PostgreSQL's process over a data folder; null where none runs. */
  postgresOf(folder: string): number | null;
  cleanUp(): Promise<void>;
}

export async function makeFolders(): Promise<Folders> {
  const root = await mkdtemp(join(tmpdir(), 'fettle-folders-'));
  await chmod(root, 0o711);
  const used = new Set<string>();
  const options: EmbeddedOptions = { common: join(root, 'common'), say: () => {} };
  const dataOf = (folder: string) => {
    const pointer = join(folder, 'postgres-is-at');
    return existsSync(pointer) ? readFileSync(pointer, 'utf8').trim() : join(folder, 'postgres');
  };
  const postgresOf = (folder: string) => runningPostmaster(dataOf(folder))?.pid ?? null;
  return {
    root,
    options,
    postgresOf,
    async fresh(name) {
      const made = join(root, 'made');
      if (!existsSync(made)) {
        const cluster: Cluster = await openEmbedded(made, options);
        await cluster.close();
      }
      const folder = join(root, name);
      execFileSync('cp', ['-a', made, folder]);
      used.add(folder);
      return folder;
    },
    async cleanUp() {
      for (const folder of used) {
        const running = runningPostmaster(dataOf(folder));
        if (running) await stopPostmaster(running, dataOf(folder));
      }
      await rm(root, { recursive: true, force: true });
    },
  };
}
