import { getTableColumns, getTableName, sql } from 'drizzle-orm';
import type { PgColumn, PgTable } from 'drizzle-orm/pg-core';
import type { TransactionSql } from 'postgres';
import { copyFrom } from './copy-in.ts';
import { copyLine, storableJson, storableText } from './copy-text.ts';
import type { Tx } from './store.ts';

type Rows<T> = Iterable<T> | AsyncIterable<T>;

/**
 * Inserts many rows at once, at nearly the speed of a bare COPY, and answers how many there were. A table under
 * row-level security takes no COPY, so the rows go by COPY into a temporary table and from there, with the workshop
 * of the transaction, into theirs. `columns` names the given ones; the workshop is not among them, and what is left
 * out has its default. Characters that PostgreSQL cannot keep become U+FFFD. `skipKnown` passes over rows whose key
 * is there already.
 */
export async function copyInto<
  T extends PgTable,
  K extends Exclude<keyof T['$inferInsert'], 'workshop'> & string,
>(
  tx: Tx,
  table: T,
  columns: readonly K[],
  rows: Rows<Pick<T['$inferInsert'], K>>,
  { skipKnown = false } = {},
): Promise<number> {
  const known = getTableColumns(table) as Record<string, PgColumn>;
  const chosen = columns.map(name => known[name]!);
  const names = sql.join(
    chosen.map(column => sql.identifier(column.name)),
    sql`, `,
  );
  const load = sql.identifier(`load_${getTableName(table)}`);
  await tx.execute(
    sql`create temporary table ${load} on commit drop as select ${names} from ${table} with no data`,
  );
  const client = clientOf(tx);
  const columnList = chosen.map(column => `"${column.name}"`).join(', ');
  await copyFrom(
    client,
    `copy pg_temp."load_${getTableName(table)}" (${columnList}) from stdin`,
    inChunks(rows, columns, chosen),
  );
  const written = await tx.execute(
    sql`with written as (
      insert into ${table} (workshop, ${names})
      select current_setting('app.workshop')::uuid, ${names} from pg_temp.${load}
      ${skipKnown ? sql`on conflict do nothing` : sql``}
      returning 1
    ) select count(*)::integer as count from written`,
  );
  await tx.execute(sql`drop table pg_temp.${load}`);
  return (written[0] as { count: number }).count;
}

/** The driver's own transaction, which drizzle keeps below its session: the one that speaks COPY. */
export const clientOf = (tx: Tx): TransactionSql =>
  (tx as unknown as { session: { client: TransactionSql } }).session.client;

/** The rows as lines of COPY, some 64 KB at a time. */
async function* inChunks<T>(
  rows: Rows<T>,
  names: readonly (keyof T)[],
  columns: PgColumn[],
): AsyncGenerator<string> {
  let chunk = '';
  for await (const row of rows) {
    chunk += copyLine(names.map((name, at) => field(row[name], columns[at]!)));
    if (chunk.length > 65_536) {
      yield chunk;
      chunk = '';
    }
  }
  if (chunk) yield chunk;
}

function field(value: unknown, column: PgColumn): string | null {
  if (value === null || value === undefined) return null;
  if (value instanceof Uint8Array) return `\\x${Buffer.from(value).toString('hex')}`;
  if (column.dataType === 'json') return storableJson(value);
  return storableText(String(column.mapToDriverValue(value)));
}
