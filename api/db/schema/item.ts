import { foreignKey, pgTable, primaryKey, text, uniqueIndex } from 'drizzle-orm/pg-core';
import type { CategoryName } from '../../../indexer/index.ts';
import { instant, randomId, workshopId } from './columns.ts';
import { workshop } from './workshop.ts';

/**
 * What can be bought or drawn from a bin as one thing: a size with the attributes that make it another article,
 * e.g. `screw M3x0.5x8 pan phillips`. A part without a size is its own item: `part <maker> <number>`.
 */
export const item = pgTable(
  'item',
  {
    workshop: workshopId(),
    id: randomId(),
    name: text('name').notNull(),
    category: text('category').$type<CategoryName>().notNull(),
    size: text('size'),
    createdAt: instant('created_at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop], foreignColumns: [workshop.workshop] }),
    uniqueIndex('item_name').on(table.workshop, table.name),
  ],
);
