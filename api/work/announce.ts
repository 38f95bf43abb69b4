import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** Where a process serves a data folder, and the key by which the same person's command line may ask it for more. */
export interface Announced {
  pid: number;
  address: string;
  key: string;
}

const file = (folder: string) => join(folder, 'serving.json');

/** Says in the data folder that this process serves it; readable by its owner alone, and never half written. */
export async function announceServing(folder: string, serving: Announced): Promise<void> {
  await mkdir(folder, { recursive: true });
  const fresh = `${file(folder)}.${serving.pid}`;
  await writeFile(fresh, `${JSON.stringify(serving)}\n`, { mode: 0o600 });
  await rename(fresh, file(folder));
}

/** Takes the announcement back, unless another process has made its own meanwhile. */
export async function withdrawServing(folder: string): Promise<void> {
  if ((await announced(folder))?.pid === process.pid) await rm(file(folder), { force: true });
}

/** The process that serves this folder; null where none says so, or the one that did is gone. */
export async function announced(folder: string): Promise<Announced | null> {
  try {
    const serving = JSON.parse(await readFile(file(folder), 'utf8')) as Announced;
    process.kill(serving.pid, 0);
    return serving;
  } catch {
    // No such file, no such process, or a file that is none of ours.
    return null;
  }
}
