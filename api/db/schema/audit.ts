import { sql } from 'drizzle-orm';
import { foreignKey, index, jsonb, pgTable, primaryKey, text, timestamp, uuid } from 'drizzle-orm/pg-core';
import type { About, Deed } from '../../people/deed.ts';
import { apiToken } from './api-token.ts';
import { randomId, workshopId } from './columns.ts';
import { member } from './member.ts';
import { workshop } from './workshop.ts';

/** Who did what, when. Holds ids and never a name or a secret; rows are added and never changed. */
export const audit = pgTable(
  'audit',
  {
    workshop: workshopId(),
    id: randomId(),
    at: timestamp('at', { withTimezone: true, mode: 'date' }).notNull().default(sql`clock_timestamp()`),
    /** Who: a member, a token, or neither for the one who runs the server. */
    member: uuid('member'),
    token: uuid('token'),
    deed: text('deed').$type<Deed>().notNull(),
    about: jsonb('about').$type<About>().notNull(),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop], foreignColumns: [workshop.workshop] }),
    foreignKey({ columns: [table.workshop, table.member], foreignColumns: [member.workshop, member.id] }),
    foreignKey({
      columns: [table.workshop, table.token],
      foreignColumns: [apiToken.workshop, apiToken.id],
    }),
    index('audit_at').on(table.workshop, table.at, table.id),
  ],
);
