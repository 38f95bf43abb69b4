import { sql } from 'drizzle-orm';
import { text, timestamp, uuid } from 'drizzle-orm/pg-core';

/**
 * Every row belongs to a workshop and every key begins with it: primary `(workshop, id)`, foreign and unique keys
 * too, so that no check can tell of another workshop's rows.
 */
export const workshopId = () => uuid('workshop').notNull();

/** A random id; unique together with its workshop. */
export const randomId = () => uuid('id').notNull().default(sql`gen_random_uuid()`);

/** A UTC instant, now unless said otherwise. */
export const instant = (name: string) =>
  timestamp(name, { withTimezone: true, mode: 'date' }).notNull().defaultNow();

/** The row's name as finding compares it: small, without spaces and hyphens. */
export const foundAs = () =>
  text('find_key').notNull().generatedAlwaysAs(sql`translate(lower(name), ' -./_,', '')`);
