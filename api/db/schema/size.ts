import { sql } from 'drizzle-orm';
import { doublePrecision, foreignKey, index, pgTable, primaryKey, text, uuid } from 'drizzle-orm/pg-core';
import type { CategoryName } from '../../../indexer/index.ts';
import { workshopId } from './columns.ts';
import { model } from './model.ts';
import { workshop } from './workshop.ts';

/** The sizes that parts of a workshop have or had, taken apart by the database so that what is near can be looked for. */
export const size = pgTable(
  'size',
  {
    workshop: workshopId(),
    size: text('size').notNull(),
    category: text('category')
      .$type<CategoryName>()
      .notNull()
      .generatedAlwaysAs(sql`split_part(size, ' ', 1)`),
    /** With its pitch where it is metric, as the size writes it; null for a size of lengths alone. */
    thread: text('thread').generatedAlwaysAs(sql`substring(size from '…')`),
    /** The other figures in order, in millimetres. */
    lengths: doublePrecision('lengths').array().notNull().generatedAlwaysAs(sql`string_to_array('…', 'x')`),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.size] }),
    foreignKey({ columns: [table.workshop], foreignColumns: [workshop.workshop] }),
    index('size_category').on(table.workshop, table.category),
  ],
);

/** Which models take a size, in whichever of their lists. */
export const sizeModel = pgTable(
  'size_model',
  { workshop: workshopId(), size: text('size').notNull(), model: uuid('model').notNull() },
  table => [
    primaryKey({ columns: [table.workshop, table.size, table.model] }),
    foreignKey({
      columns: [table.workshop, table.model],
      foreignColumns: [model.workshop, model.id],
    }).onDelete('cascade'),
    index('size_model_model').on(table.workshop, table.model),
  ],
);
