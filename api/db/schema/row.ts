import {
  foreignKey,
  index,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  real,
  text,
  uniqueIndex,
  uuid,
} from 'drizzle-orm/pg-core';
import type { Area, Outcome } from '../../../indexer/intake/rows.ts';
import { randomId, workshopId } from './columns.ts';
import { diagram } from './diagram.ts';
import { part } from './part.ts';

/** One row of a document's list, as printed. Replaced as a whole whenever its document is read again. */
export const row = pgTable(
  'row',
  {
    workshop: workshopId(),
    id: randomId(),
    diagram: uuid('diagram').notNull(),
    /** 0-based printed order. */
    position: integer('position').notNull(),
    /** What stays the same when the document is read again: page, reference, number and words, and which of its like. */
    key: text('key').notNull(),
    page: integer('page').notNull(),
    ref: text('ref').notNull(),
    partNumber: text('part_number').notNull(),
    description: text('description').notNull(),
    qty: real('qty'),
    qtyText: text('qty_text').notNull(),
    remarks: text('remarks').notNull(),
    place: text('place').notNull(),
    parent: text('parent'),
    variants: jsonb('variants').$type<{ model: string; qty: number }[]>().notNull(),
    /** Where it stands on its page; null where its document has no pages. */
    area: jsonb('area').$type<Area>(),
    outcome: text('outcome').$type<Outcome>().notNull(),
    reason: text('reason'),
    /** For a faulted row: code, message and remedy. */
    fault: jsonb('fault').$type<{ code: string; message: string; remedy: string }>(),
    /** The part this row names; null for a row that is not a part. */
    part: uuid('part'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
    foreignKey({ columns: [table.workshop, table.part], foreignColumns: [part.workshop, part.id] }),
    uniqueIndex('row_position').on(table.workshop, table.diagram, table.position),
    uniqueIndex('row_key').on(table.workshop, table.diagram, table.key),
    index('row_part').on(table.workshop, table.part),
  ],
);
