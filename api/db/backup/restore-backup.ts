import { randomBytes } from 'node:crypto';
import { refuse } from '../../refusal.ts';
import { errorCode, refusalFor } from '../errors.ts';
import { migrate, readMigrations } from '../migrate.ts';
import { type Server, withConnection } from '../server.ts';
import type { Manifest } from './manifest.ts';
import { eachPiece, verifyBackup } from './read-backup.ts';
import { createBeside, dropBeside, dropKept, swapIn } from './swap-databases.ts';
import { asKeeper, copyIn, digestOf, ofTheBench, snapshot, type Table, tablesInOrder } from './tables.ts';

/** What was restored: when the backup was made, and how many rows each table has. */
export interface Restored {
  madeAt: string;
  tables: { name: string; rows: number }[];
  /** The database that was there before, kept until the next restore. */
  kept: string;
}

/**
 * Puts a backup in the place of everything there is. It is checked whole, loaded into a new empty database at its own
 * schema version, compared row by row, migrated on, and only then swapped in; `whileClosed` closes all connections
 * meanwhile. Whatever goes wrong before leaves everything as it was.
 */
export async function restoreBackup(
  server: Server,
  file: string,
  whileClosed: <T>(work: () => Promise<T>) => Promise<T> = work => work(),
): Promise<Restored> {
  const manifest = await verifyBackup(file);
  if (manifest.bench) throw ofOneBench(file);
  await checkSchema(file, manifest);
  return besides(server, file, manifest, async fresh => {
    await withConnection(fresh, 'fettle_admin', async sql => {
      await sql`set role fettle_owner`;
      await sql`analyze`;
    });
    const kept = await whileClosed(() => swapIn(server, fresh.database));
    await dropKept(server, kept);
    return {
      madeAt: manifest.madeAt,
      tables: manifest.tables.map(table => ({ name: table.name, rows: table.rows })),
      kept,
    };
  });
}

/** Loads a verified backup into a database of its own beside ours, compared and migrated on, for `work`. */
export async function besides<T>(
  server: Server,
  file: string,
  manifest: Manifest,
  work: (fresh: Server) => Promise<T>,
): Promise<T> {
  const name = `${server.database}_restore_${randomBytes(4).toString('hex')}`;
  try {
    const fresh = await createBeside(server, name);
    await migrate(fresh, { upTo: manifest.schema.length });
    await load(fresh, file, manifest);
    await compare(fresh, file, manifest);
    await migrate(fresh);
    return await work(fresh);
  } catch (error) {
    await dropBeside(server, name).catch(() => {});
    throw refusalFor(error, false);
  }
}

const ofOneBench = (file: string) =>
  refuse('backup-of-one-bench', {
    place: file,
    message: 'This holds one bench alone; putting it in the place of everything would lose the others.',
    remedy: 'Nothing was changed. "fettle restore" adds such a bench to those there are.',
  });

export async function checkSchema(file: string, manifest: Manifest): Promise<void> {
  const migrations = await readMigrations();
  if (manifest.schema.length > migrations.length)
    throw refuse('backup-newer', {
      place: file,
      message: `The backup has schema version ${manifest.schema.length}; this program knows versions up to ${migrations.length}.`,
      remedy: 'Nothing was changed. Restore it with the newer program that made it.',
    });
  for (const [index, { name, sha256 }] of manifest.schema.entries())
    if (migrations[index]!.sha256 !== sha256)
      throw refuse('backup-other-schema', {
        place: file,
        message: `The backup was made after another migration ${index + 1} ("${name}") than this program has.`,
        remedy: 'Nothing was changed. Restore it with the program that made it.',
      });
}

/**
 * Fills the tables in the order of the file, which is that of the backup's own schema: each table after those it
 * refers to.
 */
async function load(fresh: Server, file: string, manifest: Manifest): Promise<void> {
  await asKeeper(fresh, async tx => {
    const tables = new Map((await tablesInOrder(tx)).map(table => [table.name, table]));
    checkTables(file, manifest, tables);
    await eachPiece(file, async (name, rows) => {
      const table = manifest.tables.find(one => one.name === name)!;
      try {
        await copyIn(tx, table, rows);
      } catch (error) {
        throw loadRefusal(file, name, error);
      }
    });
  });
}

/** Rows that the database does not take: class 22 is bad data, 23 a broken key. */
const loadRefusal = (file: string, table: string, error: unknown) =>
  /^2[23]/.test(errorCode(error) ?? '')
    ? refuse(
        'backup-not-readable',
        {
          place: file,
          message: `The rows of table "${table}" cannot be loaded: ${(error as Error).message}.`,
          remedy: 'Nothing was changed. Use another backup.',
        },
        error,
      )
    : error;

function checkTables(file: string, manifest: Manifest, tables: Map<string, Table>): void {
  const list = (names: string[]) => [...names].sort().join(', ');
  const expected = [...tables.values()].filter(table => !manifest.bench || ofTheBench(table));
  const same =
    manifest.tables.length === expected.length &&
    manifest.tables.every(table => expected.some(one => one.name === table.name)) &&
    manifest.tables.every(table => list(table.columns) === list(tables.get(table.name)?.columns ?? [])) &&
    manifest.members.every(member => tables.has(member.name.split('/')[1]!));
  if (!same)
    throw refuse('backup-not-readable', {
      place: file,
      message: 'Its tables are not those of its schema version.',
      remedy: 'Nothing was changed. Use another backup.',
    });
}

/** Reads back what was loaded: the same number of rows in each table, with the same digest. */
async function compare(fresh: Server, file: string, manifest: Manifest): Promise<void> {
  await asKeeper(
    fresh,
    async tx => {
      for (const table of manifest.tables) {
        const loaded = await digestOf(tx, table);
        if (loaded.rows === table.rows && loaded.digest === table.digest) continue;
        throw refuse('backup-not-readable', {
          place: file,
          message: `Table "${table.name}" came out with ${loaded.rows} rows that are not the ${table.rows} of the backup.`,
          remedy: 'Nothing was changed. Use another backup.',
        });
      }
    },
    snapshot,
  );
}
