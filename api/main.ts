import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { createAdaptorServer } from '@hono/node-server';
import { createApp } from './app.ts';
import { backUpBeforeMigrating } from './db/backup/keep-backups.ts';
import type { Cluster } from './db/cluster.ts';
import { openEmbedded } from './db/open-cluster.ts';
import type { Server as Database } from './db/server.ts';
import { openStore, type Store } from './db/store.ts';
import { refuse } from './refusal.ts';
import { postgresEngine } from './search/postgres.ts';
import type { Accounts, Service } from './service.ts';
import { announceServing, withdrawServing } from './work/announce.ts';
import { drawInChild } from './work/draw-in-child.ts';
import { readInChild } from './work/spawn-reader.ts';
import { startWorker } from './work/worker.ts';

export interface ServeOptions {
  /** The data folder: the embedded database, and where it is said that this process serves. */
  folder: string;
  /** A PostgreSQL to use in place of the embedded one. */
  databaseUrl?: string | undefined;
  /** Where to listen; left out, on this machine alone. */
  host?: string;
  /** 0 takes any free one. */
  port: number;
  /** Where people sign in. Without an origin they do at the address on this machine. */
  accounts?: (Omit<Accounts, 'origin'> & { origin: string | undefined }) | null;
  /** A line for the person who started the program. */
  say(line: string): void;
  /** Further ports that the page is reached at, such as that of a page being developed. */
  alsoAt?: number[];
  /** Done once the store is open, before anything is served: the demo bench is put in here. */
  prepare?(store: Store): Promise<void>;
  log?(entry: Record<string, unknown>): void;
}

export interface Serving {
  address: string;
  store: Store;
  /** Ends the serving in order; what was acknowledged is kept. */
  stop(): Promise<void>;
  /** The exit code, once it has ended: by `stop`, Ctrl-C, SIGTERM, or because another process has the folder. */
  stopped: Promise<number>;
}

/** Opens the store, starts reading waiting documents and serves page and API, until told to stop. */
export async function serve(options: ServeOptions): Promise<Serving> {
  const { say, host = '127.0.0.1', log = logLine } = options;
  let resolveStopped: (code: number) => void;
  let rejectStopped: (reason: unknown) => void;
  const stopped = new Promise<number>((resolve, reject) => {
    resolveStopped = resolve;
    rejectStopped = reject;
  });
  const cluster = options.databaseUrl
    ? null
    : await openEmbedded(options.folder, {
        port: options.port,
        say,
        onTaken: reason => void finish(1, reason),
      });
  const opened: { close(): Promise<unknown> }[] = cluster ? [cluster] : [];
  const closeAll = async () => {
    for (let one = opened.pop(); one; one = opened.pop()) await one.close();
  };

  let finishing: Promise<void> | undefined;
  const finish = (code: number, reason?: unknown) => {
    if (reason)
      log({ level: 'error', what: 'serving ends', message: String((reason as Error).message ?? reason) });
    finishing ??= closeAll().then(() => resolveStopped(code), rejectStopped);
    return finishing;
  };

  try {
    const store = options.databaseUrl
      ? await openStore(options.databaseUrl, {
          beforeMigrating: (server, version) => backUpFirst(options.folder, server, version, say),
        })
      : await openStore(cluster as Cluster);
    opened.push(store);
    await options.prepare?.(store);
    const ports = [...(options.alsoAt ?? [])];
    const worker = startWorker({ store, readDocument: readInChild, drawPage: drawInChild, log });
    opened.push({ close: worker.stop });
    const key = randomBytes(32).toString('base64url');
    let app: ReturnType<typeof createApp>;
    const server = createAdaptorServer({ fetch: (...asked) => app.fetch(...asked) }) as Server;
    const port = await listen(server, host, options.port);
    ports.push(port);
    opened.push({ close: () => closeServer(server, options.databaseUrl ? 10_000 : 1500) });
    const address = `http://127.0.0.1:${port}`;
    const service: Service = {
      store,
      engine: postgresEngine,
      readDocument: readInChild,
      drawPage: drawInChild,
      wake: worker.wake,
      log,
      ports,
      pageFolder: pageFolder(),
      hasRoom: cluster?.hasRoom,
      accounts: options.accounts
        ? { ...options.accounts, origin: options.accounts.origin ?? address }
        : undefined,
      keeping: cluster ? { key, folder: cluster.folder } : undefined,
    };
    // Nothing comes in between listening and this.
    app = createApp(service);
    if (cluster) {
      await cluster.announce(port);
      await announceServing(options.folder, { pid: process.pid, address, key });
      opened.push({ close: () => withdrawServing(options.folder) });
    }
    const release = onSignals(() => void finish(0));
    opened.push({ close: async () => release() });
    say(`Fettlebench serves ${options.accounts?.origin ?? address}`);
    return { address, store, stop: () => finish(0), stopped };
  } catch (error) {
    await closeAll();
    throw error;
  }
}

/** The built page beside the program or, run from source, in the build's folder; null where it is not built. */
function pageFolder(): string | null {
  const here = import.meta.url;
  const folder = fileURLToPath(new URL(here.endsWith('.ts') ? '../dist/web' : './web', here));
  return existsSync(folder) ? folder : null;
}

/** One line of the log on standard error. */
const logLine = (entry: Record<string, unknown>) =>
  console.error(JSON.stringify({ time: new Date().toISOString(), ...entry }));

/** Over a server's database the backup before a migration goes into the data folder too; without it nothing is migrated. */
async function backUpFirst(folder: string, server: Database, version: number, say: (line: string) => void) {
  try {
    const file = await backUpBeforeMigrating(folder, server, version);
    say(`Before the data is brought to a newer schema, a backup was made: ${file}`);
  } catch (error) {
    throw refuse(
      'no-backup-before-migrating',
      {
        place: `${folder}/backups`,
        message: `The data has schema version ${version} and would be brought to a newer one, but no backup of it could be made first: ${(error as Error).message}`,
        remedy: 'Make room, or name a folder that can be written to with FETTLE_DATA. Nothing was changed.',
      },
      error,
    );
  }
}

async function listen(server: Server, host: string, port: number): Promise<number> {
  server.listen(port, host);
  try {
    await once(server, 'listening');
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND')
      throw refuse('host-not-here', {
        place: 'FETTLE_HOST',
        message: 'This machine has no such address.',
        remedy: 'Set FETTLE_HOST to an address of this machine, 0.0.0.0 for all of them, or leave it out.',
      });
    if (code !== 'EADDRINUSE') throw error;
    throw refuse('port-in-use', {
      place: `port ${port}`,
      message: 'Another program listens there already.',
      remedy: `Stop it, or choose another port: PORT=${port + 1} npm start.`,
    });
  }
  return (server.address() as AddressInfo).port;
}

/** Lets running requests end for a moment, then cuts what is left, such as streams of progress. */
async function closeServer(server: Server, grace: number): Promise<void> {
  const closed = once(server, 'close');
  server.close();
  server.closeIdleConnections();
  const cut = setTimeout(() => server.closeAllConnections(), grace);
  await closed;
  clearTimeout(cut);
}

function onSignals(stop: () => void): () => void {
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  for (const signal of signals) process.once(signal, stop);
  return () => {
    for (const signal of signals) process.off(signal, stop);
  };
}
