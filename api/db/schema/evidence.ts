import { foreignKey, index, jsonb, pgTable, primaryKey, real, text, uuid } from 'drizzle-orm/pg-core';
import type { Attrs, Dims, ReadAs } from '../../../indexer/index.ts';
import { instant, randomId, workshopId } from './columns.ts';
import { diagram } from './diagram.ts';
import { part } from './part.ts';

/** How we know: a person's correction first, then what is printed, what a designation means, and so on. */
export type EvidenceKind = 'corrected' | 'printed' | 'designation' | 'measured' | 'stated';

/**
 * Why a part has its size. What comes from a document goes and returns with its reading; what follows from other
 * evidence is worked out when asked and never stored.
 */
export const evidence = pgTable(
  'evidence',
  {
    workshop: workshopId(),
    id: randomId(),
    part: uuid('part').notNull(),
    kind: text('kind').$type<EvidenceKind>().notNull(),
    category: text('category').$type<ReadAs>().notNull(),
    size: text('size'),
    item: text('item'),
    dims: jsonb('dims').$type<Dims>().notNull(),
    attrs: jsonb('attrs').$type<Attrs>().notNull(),
    certainty: real('certainty').notNull(),
    /** The document it was read from and the row's key there; both null for what did not come from one. */
    diagram: uuid('diagram'),
    rowKey: text('row_key'),
    /** As printed, measured or said, for a person to judge. */
    detail: text('detail').notNull(),
    createdAt: instant('created_at'),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop, table.part], foreignColumns: [part.workshop, part.id] }).onDelete(
      'cascade',
    ),
    foreignKey({
      columns: [table.workshop, table.diagram],
      foreignColumns: [diagram.workshop, diagram.id],
    }).onDelete('cascade'),
    index('evidence_part').on(table.workshop, table.part),
    index('evidence_row').on(table.workshop, table.diagram, table.rowKey),
  ],
);
