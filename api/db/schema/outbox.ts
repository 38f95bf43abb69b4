import { pgTable, primaryKey, text, uniqueIndex, uuid } from 'drizzle-orm/pg-core';
import { instant, randomId, workshopId } from './columns.ts';

/**
 * What a search engine beside the database has yet to hear of. One row a subject: touching it again gives it a new
 * id, so a feeder that deletes by id never drops a change it has not seen. That a whole bench was erased outlives the
 * bench, so no foreign key leads to it.
 */
export const outbox = pgTable(
  'outbox',
  {
    workshop: workshopId(),
    id: randomId(),
    kind: text('kind').$type<'part' | 'model' | 'workshop'>().notNull(),
    subject: uuid('subject').notNull(),
    at: instant('at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    uniqueIndex('outbox_subject').on(table.workshop, table.kind, table.subject),
  ],
);
