import { sql } from 'drizzle-orm';
import { check, foreignKey, pgTable, primaryKey, text, uniqueIndex, uuid } from 'drizzle-orm/pg-core';
import type { Duty } from '../../../indexer/index.ts';
import { instant, randomId, workshopId } from './columns.ts';
import { model } from './model.ts';
import { part } from './part.ts';

/**
 * What depends on a model, or on a part. Words propose, a person confirms; parts of a model inherit it, children of
 * an assembly their parent's. Exactly one of model and part is set.
 */
export const duty = pgTable(
  'duty',
  {
    workshop: workshopId(),
    id: randomId(),
    model: uuid('model'),
    part: uuid('part'),
    duty: text('duty').$type<Duty>().notNull(),
    /** `proposed` from a word, `confirmed` by a person. */
    standing: text('standing').$type<'proposed' | 'confirmed'>().notNull(),
    /** The word that proposed it, as printed. */
    word: text('word'),
    createdAt: instant('created_at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({
      columns: [table.workshop, table.model],
      foreignColumns: [model.workshop, model.id],
    }).onDelete('cascade'),
    foreignKey({ columns: [table.workshop, table.part], foreignColumns: [part.workshop, part.id] }).onDelete(
      'cascade',
    ),
    check('duty_of_one', sql`num_nonnulls(model, part) = 1`),
    uniqueIndex('duty_model').on(table.workshop, table.model),
    uniqueIndex('duty_part').on(table.workshop, table.part),
  ],
);
