import { sql } from 'drizzle-orm';
import {
  check,
  customType,
  foreignKey,
  index,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  real,
  text,
  timestamp,
  uuid,
} from 'drizzle-orm/pg-core';
import type { Written } from '../../../indexer/intake/rows.ts';
import { instant, randomId, workshopId } from './columns.ts';
import { diagram } from './diagram.ts';

const bytea = customType<{ data: Buffer; driverData: Buffer }>({ dataType: () => 'bytea' });

/** A page of a document that has pages, as it is shown: after its own rotation. Replaced with every reading. */
export const page = pgTable(
  'page',
  {
    workshop: workshopId(),
    diagram: uuid('diagram').notNull(),
    /** 1-based. */
    number: integer('number').notNull(),
    /** In points, 72 to the inch. */
    width: real('width').notNull(),
    height: real('height').notNull(),
    /** What is written on it, for finding. */
    words: text('words').notNull().default(''),
    /** The same in pieces, each with its place. */
    places: jsonb('places').$type<Omit<Written, 'page'>[]>().notNull().default([]),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.diagram, table.number] }),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
  ],
);

/** A page as a picture, made once from the document, which never changes. */
export const pagePicture = pgTable(
  'page_picture',
  {
    workshop: workshopId(),
    diagram: uuid('diagram').notNull(),
    page: integer('page').notNull(),
    /** In pixels. */
    width: integer('width').notNull(),
    height: integer('height').notNull(),
    bytes: bytea('bytes').notNull(),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.diagram, table.page, table.width] }),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
  ],
);

/** A reference number as it was found on a drawing. Replaced with every reading. */
export const balloon = pgTable(
  'balloon',
  {
    workshop: workshopId(),
    id: randomId(),
    diagram: uuid('diagram').notNull(),
    page: integer('page').notNull(),
    ref: text('ref').notNull(),
    /** Of its centre, as fractions of the shown page from its top left. */
    x: real('x').notNull(),
    y: real('y').notNull(),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
    index('balloon_diagram').on(table.workshop, table.diagram),
  ],
);

/**
 * A person's word on a balloon: where one as found (`from…`) really is and what it says, that it is none (no `ref`),
 * or that there is one where none was found (no `fromRef`). Held by place, so reading the document again keeps it.
 */
export const balloonCorrection = pgTable(
  'balloon_correction',
  {
    workshop: workshopId(),
    id: randomId(),
    diagram: uuid('diagram').notNull(),
    page: integer('page').notNull(),
    fromRef: text('from_ref'),
    fromX: real('from_x'),
    fromY: real('from_y'),
    ref: text('ref'),
    x: real('x'),
    y: real('y'),
    /** The correction that this one took the place of, which stands again when this is taken back. */
    replaces: uuid('replaces'),
    createdAt: instant('created_at'),
    /** Taken back or replaced; kept as history. */
    endedAt: timestamp('ended_at', { withTimezone: true, mode: 'date' }),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
    check('balloon_correction_says', sql`from_ref is not null or ref is not null`),
    index('balloon_correction_standing').on(table.workshop, table.diagram).where(sql`ended_at is null`),
  ],
);
