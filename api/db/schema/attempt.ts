import { index, integer, pgTable, text, timestamp } from 'drizzle-orm/pg-core';

/** How often something was tried lately; only `count_attempt` and `forget_attempts` come to it. */
export const attempt = pgTable(
  'attempt',
  {
    /** A keyed digest of what is counted. */
    bucket: text('bucket').primaryKey(),
    tries: integer('tries').notNull(),
    until: timestamp('until', { withTimezone: true, mode: 'date' }).notNull(),
  },
  table => [index('attempt_until').on(table.until)],
);
