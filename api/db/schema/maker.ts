import { sql } from 'drizzle-orm';
import { foreignKey, pgTable, primaryKey, text, uniqueIndex } from 'drizzle-orm/pg-core';
import { foundAs, instant, randomId, workshopId } from './columns.ts';
import { workshop } from './workshop.ts';

/** Who made a machine and gave its parts their numbers. */
export const maker = pgTable(
  'maker',
  {
    workshop: workshopId(),
    id: randomId(),
    name: text('name').notNull(),
    /** The name as finding compares it. */
    findKey: foundAs(),
    createdAt: instant('created_at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop], foreignColumns: [workshop.workshop] }),
    uniqueIndex('maker_name').on(table.workshop, sql`lower(${table.name})`),
  ],
);
