import { sql } from 'drizzle-orm';
import { foreignKey, index, pgTable, primaryKey, text } from 'drizzle-orm/pg-core';
import { workshopId } from './columns.ts';
import { workshop } from './workshop.ts';

/** The words that a workshop's parts are found by; a misspelt query word is corrected to the nearest of these. */
export const word = pgTable('word', { workshop: workshopId(), word: text('word').notNull() }, table => [
  primaryKey({ columns: [table.workshop, table.word] }),
  foreignKey({ columns: [table.workshop], foreignColumns: [workshop.workshop] }),
  // Only words without digits are ever taken for others.
  index('word_fragments').using('gin', table.word.op('gin_trgm_ops')).where(sql`word !~ '[0-9]'::text`),
  index('word_beginning').on(table.workshop, table.word.op('text_pattern_ops')),
]);
