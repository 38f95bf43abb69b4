import { boolean, foreignKey, jsonb, pgTable, primaryKey, real, text, uuid } from 'drizzle-orm/pg-core';
import type { Alternative, Attrs, Dims, ReadAs, Span } from '../../../indexer/index.ts';
import { workshopId } from './columns.ts';
import { row } from './row.ts';

/** What the reader understood from a row: one for each taken row, gone with it. A correction is kept beside, and wins. */
export const reading = pgTable(
  'reading',
  {
    workshop: workshopId(),
    row: uuid('row').notNull(),
    /** The text that was read; spans are offsets into it. */
    text: text('text').notNull(),
    category: text('category').$type<ReadAs>().notNull(),
    dims: jsonb('dims').$type<Dims>().notNull(),
    attrs: jsonb('attrs').$type<Attrs>().notNull(),
    implied: jsonb('implied').$type<Dims>().notNull(),
    qty: real('qty'),
    size: text('size'),
    item: text('item'),
    certainty: real('certainty').notNull(),
    review: boolean('review').notNull(),
    alternatives: jsonb('alternatives').$type<Alternative[]>().notNull(),
    spans: jsonb('spans').$type<Span[]>().notNull(),
    notes: jsonb('notes').$type<string[]>().notNull(),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.row] }),
    foreignKey({ columns: [table.workshop, table.row], foreignColumns: [row.workshop, row.id] }).onDelete(
      'cascade',
    ),
  ],
);
