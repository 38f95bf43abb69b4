import { sql } from 'drizzle-orm';

/** True of a part that no list, evidence or job speaks of any more. */
export const onNothing = sql`(
  not exists (select from row where row.part = part.id)
  and not exists (select from evidence where evidence.part = part.id)
  and not exists (select from need where need.part = part.id))`;
