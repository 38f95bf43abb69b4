import { boolean, pgTable, text, timestamp, uuid } from 'drizzle-orm/pg-core';
import { instant } from './columns.ts';

/** A bench: everything else belongs to one. Its key is its own workshop. */
export const workshop = pgTable('workshop', {
  workshop: uuid('workshop').primaryKey(),
  name: text('name').notNull(),
  demo: boolean('demo').notNull().default(false),
  createdAt: instant('created_at'),
  openedAt: timestamp('opened_at', { withTimezone: true, mode: 'date' }),
});
