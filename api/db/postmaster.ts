import { execFileSync, spawn } from 'node:child_process';
import { closeSync, existsSync, openSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { refuse } from '../refusal.ts';
import type { Binaries } from './binaries.ts';
import { diskFull } from './errors.ts';
import { programEnvironment } from './initdb.ts';
import type { Place } from './place.ts';
import { makeSocketFolder, removeOldSocketFolders } from './socket-folder.ts';

/** A running PostgreSQL over our data. */
export interface Postmaster {
  pid: number;
  /** The path of its socket. */
  socket: string;
}

/** Recovery after a crash replays what was written since the last checkpoint; a large one takes minutes. */
const startLimit = 300_000;
/** How long processes of a PostgreSQL that was killed may hold its shared memory: until their query ends. */
const orphanLimit = 60_000;
const port = 5432;

/**
 * The PostgreSQL that runs over this data, or a new one. Never starts over a running one: the file `postmaster.pid`
 * tells, and PostgreSQL itself refuses where two try at once.
 */
export async function startOrAdopt(place: Place, binaries: Binaries): Promise<Postmaster> {
  const until = Date.now() + startLimit;
  const orphansUntil = Date.now() + orphanLimit;
  for (;;) {
    const running = runningPostmaster(place.data);
    if (running) {
      if (running.ready) return { pid: running.pid, socket: running.socket };
      // Starting, recovering or stopping: it is ready, or gone, before long.
    } else {
      disownStalePid(place.data);
      const failure = await start(place, binaries, until);
      if (failure === null) continue;
      if (failure.includes('No space left on device')) throw diskFull(new Error(failure));
      // Another process starts it at the same time, or what was killed is not quite gone.
      if (!/"postmaster.pid"|shared memory block/.test(failure) || Date.now() > orphansUntil)
        throw startRefusal(place, failure);
    }
    if (Date.now() > until) throw startRefusal(place, 'it was not ready within five minutes');
    await sleep(50);
  }
}

const startRefusal = (place: Place, why: string) =>
  refuse('database-not-started', {
    place: place.data,
    message: `PostgreSQL could not be started: ${why.trim().split('\n').slice(-3).join(' ')}`,
    remedy: `Look at the end of ${logFile(place)} for the reason.`,
  });

const logFile = (place: Place) => join(place.folder, 'postgres.log');

/** What `postmaster.pid` says, where that process lives and is a PostgreSQL over this data; else null. */
export function runningPostmaster(data: string): (Postmaster & { ready: boolean }) | null {
  const lines = readPidFile(data);
  const pid = Number(lines?.[0]);
  if (!lines || !(pid > 0) || !isPostgresOver(pid, data)) return null;
  return { pid, socket: `${lines[4]}/.s.PGSQL.${lines[3]}`, ready: lines[7]?.trim() === 'ready' };
}

function readPidFile(data: string): string[] | null {
  try {
    return readFileSync(join(data, 'postmaster.pid'), 'utf8').split('\n');
  } catch {
    return null;
  }
}

/**
 * After a power cut the number in `postmaster.pid` may belong to any other process, and PostgreSQL would refuse to
 * start. A file that names its own parent it knows for stale; the rest of the file it still needs, to look for orphans.
 */
function disownStalePid(data: string): void {
  const lines = readPidFile(data);
  if (lines && isAlive(Number(lines[0])))
    writeFileSync(join(data, 'postmaster.pid'), [String(process.pid), ...lines.slice(1)].join('\n'));
}

export function isAlive(pid: number): boolean {
  if (!(pid > 0)) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/** One that has ended, but was not yet taken note of by its parent, has no command any more. */
function isPostgresOver(pid: number, data: string): boolean {
  try {
    const command = existsSync('/proc/self/cmdline')
      ? readFileSync(`/proc/${pid}/cmdline`, 'utf8').split('\0').join(' ')
      : execFileSync('ps', ['-ww', '-o', 'command=', '-p', String(pid)], { encoding: 'utf8' });
    return basename(command.split(' -D ')[0]!.trim()) === 'postgres' && command.includes(data);
  } catch {
    return false;
  }
}

/** Starts PostgreSQL and waits until it is ready; answers what it said when it did not get that far, else null. */
async function start(place: Place, binaries: Binaries, until: number): Promise<string | null> {
  const socketFolder = await makeSocketFolder(place.data, place.account);
  const log = logFile(place);
  if ((statSync(log, { throwIfNoEntry: false })?.size ?? 0) > 4 << 20) renameSync(log, `${log}.old`);
  const output = openSync(log, 'a', 0o600);
  const from = statSync(log).size;
  // A process group of its own: Ctrl-C at the terminal reaches the application alone, which then closes in order.
  const child = spawn(join(binaries.folder, 'bin/postgres'), ['-D', place.data, ...settings(socketFolder)], {
    ...place.account,
    cwd: '/',
    detached: true,
    stdio: ['ignore', output, output],
    env: programEnvironment(),
  });
  closeSync(output);
  child.unref();
  const ended = new Promise<true>(resolve => {
    child.once('exit', () => resolve(true));
    child.once('error', () => resolve(true));
  });
  while (Date.now() < until) {
    const running = runningPostmaster(place.data);
    if (running?.pid === child.pid && running?.ready) {
      await removeOldSocketFolders(place.data, socketFolder);
      return null;
    }
    if (await Promise.race([ended, sleep(20, false)])) {
      await rm(socketFolder, { recursive: true, force: true });
      return readFileSync(log).subarray(from).toString('utf8') || 'it ended at once and said nothing';
    }
  }
  return 'it was not ready within five minutes';
}

/** Durable as PostgreSQL is by itself, on no network, small enough for a workshop's computer. */
const settings = (socketFolder: string) =>
  Object.entries({
    listen_addresses: '',
    unix_socket_directories: `"${socketFolder}"`,
    unix_socket_permissions: '0700',
    port: String(port),
    max_connections: '40',
    password_encryption: 'scram-sha-256',
    max_wal_size: '256MB',
    log_line_prefix: '%m [%p] ',
    // The statement of a failed query may hold a customer's words.
    log_min_error_statement: 'panic',
    log_timezone: 'UTC',
    timezone: 'UTC',
  }).flatMap(([name, value]) => ['-c', `${name}=${value}`]);

/** Stops PostgreSQL: open transactions are broken off, what was acknowledged is written out. */
export async function stopPostmaster(running: Postmaster, data: string): Promise<void> {
  for (const [signal, limit] of [
    ['SIGINT', 60_000],
    ['SIGQUIT', 10_000],
  ] as const) {
    if (!isPostgresOver(running.pid, data)) break;
    process.kill(running.pid, signal);
    for (const until = Date.now() + limit; isPostgresOver(running.pid, data) && Date.now() < until; )
      await sleep(20);
  }
  await rm(dirname(running.socket), { recursive: true, force: true });
}
