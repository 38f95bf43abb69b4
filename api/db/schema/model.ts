import { sql } from 'drizzle-orm';
import { foreignKey, pgTable, primaryKey, text, uniqueIndex, uuid } from 'drizzle-orm/pg-core';
import { foundAs, instant, randomId, workshopId } from './columns.ts';
import { maker } from './maker.ts';

/** One model of one maker. */
export const model = pgTable(
  'model',
  {
    workshop: workshopId(),
    id: randomId(),
    maker: uuid('maker').notNull(),
    name: text('name').notNull(),
    findKey: foundAs(),
    createdAt: instant('created_at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop, table.maker], foreignColumns: [maker.workshop, maker.id] }),
    uniqueIndex('model_name').on(table.workshop, table.maker, sql`lower(${table.name})`),
  ],
);
