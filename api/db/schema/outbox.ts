import { foreignKey, pgTable, primaryKey, text, uniqueIndex, uuid } from 'drizzle-orm/pg-core';
import { instant, randomId, workshopId } from './columns.ts';
import { workshop } from './workshop.ts';

/**
 * What a search engine beside the database has yet to hear of. One row a subject: touching it again gives it a new
 * id, so a feeder that deletes by id never drops a change it has not seen.
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
    foreignKey({ columns: [table.workshop], foreignColumns: [workshop.workshop] }),
    uniqueIndex('outbox_subject').on(table.workshop, table.kind, table.subject),
  ],
);
