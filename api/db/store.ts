import { sql as query } from 'drizzle-orm';
import type { PgTransactionConfig } from 'drizzle-orm/pg-core';
import { drizzle, type PostgresJsDatabase } from 'drizzle-orm/postgres-js';
import type { Sql } from 'postgres';
import { refuse } from '../refusal.ts';
import type { Cluster } from './cluster.ts';
import { databaseAway, isAway, refusalFor } from './errors.ts';
import { migrate } from './migrate.ts';
import { prepareServer } from './roles.ts';
import * as schema from './schema/index.ts';
import { connect, type Server, serverAt, withConnection } from './server.ts';

type Database = PostgresJsDatabase<typeof schema>;

/** A drizzle transaction that sees one workshop alone. */
export type Tx = Parameters<Parameters<Database['transaction']>[0]>[0];

/** A document that was claimed for reading: where it is, and the lease that proves it. */
export interface Claim {
  workshop: string;
  id: string;
  lease: string;
}

/** What a workshop remembers. Embedded and server form differ in the connection alone. */
export interface Store {
  readonly server: Server;
  /** The schema version of the data. */
  readonly version: number;
  /**
   * Runs `work` in one transaction that sees and writes the rows of this workshop alone; an error undoes all of it.
   * Refused with `database-away` while PostgreSQL does not answer, with `disk-full` where a write finds no room.
   */
  inWorkshop<T>(workshop: string, work: (tx: Tx) => Promise<T>): Promise<T>;
  /** The same for reading alone, all of it from one snapshot however long it takes. */
  inSnapshot<T>(workshop: string, work: (tx: Tx) => Promise<T>): Promise<T>;
  /** The same for what is this person's alone; with a workshop, for the rows of that as well. */
  asPerson<T>(person: string, work: (tx: Tx) => Promise<T>, workshop?: string): Promise<T>;
  /** Runs `work` in one transaction that sees no rows: for the functions that are asked before it is known whose. */
  asNobody<T>(work: (tx: Tx) => Promise<T>): Promise<T>;
  /** Every bench's id, the one last opened first. */
  benches(): Promise<string[]>;
  createWorkshop(bench: { id: string; name: string; demo?: boolean }): Promise<void>;
  /** Takes the document that waited longest, of any workshop, for so many seconds; null where none waits. */
  claimDiagram(leaseSeconds: number): Promise<Claim | null>;
  /** Holds new transactions back, waits for the running ones, closes every connection while `work` runs, reopens. */
  whileClosed<T>(work: () => Promise<T>): Promise<T>;
  close(): Promise<void>;
}

export interface StoreOptions {
  /** Connections kept for requests. */
  connections?: number;
  /** Called before pending migrations of a database that holds anything: makes the backup that is kept. */
  beforeMigrating?: (server: Server, version: number) => Promise<void>;
  /** Asked before each transaction; false opens it for reading alone. */
  hasRoom?: () => boolean | Promise<boolean>;
}

const uuid = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/**
 * Opens what the workshops remember: roles and database where they are missing, pending migrations, then the pool.
 * Takes the administrator's `postgres://` address, a server, or the cluster that `openEmbedded` gave.
 */
