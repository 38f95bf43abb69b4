import { setTimeout as sleep } from 'node:timers/promises';
import type { Refusal } from '../refusal.ts';
import { isRoot } from './account.ts';
import { backUpBeforeMigrating } from './backup/keep-backups.ts';
import { type Binaries, prepareBinaries } from './binaries.ts';
import type { Cluster, ClusterState } from './cluster.ts';
import { makeCluster } from './initdb.ts';
import { type Lock, takeLock } from './lock.ts';
import { administratorPassword } from './password.ts';
import { commonFolder, type Place, settlePlace } from './place.ts';
import { type Postmaster, startOrAdopt, stopPostmaster } from './postmaster.ts';
import { prepareServer } from './roles.ts';
import { roomIn } from './room.ts';
import type { Server } from './server.ts';

export interface EmbeddedOptions {
  /** The port this process will serve on, if known yet. */
  port?: number;
  /** A line for the person who started the program. */
  say?: (line: string) => void;
  /** Another process took the folder while PostgreSQL was away: there is nothing left to do but end. */
  onTaken?: (refusal: unknown) => void;
  /** The package folder of other binaries. */
  binaries?: string;
  /** Where data goes that PostgreSQL cannot reach otherwise. */
  common?: string;
  hasRoom?: () => Promise<boolean>;
}

/**
 * Opens a data folder: makes the database at the first start, starts PostgreSQL or adopts the one that runs, and takes
 * the folder's lock. From then on a PostgreSQL that dies is started again. Refused where another process has the
 * folder, where it is of another major version, and where PostgreSQL cannot run here.
 */
export async function openEmbedded(folder: string, options: EmbeddedOptions = {}): Promise<Cluster> {
  const say = sayer(options);
  const common = options.common ?? commonFolder;
  const place = await settlePlace(folder, say, common);
  const binaries = await prepareBinaries(place.account, isRoot() ? common : place.folder, options.binaries);
  const password = await administratorPassword(place.folder);
  await makeCluster(place, binaries, password);
  return hold(place, binaries, password, options);
}

const sayer = (options: EmbeddedOptions) => options.say ?? ((line: string) => console.error(line));

async function hold(
  place: Place,
  binaries: Binaries,
  password: string,
  options: EmbeddedOptions,
): Promise<Cluster> {
  const listeners: ((state: ClusterState) => void)[] = [];
  let state: ClusterState = 'here';
  let closing = false;
  let port = options.port;
  let running: Postmaster;
  let lock: Lock | null = null;
  let recovering: Promise<void> = Promise.resolve();
  const say = sayer(options);

  const change = (to: ClusterState) => {
    state = to;
    for (const listener of listeners) listener(to);
  };
  const serverOf = (postmaster: Postmaster): Server => ({
    at: postmaster.socket,
    administrator: 'postgres',
    password,
    database: 'fettle',
  });
  const lost = () => {
    lock = null;
    if (closing) return;
    change('away');
    recovering = recover();
  };
  const open = async () => {
    running = await startOrAdopt(place, binaries);
    await prepareServer(serverOf(running));
    lock = await takeLock(serverOf(running), port, lost);
  };

  /** Starts PostgreSQL again and takes the lock again; another holder, or a refusal to start, ends the process. */
  async function recover(): Promise<void> {
    for (let wait = 50; !closing; wait = Math.min(wait * 2, 5000)) {
      try {
        await open();
        return change('here');
      } catch (error) {
        if ((error as Refusal).code === 'folder-in-use') return taken(error);
        say(`The database is away: ${(error as Error).message}`);
        await sleep(wait);
      }
    }
  }
  const taken =
    options.onTaken ??
    ((refusal: unknown) => {
      say((refusal as Error).message);
      process.exit(1);
    });

  await open();
  return {
    folder: place.folder,
    data: place.data,
    // The socket's folder may be another one after PostgreSQL was started again.
    get server() {
      return serverOf(running);
    },
    hasRoom: options.hasRoom ?? roomIn(place.data),
    beforeMigrating: async (server, version) => {
      const file = await backUpBeforeMigrating(place.folder, server, version);
      say(`Before the data is brought to a newer schema, a backup was made: ${file}`);
    },
    isAway: () => state === 'away',
    onChange: listener => void listeners.push(listener),
    async announce(newPort) {
      port = newPort;
      await lock?.announce(newPort);
    },
    async close() {
      closing = true;
      await recovering;
      const held = lock;
      // Stopped while the lock is still held, so that no other process meets a PostgreSQL that is about to end.
      if (held) await stopPostmaster(running, place.data);
      await held?.release();
    },
  };
}
