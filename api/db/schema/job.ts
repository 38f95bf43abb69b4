import { sql } from 'drizzle-orm';
import {
  bigint,
  check,
  date,
  foreignKey,
  index,
  integer,
  pgTable,
  primaryKey,
  real,
  text,
  timestamp,
  uniqueIndex,
  uuid,
} from 'drizzle-orm/pg-core';
import { instant, randomId, workshopId } from './columns.ts';
import { model } from './model.ts';
import { part } from './part.ts';
import { workshop } from './workshop.ts';

/** A repairer's job: one customer's machine on the bench. */
export const job = pgTable(
  'job',
  {
    workshop: workshopId(),
    id: randomId(),
    /** The number on the tray; counts up within the workshop. */
    number: integer('number').notNull(),
    model: uuid('model'),
    serial: text('serial'),
    owner: text('owner').notNull(),
    /** In the owner's words. */
    fault: text('fault').notNull(),
    /** A whole number of minor units, with its ISO 4217 code. */
    limitMinor: bigint('limit_minor', { mode: 'number' }),
    currency: text('currency'),
    /** A calendar date without a zone. */
    promised: date('promised', { mode: 'string' }),
    closedAt: timestamp('closed_at', { withTimezone: true, mode: 'date' }),
    createdAt: instant('created_at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop], foreignColumns: [workshop.workshop] }),
    foreignKey({ columns: [table.workshop, table.model], foreignColumns: [model.workshop, model.id] }),
    uniqueIndex('job_number').on(table.workshop, table.number),
  ],
);

/** A quantity of a part, or of an item by its size, that a job wants. Exactly one of part and item is set. */
export const need = pgTable(
  'need',
  {
    workshop: workshopId(),
    id: randomId(),
    job: uuid('job').notNull(),
    part: uuid('part'),
    /** The row of the list it was picked from: reference, serial and assembly are decided by it. */
    diagram: uuid('diagram'),
    rowKey: text('row_key'),
    item: text('item'),
    /** Null asks: the list says "as required", and nobody has said how many. */
    qty: real('qty'),
    note: text('note').notNull().default(''),
    /** The item that a person says it is, where the list leaves open what makes another article. */
    takenAs: text('taken_as'),
    createdAt: instant('created_at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop, table.job], foreignColumns: [job.workshop, job.id] }).onDelete(
      'cascade',
    ),
    foreignKey({ columns: [table.workshop, table.part], foreignColumns: [part.workshop, part.id] }),
    check('need_of_one', sql`num_nonnulls(part, item) = 1`),
    index('need_job').on(table.workshop, table.job),
    index('need_part').on(table.workshop, table.part),
  ],
);
