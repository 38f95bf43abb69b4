import { sql } from 'drizzle-orm';
import {
  check,
  foreignKey,
  index,
  pgTable,
  primaryKey,
  text,
  timestamp,
  uniqueIndex,
  uuid,
} from 'drizzle-orm/pg-core';
import type { Role } from '../../people/role.ts';
import { instant, randomId, workshopId } from './columns.ts';
import { workshop } from './workshop.ts';

/** Someone who works here, or did; the row stays, so that what they did keeps its place. */
export const member = pgTable(
  'member',
  {
    workshop: workshopId(),
    id: randomId(),
    /** Who signs in as this member; null while invited, and once it was erased. */
    person: uuid('person'),
    /** What the workshop calls them; null once it was erased. */
    name: text('name'),
    role: text('role').$type<Role>().notNull(),
    createdAt: instant('created_at'),
    /** When they last opened this bench. */
    openedAt: timestamp('opened_at', { withTimezone: true, mode: 'date' }),
    leftAt: timestamp('left_at', { withTimezone: true, mode: 'date' }),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.id] }),
    foreignKey({ columns: [table.workshop], foreignColumns: [workshop.workshop] }),
    uniqueIndex('member_person').on(table.workshop, table.person).where(sql`left_at is null`),
    index('member_of').on(table.person),
    check('member_role', sql`role in ('owner', 'repairer', 'counter', 'reader')`),
  ],
);

/** The link by which a member comes in, once. One at a time. */
export const invitation = pgTable(
  'invitation',
  {
    workshop: workshopId(),
    member: uuid('member').notNull(),
    secret: text('secret').notNull(),
    until: timestamp('until', { withTimezone: true, mode: 'date' }).notNull(),
  },
  table => [
    primaryKey({ columns: [table.workshop, table.member] }),
    foreignKey({
      columns: [table.workshop, table.member],
      foreignColumns: [member.workshop, member.id],
    }).onDelete('cascade'),
  ],
);
