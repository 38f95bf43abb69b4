import { foreignKey, pgTable, primaryKey, text, timestamp, uniqueIndex, uuid } from 'drizzle-orm/pg-core';
import { instant, randomId } from './columns.ts';

/** Someone who signs in. Stands outside the workshops, under a rule of its own: each sees only themselves. */
export const person = pgTable(
  'person',
  {
    person: uuid('person').primaryKey(),
    /** As `signInName` writes it, so that one name is one person. */
    signIn: text('sign_in').notNull(),
    /** Argon2id, in the PHC string format. */
    password: text('password').notNull(),
    passwordAt: instant('password_at'),
    createdAt: instant('created_at'),
  },
  table => [uniqueIndex('person_sign_in').on(table.signIn)],
);

const ofPerson = () => uuid('person').notNull();

/** A browser in which somebody is signed in, until it is revoked or has not been seen for long. */
export const session = pgTable(
  'session',
  {
    person: ofPerson(),
    id: randomId(),
    /** SHA-256 of the secret that the browser holds. */
    secret: text('secret').notNull(),
    /** Browser and system in plain words, for the person to know it again. */
    device: text('device').notNull(),
    createdAt: instant('created_at'),
    seenAt: instant('seen_at'),
  },
  table => [
    primaryKey({ columns: [table.person, table.id] }),
    foreignKey({ columns: [table.person], foreignColumns: [person.person] }).onDelete('cascade'),
  ],
);

/** A link by which a person sets a new password, once. One at a time. */
export const passwordLink = pgTable(
  'password_link',
  {
    person: uuid('person').primaryKey(),
    secret: text('secret').notNull(),
    until: timestamp('until', { withTimezone: true, mode: 'date' }).notNull(),
  },
  table => [foreignKey({ columns: [table.person], foreignColumns: [person.person] }).onDelete('cascade')],
);
