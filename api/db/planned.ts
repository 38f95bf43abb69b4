import { type SQL, sql } from 'drizzle-orm';
import { PgDialect } from 'drizzle-orm/pg-core';
import { clientOf } from './copy-rows.ts';
import type { Tx } from './store.ts';

const dialect = new PgDialect();

/**
 * Runs a statement that each connection parses and plans once and keeps: for what every question asks, where planning
 * would take longer than looking. Its text must not vary with what is asked, so lists go in as `anyOf`.
 */
export async function planned<Row extends Record<string, unknown>>(tx: Tx, statement: SQL): Promise<Row[]> {
  const { sql: text, params } = dialect.sqlToQuery(statement);
  return (await clientOf(tx).unsafe(text, params as string[], { prepare: true })) as unknown as Row[];
}

/** `any` of these ids, as one parameter however many there are: `part.id = ${anyOf(ids)}`. */
export const anyOf = (ids: readonly string[]): SQL => sql`any(${`{${ids.join(',')}}`}::uuid[])`;

/** Texts as PostgreSQL writes an array of them. */
export const textArray = (texts: readonly string[]): string =>
  `{${texts.map(text => `"${text.replace(/["\\]/g, '\\$&')}"`).join(',')}}`;