export async function openStore(
  where: string | Server | Cluster,
  options: StoreOptions = {},
): Promise<Store> {
  const cluster = typeof where === 'object' && 'server' in where ? where : null;
  const named = typeof where === 'string' ? serverAt(where) : (where as Server);
  const server = cluster?.server ?? named;
  const beforeMigrating = options.beforeMigrating ?? cluster?.beforeMigrating;
  const hasRoom = options.hasRoom ?? cluster?.hasRoom ?? (() => true);

  await prepareServer(server);
  const before = beforeMigrating && ((version: number) => beforeMigrating(server, version));
  const version = await migrate(server, before ? { before } : {});
  await checkLetters(server);

  const openPool = () => {
    const pool: Sql = connect(cluster?.server ?? named, 'fettle_login', { max: options.connections ?? 10 });
    return { pool, db: drizzle(pool, { schema }) };
  };
  let open: { pool: Sql; db: Database } | null = openPool();
  let closed = false;
  let paused: Promise<unknown> = Promise.resolve();

  async function asApp<T>(
    workshop: string,
    work: (tx: Tx) => Promise<T>,
    person = '',
    mode?: PgTransactionConfig,
  ): Promise<T> {
    // Another pause may begin while one is waited for.
    for (let seen: unknown; seen !== paused; await seen) seen = paused;
    const used = open;
    if (!used || cluster?.isAway()) throw databaseAway();
    const readOnly = !(await hasRoom());
    try {
      return await used.db.transaction(async tx => {
        // Local: it ends with the transaction, so no pooled connection carries a workshop into the next request.
        await tx.execute(
          query`select set_config('role', 'fettle_app', true), set_config('app.workshop', ${workshop}, true),
                       set_config('app.person', ${person}, true)`,
        );
        if (readOnly) await tx.execute(query`set transaction read only`);
        return await work(tx);
      }, mode);
    } catch (error) {
      // The driver does not get over every lost connection: a pool that had one is left to finish, and replaced.
      if (isAway(error) && open === used) {
        open = openPool();
        void used.pool.end({ timeout: 5 });
      }
      throw refusalFor(error, readOnly);
    }
  }

  const close = async () => {
    const leaving = open;
    open = null;
    await leaving?.pool.end({ timeout: 10 });
  };

  // The lock is lost: whoever is in the middle of something is cut off, for another process may hold the data now.
  cluster?.onChange(state => {
    if (closed) return;
    if (state === 'away') {
      void open?.pool.end({ timeout: 0 });
      open = null;
    } else open ??= openPool();
  });

  return {
    get server() {
      return cluster?.server ?? named;
    },
    version,
    inWorkshop(workshop, work) {
      if (!uuid.test(workshop))
        throw refuse('bench-not-found', {
          place: 'workshop',
          message: 'This is not the id of a bench.',
          remedy: 'Choose a bench from the list of benches.',
        });
      return asApp(workshop, work);
    },
    inSnapshot: (workshop, work) =>
      asApp(workshop, work, '', { isolationLevel: 'repeatable read', accessMode: 'read only' }),
    asPerson: (person, work, workshop = '') => asApp(workshop, work, person),
    asNobody: work => asApp('', work),
    benches: () =>
      asApp('', async tx => {
        const rows = await tx.execute<{ id: string }>(query`select benches as id from benches()`);
        return rows.map(row => row.id);
      }),
    createWorkshop: bench =>
      asApp(bench.id, async tx => {
        await tx
          .insert(schema.workshop)
          .values({ workshop: bench.id, name: bench.name, demo: bench.demo ?? false });
      }),
    claimDiagram: leaseSeconds =>
      asApp('', async tx => {
        const [claim] = await tx.execute<{ workshop: string; id: string; lease: string }>(
          query`select workshop, id, lease from claim_diagram(${leaseSeconds})`,
        );
        return claim ? { workshop: claim.workshop, id: claim.id, lease: claim.lease } : null;
      }),
    async whileClosed(work) {
      await paused;
      const done = close().then(work);
      paused = done
        .catch(() => {})
        .then(() => {
          if (!closed && !cluster?.isAway()) open = openPool();
        });
      try {
        return await done;
      } finally {
        await paused;
      }
    },
    async close() {
      closed = true;
      await close();
    },
  };
}

/** Where letters beyond ASCII are not known as letters, ß, ö and all Japanese would silently never be found. */
async function checkLetters(server: Server): Promise<void> {
  const [row] = await withConnection(
    server,
    'fettle_admin',
    sql =>
      sql.begin(async tx => {
        await tx`set local role fettle_owner`;
        return tx<{ known: boolean }[]>`select cardinality(show_trgm('軸受')) > 0 as known`;
      }) as Promise<{ known: boolean }[]>,
  );
  if (!row?.known)
    throw refuse('database-letters', {
      place: 'database',
      message:
        'The database does not know letters beyond ASCII (its LC_CTYPE is C), so words could not be found.',
      remedy: 'Create the database with LC_CTYPE C.UTF-8 or another UTF-8 locale, and start again.',
    });
}
