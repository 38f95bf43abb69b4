import { setTimeout as sleep } from 'node:timers/promises';
import type { Sql } from 'postgres';
import { refuse } from '../refusal.ts';
import { isAlive } from './postmaster.ts';
import { connect, type Server } from './server.ts';

/** The right to the data folder, held as long as one connection lives. */
export interface Lock {
  /** Shows a second process on which port this one serves. */
  announce(port: number): Promise<void>;
  release(): Promise<void>;
}

const key = 'fettlebench data folder';
const label = (port: number | undefined) => `fettlebench pid ${process.pid} port ${port ?? '-'}`;

/**
 * Takes the folder's lock for this process. Refused, with the holder named, where another process has it. `lost` is
 * called when the connection breaks, for with it the lock is gone.
 */
export async function takeLock(server: Server, port: number | undefined, lost: () => void): Promise<Lock> {
  let held = false;
  // A connection of its own that is never recycled: one from a pool would be, within the hour, and the lock with it.
  const sql = connect(server, 'fettle_login', {
    database: 'postgres',
    max: 1,
    idle_timeout: 0,
    max_lifetime: null,
    connection: { application_name: label(port) },
    onclose: () => {
      if (!held) return;
      held = false;
      void sql.end({ timeout: 0 });
      lost();
    },
  });
  try {
    await waitForLock(sql);
    held = true;
  } catch (error) {
    await sql.end({ timeout: 1 });
    throw error;
  }
  return {
    async announce(newPort) {
      await sql`select set_config('application_name', ${label(newPort)}, false)`;
    },
    async release() {
      held = false;
      await sql.end({ timeout: 5 });
    },
  };
}

interface Holder {
  application: string;
  since: Date;
}

async function waitForLock(sql: Sql): Promise<void> {
  for (const until = Date.now() + 10_000; ; ) {
    const [tried] = await sql<{ taken: boolean }[]>`
      select pg_try_advisory_lock(hashtextextended(${key}, 0)) as taken`;
    if (tried!.taken) return;
    const [holder] = await sql<Holder[]>`
      select activity.application_name as application, activity.backend_start as since
      from pg_locks join pg_stat_activity as activity using (pid)
      where pg_locks.locktype = 'advisory' and pg_locks.granted and activity.datname = current_database()
        and pg_locks.classid::bigint << 32 | pg_locks.objid::bigint = hashtextextended(${key}, 0)`;
    const pid = Number(/pid (\d+)/.exec(holder?.application ?? '')?.[1]);
    // A holder that was killed still shows until PostgreSQL has noticed; that one is waited for.
    if ((holder && isAlive(pid)) || Date.now() > until) throw inUse(holder);
    await sleep(50);
  }
}

function inUse(holder: Holder | undefined) {
  const [, pid, port] = /pid (\d+) port (\S+)/.exec(holder?.application ?? '') ?? [];
  const where = port && port !== '-' ? `, which serves on port ${port}` : '';
  const since = holder ? ` since ${holder.since.toISOString()}` : '';
  return refuse('folder-in-use', {
    place: 'data folder',
    message: `The data folder belongs to another process: number ${pid ?? 'unknown'}${where}${since}.`,
    remedy: 'Use that one, stop it first, or name another folder with FETTLE_DATA.',
  });
}
