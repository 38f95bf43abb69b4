import {
  customType,
  foreignKey,
  index,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  text,
  timestamp,
  uuid,
} from 'drizzle-orm/pg-core';
import type { Fault, Table } from '../../../indexer/intake/rows.ts';
import type { GivenColumns } from '../../../indexer/reading/column-meanings.ts';
import { instant, randomId, workshopId } from './columns.ts';
import { model } from './model.ts';

const bytea = customType<{ data: Buffer; driverData: Buffer }>({ dataType: () => 'bytea' });

/** How far the reading of a document has come; `removed`: taken off the bench, and can be put back. */
export type DiagramState = 'waiting' | 'reading' | 'ready' | 'refused' | 'removed';

/** Why a document as a whole could not be read, and what to do. */
export interface DiagramRefusal {
  code: string;
  place: string;
  message: string;
  remedy: string;
}

/** A maker's diagram as it came in, with its bytes, and the state of its reading. */
export const diagram = pgTable(
  'diagram',
  {
    workshop: workshopId(),
    id: randomId(),
    model: uuid('model').notNull(),
    name: text('name').notNull(),
    mediaType: text('media_type').notNull(),
    bytes: bytea('bytes').notNull(),
    byteCount: integer('byte_count').notNull(),
    sha256: text('sha256').notNull(),
    state: text('state').$type<DiagramState>().notNull().default('waiting'),
    refusal: jsonb('refusal').$type<DiagramRefusal>(),
    /** Rows read so far and in all, for the progress that a page shows. */
    rowsDone: integer('rows_done').notNull().default(0),
    rowsTotal: integer('rows_total'),
    pages: integer('pages'),
    language: text('language'),
    unit: text('unit').$type<'mm' | 'in'>(),
    /** The tables found in it, and what a person says of their columns, in the same order. */
    tables: jsonb('tables').$type<Table[]>().notNull().default([]),
    columns: jsonb('columns').$type<GivenColumns>(),
    /** What could not be read of it besides single rows: pages, mostly. */
    faults: jsonb('faults').$type<Fault[]>().notNull().default([]),
    /** In how many stretches it is read: one more each time that the rest is asked for. */
    stretches: integer('stretches').notNull().default(1),
    /** While reading: who may go on, until when; and how often it was tried. */
    lease: uuid('lease'),
    leaseUntil: timestamp('lease_until', { withTimezone: true, mode: 'date' }),
    attempts: integer('attempts').notNull().default(0),
    readAt: timestamp('read_at', { withTimezone: true, mode: 'date' }),
    createdAt: instant('created_at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop, table.model], foreignColumns: [model.workshop, model.id] }),
    index('diagram_model').on(table.workshop, table.model),
    index('diagram_state').on(table.state, table.createdAt),
  ],
);
