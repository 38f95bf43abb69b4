import { getTableColumns, is, SQL } from 'drizzle-orm';
import { getTableConfig, type PgColumn, PgTable } from 'drizzle-orm/pg-core';
import type { Sql } from 'postgres';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import * as schema from '../../../api/db/schema/index.ts';
import { connect } from '../../../api/db/server.ts';
import { createTestDatabase } from '../../support/postgres.ts';

const tables = Object.values(schema).filter(value => is(value, PgTable)) as PgTable[];
const byName = new Map(tables.map(table => [getTableConfig(table).name, table]));

let sql: Sql;
beforeAll(async () => {
  sql = connect(await createTestDatabase(), 'fettle_admin');
  await sql`set role fettle_owner`;
});
afterAll(() => sql.end());

test('migrations make the tables that the program knows, and no other', async () => {
  const rows = await sql<{ name: string }[]>`
    select relname as name from pg_class where relnamespace = 'public'::regnamespace and relkind = 'r'`;
  expect(rows.map(row => row.name).sort()).toEqual([...byName.keys(), 'migration'].sort());
});

describe.each([...byName])('%s', (name, table) => {
  test('has the same columns', async () => {
    const rows = await sql<{ name: string; type: string; required: boolean; made: boolean }[]>`
      select attname as name, format_type(atttypid, atttypmod) as type, attnotnull as required,
             atthasdef as made
      from pg_attribute where attrelid = ${name}::regclass and attnum > 0 and not attisdropped order by attname`;
    const known = Object.values(getTableColumns(table) as Record<string, PgColumn>)
      .map(column => ({
        name: column.name,
        type: column.getSQLType(),
        required: column.notNull,
        made: column.hasDefault || column.generated !== undefined,
      }))
      .sort((a, b) => (a.name < b.name ? -1 : 1));
    expect([...rows].sort((a, b) => (a.name < b.name ? -1 : 1))).toEqual(known);
  });

  test('has the same keys', async () => {
    const rows = await sql<{ key: string }[]>`
      select regexp_replace(pg_get_constraintdef(oid), ' NOT VALID', '') as key from pg_constraint
      where conrelid = ${name}::regclass and contype in ('p', 'f')`;
    expect(rows.map(row => row.key.replaceAll('"', '')).sort()).toEqual(keysOf(table).sort());
  });

  test('has the same checks', async () => {
    const rows = await sql<{ name: string }[]>`
      select conname as name from pg_constraint where conrelid = ${name}::regclass and contype = 'c'`;
    const known = getTableConfig(table).checks.map(check => check.name);
    expect(rows.map(row => row.name).sort()).toEqual(known.sort());
  });

  test('has the same indexes', async () => {
    const rows = await sql<{ definition: string }[]>`
      select pg_get_indexdef(indexrelid) as definition from pg_index
      where indrelid = ${name}::regclass and not indisprimary`;
    const found = rows.map(row => plainly(row.definition.replace(/^.*? (UNIQUE )?INDEX /, '$1')));
    expect(found.sort()).toEqual(indexesOf(table).sort());
  });
});

function keysOf(table: PgTable): string[] {
  const { primaryKeys, foreignKeys, columns } = getTableConfig(table);
  const names = (list: { name: string }[]) => list.map(column => column.name).join(', ');
  const single = columns.filter(column => column.primary);
  return [
    ...(single.length ? [`PRIMARY KEY (${names(single)})`] : []),
    ...primaryKeys.map(key => `PRIMARY KEY (${names(key.columns)})`),
    ...foreignKeys.map(key => {
      const { columns, foreignTable, foreignColumns } = key.reference();
      const onDelete =
        key.onDelete && key.onDelete !== 'no action' ? ` ON DELETE ${key.onDelete.toUpperCase()}` : '';
      const of = getTableConfig(foreignTable as PgTable).name;
      return `FOREIGN KEY (${names(columns)}) REFERENCES ${of}(${names(foreignColumns)})${onDelete}`;
    }),
  ];
}

/** Each index as PostgreSQL would write it, but for what it adds by itself. */
function indexesOf(table: PgTable): string[] {
  const { name, indexes } = getTableConfig(table);
  return indexes.map(({ config }) => {
    const columns = config.columns.map(column => {
      if (is(column, SQL)) return chunksOf(column);
      const { name, indexConfig } = column as { name: string; indexConfig?: { opClass?: string } };
      return [name, indexConfig?.opClass].filter(Boolean).join(' ');
    });
    const where = config.where ? ` WHERE ${chunksOf(config.where)}` : '';
    const unique = config.unique ? 'UNIQUE ' : '';
    return plainly(
      `${unique}${config.name} ON public.${name} USING ${config.method ?? 'btree'} (${columns.join(', ')})${where}`,
    );
  });
}

const chunksOf = (sql: SQL) =>
  sql.queryChunks
    .map(chunk =>
      'name' in (chunk as object) ? (chunk as PgColumn).name : (chunk as { value: string[] }).value.join(''),
    )
    .join('');

const plainly = (definition: string) =>
  definition
    .replaceAll('"', '')
    .replace(/WHERE \((.*)\)$/, 'WHERE $1')
    .replaceAll(/\s+/g, ' ')
    .toLowerCase();
