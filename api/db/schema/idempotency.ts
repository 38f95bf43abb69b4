import { foreignKey, integer, jsonb, pgTable, primaryKey, text } from 'drizzle-orm/pg-core';
import { instant, workshopId } from './columns.ts';
import { workshop } from './workshop.ts';

/** The answer to a POST that was done, kept under its Idempotency-Key in the same transaction, so a repeat does nothing twice. */
export const idempotency = pgTable(
  'idempotency',
  {
    workshop: workshopId(),
    key: text('key').notNull(),
    /** Method, path and SHA-256 of the body: the same key with another request is refused. */
    request: text('request').notNull(),
    status: integer('status').notNull(),
    answer: jsonb('answer').notNull(),
    createdAt: instant('created_at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.key] }),
    foreignKey({ columns: [table.workshop], foreignColumns: [workshop.workshop] }),
  ],
);
