import type { Sql, TransactionSql } from 'postgres';
import { copyFrom } from '../copy-in.ts';
import { type Server, withConnection } from '../server.ts';
import { RowDigest } from './digest.ts';
import type { TableEntry } from './manifest.ts';

export type Table = Pick<TableEntry, 'name' | 'columns'>;

/**
 * Runs `work` in one transaction as the keeper, who sees the rows of every workshop. Row-level security is off, so
 * that an answer it would have filtered is an error; what is read comes from one snapshot.
 */
export function asKeeper<T>(server: Server, work: (tx: TransactionSql) => Promise<T>, mode = ''): Promise<T> {
  return withConnection(
    server,
    'fettle_admin',
    sql =>
      sql.begin(mode, async tx => {
        await tx`set local role fettle_keeper`;
        await tx`set local row_security = off`;
        await settle(tx);
        return work(tx);
      }) as Promise<T>,
  );
}

/** What COPY writes must be the same whatever the server's and the role's settings are. */
export async function settle(tx: TransactionSql): Promise<void> {
  await tx`set local timezone = 'UTC'`;
  await tx`set local datestyle = 'ISO, YMD'`;
  await tx`set local bytea_output = 'hex'`;
  await tx`set local extra_float_digits = 1`;
}

export const snapshot = 'isolation level repeatable read read only';

/**
 * What no backup holds: the journal of migrations, which the schema brings; and what lets somebody in for a while, so
 * that no session and no link that was used or ended since comes back to life.
 */
const left = ['migration', 'attempt', 'session', 'password_link', 'invitation'];

/** Every table that is kept, each after those it refers to, with the columns that are not worked out. */
export async function tablesInOrder(sql: Sql | TransactionSql): Promise<Table[]> {
  const tables = await sql<(Table & { needs: string[] })[]>`
    select relname as name,
      array(select attname::text from pg_attribute
            where attrelid = pg_class.oid and attnum > 0 and not attisdropped and attgenerated = ''
            order by attnum) as columns,
      array(select confrelid::regclass::text from pg_constraint
            where conrelid = pg_class.oid and contype = 'f' and confrelid <> conrelid) as needs
    from pg_class
    where relnamespace = 'public'::regnamespace and relkind = 'r' and relname <> all (${left})
    order by relname`;
  const done: Table[] = [];
  const placed = new Set<string>();
  while (done.length < tables.length) {
    const next = tables.filter(
      table => !placed.has(table.name) && table.needs.every(name => placed.has(name.replaceAll('"', ''))),
    );
    if (next.length === 0) throw new Error('Some tables refer to each other in a circle.');
    for (const { name, columns } of next) {
      done.push({ name, columns });
      placed.add(name);
    }
  }
  return done;
}

const quoted = (name: string) => `"${name.replaceAll('"', '""')}"`;
const target = ({ name, columns }: Table) => `public.${quoted(name)} (${columns.map(quoted).join(', ')})`;

/**
 * What of a bench goes with it to another place: the work. Who works there, what they did and what lets programs in
 * stays, for people are another server's there; so does what waits for a search engine, which is told anew.
 */
export const ofTheBench = (table: Table): boolean =>
  table.columns.includes('workshop') && !['member', 'api_token', 'audit', 'outbox'].includes(table.name);

/** The table as COPY writes it, piece by piece; under row-level security, of one bench alone, what is seen of it. */
export async function* copyOut(
  tx: TransactionSql,
  table: Table,
  whose: 'all' | 'seen' = 'all',
): AsyncGenerator<Buffer> {
  const source =
    whose === 'all'
      ? target(table)
      : `(select ${table.columns.map(quoted).join(', ')} from public.${quoted(table.name)})`;
  const stream = await tx.unsafe(`copy ${source} to stdout`).readable();
  try {
    yield* stream.iterator({ destroyOnReturn: false });
  } finally {
    // The driver stops its socket when the stream is full, and lets it go on when more is asked for. One that ends
    // while it is full asks no more, and one that is left early asks never: the connection would hang for ever.
    stream.resume();
    stream._read(0);
  }
}

/** Takes rows of the table in, as COPY wrote them. */
export const copyIn = (tx: TransactionSql, table: Table, rows: AsyncIterable<Uint8Array>): Promise<void> =>
  copyFrom(tx, `copy ${target(table)} from stdin`, rows);

/** The rows of a table as they are now: how many, and their digest. */
export async function digestOf(tx: TransactionSql, table: Table): Promise<RowDigest> {
  const digest = new RowDigest();
  for await (const piece of copyOut(tx, table)) digest.update(piece);
  return digest;
}
