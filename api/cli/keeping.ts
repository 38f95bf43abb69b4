import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { openEmbedded } from '../db/open-cluster.ts';
import { prepareServer } from '../db/roles.ts';
import { type Server, serverAt } from '../db/server.ts';
import { openStore, type Store } from '../db/store.ts';
import { Refusal, refuse } from '../refusal.ts';
import { type Announced, announced } from '../work/announce.ts';

/** Runs a command, prints its answer as JSON, or says what was refused. Answers the exit code. */
export async function answering(work: () => Promise<unknown>): Promise<number> {
  try {
    process.stdout.write(`${JSON.stringify(await work())}\n`);
    return 0;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    process.stderr.write(`fettle: ${error.place}: ${error.message}\n${error.remedy}\n`);
    return 1;
  }
}

const dataFolder = (env: NodeJS.ProcessEnv) => env.FETTLE_DATA ?? './data';

/** The program that serves the embedded data folder; null where none does, or the data lies on a server. */
export const servingProgram = (env: NodeJS.ProcessEnv): Promise<Announced | null> =>
  env.DATABASE_URL ? Promise.resolve(null) : announced(dataFolder(env));

/** Refuses a folder that nothing was ever kept in, before one is made for nothing. */
export function mustHaveData(env: NodeJS.ProcessEnv): void {
  const folder = dataFolder(env);
  if (env.DATABASE_URL || ['postgres', 'postgres-is-at'].some(name => existsSync(join(folder, name)))) return;
  throw refuse('not-found', {
    place: folder,
    message: 'There is no data in this folder.',
    remedy: 'Name the data folder with FETTLE_DATA.',
  });
}

/** Runs `work` on the database itself: the server's, or that of a folder that no program serves. */
export async function withServer<T>(
  env: NodeJS.ProcessEnv,
  work: (server: Server) => Promise<T>,
): Promise<T> {
  if (env.DATABASE_URL) {
    const server = serverAt(env.DATABASE_URL);
    await prepareServer(server);
    return work(server);
  }
  const cluster = await openEmbedded(dataFolder(env));
  try {
    return await work(cluster.server);
  } finally {
    await cluster.close();
  }
}

/** Runs `work` on what the workshops remember, likewise. */
export const withStore = <T>(env: NodeJS.ProcessEnv, work: (store: Store) => Promise<T>): Promise<T> =>
  withServer(env, async server => {
    const store = await openStore(server, { connections: 2 });
    try {
      return await work(store);
    } finally {
      await store.close();
    }
  });

/** Asks the serving program; its refusals come back as refusals, `place` named by us. */
export async function askServing(
  serving: Announced,
  path: string,
  place: string,
  init: RequestInit & { duplex?: 'half' } = {},
): Promise<Response> {
  const headers = { Authorization: `Bearer ${serving.key}` };
  const response = await fetch(serving.address + path, { ...init, method: 'POST', headers });
  if (response.ok) return response;
  const problem = (await response.json()) as { code: string; detail: string; remedy: string };
  throw refuse(problem.code, { place, message: problem.detail, remedy: problem.remedy });
}
