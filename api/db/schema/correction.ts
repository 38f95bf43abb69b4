import { sql } from 'drizzle-orm';
import {
  foreignKey,
  jsonb,
  pgTable,
  primaryKey,
  real,
  text,
  timestamp,
  uniqueIndex,
  uuid,
} from 'drizzle-orm/pg-core';
import type { Attrs, Dims, ReadAs } from '../../../indexer/index.ts';
import { instant, randomId, workshopId } from './columns.ts';
import { diagram } from './diagram.ts';

/** A person's word on a row. Held by the row's key, so reading the document again keeps it; it wins over any reading. */
export const correction = pgTable(
  'correction',
  {
    workshop: workshopId(),
    id: randomId(),
    diagram: uuid('diagram').notNull(),
    rowKey: text('row_key').notNull(),
    category: text('category').$type<ReadAs>().notNull(),
    dims: jsonb('dims').$type<Dims>().notNull(),
    attrs: jsonb('attrs').$type<Attrs>().notNull(),
    qty: real('qty'),
    createdAt: instant('created_at'),
    /** The correction of a like row that put this one right as well; taken back together with it. */
    taughtBy: uuid('taught_by'),
    /** Taken back; kept as history. One standing correction a row. */
    undoneAt: timestamp('undone_at', { withTimezone: true, mode: 'date' }),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
    uniqueIndex('correction_standing')
      .on(table.workshop, table.diagram, table.rowKey)
      .where(sql`undone_at is null`),
  ],
);
