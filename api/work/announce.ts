import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
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
  if ((await announcement(folder))?.pid === process.pid) await rm(file(folder), { force: true });
}

/** The process that serves this folder; null where none says so, or the one that did no longer listens. */
export async function announced(folder: string): Promise<Announced | null> {
  const serving = await announcement(folder);
  return serving && (await listens(serving.address)) ? serving : null;
}

async function announcement(folder: string): Promise<Announced | null> {
  try {
    return JSON.parse(await readFile(file(folder), 'utf8')) as Announced;
  } catch {
    // No such file, or one that is none of ours.
    return null;
  }
}

/** The number of a killed process can stand for a while, or be another's by now: the port tells for certain. */
function listens(address: string): Promise<boolean> {
  const { hostname, port } = new URL(address);
  return new Promise(resolve => {
    const socket = connect({ host: hostname, port: Number(port) });
    const end = (answer: boolean) => {
      socket.destroy();
      resolve(answer);
    };
    socket.once('connect', () => end(true)).once('error', () => end(false));
  });
}
