import { sql } from 'drizzle-orm';
import type { Tx } from '../db/store.ts';
import type { Correction, Engine, KnownWords } from './engine.ts';

/** Finding in the database itself, whose words are kept with the parts: nothing has to be put in or dropped. */
export const postgresEngine: Engine = {
  name: 'postgres',
  state: async () => 'here',
  correct,
  async byWords(tx, words) {
    const rows = await tx.execute<{ id: string }>(
      sql`select id from find_parts_by_words(array(select jsonb_array_elements_text(${JSON.stringify(words)}::jsonb))) as id`,
    );
    return rows.map(row => row.id);
  },
  async byNumber(tx, number) {
    const rows = await tx.execute<{ id: string }>(sql`select id from find_parts_by_number(${number}) as id`);
    return rows.map(row => row.id);
  },
  async put() {},
  async drop() {},
};

/**
 * Each word as the workshop knows it. A word with digits is never taken for another, for 5x11x3 is no misspelt 5x11x4:
 * it is known, begins one that is known, or is left out.
 */
async function correct(tx: Tx, words: string[]): Promise<KnownWords> {
  const known: string[] = [];
  const corrected: Correction[] = [];
  if (words.length === 0) return { known, corrected };
  const rows = await tx.execute<{ typed: string; nearest: string }>(sql`
    select typed, (select nearest from nearest_words(typed) as nearest limit 1) as nearest
    from jsonb_array_elements_text(${JSON.stringify(words)}::jsonb) with ordinality as asked(typed, place)
    order by place`);
  for (const { typed, nearest } of rows) {
    if (nearest?.startsWith(typed)) known.push(typed);
    else if (nearest) {
      known.push(nearest);
      corrected.push({ from: typed, to: nearest });
    }
  }
  return { known, corrected };
}
