import { foreignKey, index, pgTable, primaryKey, text, uuid } from 'drizzle-orm/pg-core';
import { workshopId } from './columns.ts';
import { diagram } from './diagram.ts';
import { model } from './model.ts';

/** The model that a column of quantities counts for, where one list holds several. `name` as in a row's variants. */
export const modelColumn = pgTable(
  'model_column',
  {
    workshop: workshopId(),
    diagram: uuid('diagram').notNull(),
    name: text('name').notNull(),
    model: uuid('model').notNull(),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.diagram, table.name] }),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
    foreignKey({ columns: [table.workshop, table.model], foreignColumns: [model.workshop, model.id] }),
    index('model_column_model').on(table.workshop, table.model),
  ],
);
