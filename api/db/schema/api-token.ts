import { sql } from 'drizzle-orm';
import { check, foreignKey, pgTable, primaryKey, text, timestamp, uuid } from 'drizzle-orm/pg-core';
import { instant, randomId, workshopId } from './columns.ts';
import { member } from './member.ts';
import { workshop } from './workshop.ts';

/** What lets another program in: to one workshop, to read or to write too, until a day. */
export const apiToken = pgTable(
  'api_token',
  {
    workshop: workshopId(),
    id: randomId(),
    /** Who made it. */
    member: uuid('member').notNull(),
    name: text('name').notNull(),
    scope: text('scope').$type<'read' | 'write'>().notNull(),
    /** SHA-256 of the secret, which was shown once. */
    secret: text('secret').notNull(),
    until: timestamp('until', { withTimezone: true, mode: 'date' }).notNull(),
    createdAt: instant('created_at'),
    usedAt: timestamp('used_at', { withTimezone: true, mode: 'date' }),
    revokedAt: timestamp('revoked_at', { withTimezone: true, mode: 'date' }),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop], foreignColumns: [workshop.workshop] }),
    foreignKey({ columns: [table.workshop, table.member], foreignColumns: [member.workshop, member.id] }),
    check('api_token_scope', sql`scope in ('read', 'write')`),
  ],
);
