import { foreignKey, index, pgTable, primaryKey, text, uuid } from 'drizzle-orm/pg-core';
import type { RelationKind } from '../../../indexer/intake/rows.ts';
import { randomId, workshopId } from './columns.ts';
import { diagram } from './diagram.ts';
import { part } from './part.ts';

/**
 * A maker's word that one number replaces another: one-way, may branch, be conditional, even loop. The successor is
 * held by its number, for it may stand on no sheet we have. Never the same as a substitution, which is ours.
 */
export const supersession = pgTable(
  'supersession',
  {
    workshop: workshopId(),
    id: randomId(),
    diagram: uuid('diagram').notNull(),
    part: uuid('part').notNull(),
    successorNumber: text('successor_number').notNull(),
    successorKey: text('successor_key').notNull(),
    /** Serial numbers the replacement is for, as printed; null where it is for all. */
    serialFrom: text('serial_from'),
    serialTo: text('serial_to'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
    foreignKey({ columns: [table.workshop, table.part], foreignColumns: [part.workshop, part.id] }).onDelete(
      'cascade',
    ),
    index('supersession_part').on(table.workshop, table.part),
  ],
);

/** Row `child` ships with row `parent` of the same document: never order both. Rows are held by their keys. */
export const assembly = pgTable(
  'assembly',
  {
    workshop: workshopId(),
    id: randomId(),
    diagram: uuid('diagram').notNull(),
    parentKey: text('parent_key').notNull(),
    childKey: text('child_key').notNull(),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
    index('assembly_diagram').on(table.workshop, table.diagram),
  ],
);

/** What else a list says of one of its rows: not sold separately, as required, option, serial range, … */
export const rowFact = pgTable(
  'row_fact',
  {
    workshop: workshopId(),
    id: randomId(),
    diagram: uuid('diagram').notNull(),
    rowKey: text('row_key').notNull(),
    kind: text('kind').$type<Exclude<RelationKind, 'includes' | 'superseded-by'>>().notNull(),
    serialFrom: text('serial_from'),
    serialTo: text('serial_to'),
    /** left-right: the key of the row that is its mirror, where the list has it. */
    mirrorKey: text('mirror_key'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
    index('row_fact_diagram').on(table.workshop, table.diagram),
  ],
);
