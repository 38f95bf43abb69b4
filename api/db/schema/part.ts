import { sql } from 'drizzle-orm';
import {
  boolean,
  customType,
  foreignKey,
  index,
  jsonb,
  pgTable,
  primaryKey,
  real,
  text,
  uniqueIndex,
  uuid,
} from 'drizzle-orm/pg-core';
import type { Attrs, Dims, ReadAs } from '../../../indexer/index.ts';
import { instant, randomId, workshopId } from './columns.ts';
import { maker } from './maker.ts';

const tsvector = customType<{ data: string }>({ dataType: () => 'tsvector' });

/**
 * One part of one maker. Where the sheet prints no number, the part is the line of its model: `number` is null and
 * `numberKey` is made of model, reference and words.
 */
export const part = pgTable(
  'part',
  {
    workshop: workshopId(),
    id: randomId(),
    maker: uuid('maker').notNull(),
    /** As printed. */
    number: text('number'),
    /** Folded for comparing: letters and digits alone, in capitals. Both are shown, this one is matched. */
    numberKey: text('number_key').notNull(),
    name: text('name').notNull(),
    category: text('category').$type<ReadAs>().notNull(),
    /** What the best direct evidence says; null where nothing gives a size. */
    size: text('size'),
    item: text('item'),
    dims: jsonb('dims').$type<Dims>().notNull(),
    attrs: jsonb('attrs').$type<Attrs>().notNull(),
    certainty: real('certainty').notNull().default(0),
    review: boolean('review').notNull().default(false),
    /** The words finding looks through: maker, number, names, size, models. */
    findText: text('find_text').notNull().default(''),
    findWords: tsvector('find_words').generatedAlwaysAs(sql`to_tsvector('simple', find_text)`),
    createdAt: instant('created_at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop, table.maker], foreignColumns: [maker.workshop, maker.id] }),
    uniqueIndex('part_number').on(table.workshop, table.maker, table.numberKey),
    index('part_size').on(table.workshop, table.size, table.numberKey),
    index('part_item').on(table.workshop, table.item),
    index('part_category').on(table.workshop, table.category),
    index('part_find_words').using('gin', table.findWords),
    index('part_number_fragments').using('gin', table.numberKey.op('gin_trgm_ops')),
  ],
);
