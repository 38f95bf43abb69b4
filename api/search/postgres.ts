import { sql } from 'drizzle-orm';
import type { Tx } from '../db/store.ts';
import type { Correction, Engine } from './engine.ts';

/** Finding in the database itself, whose words are kept with the parts: nothing has to be put in or dropped. */
export const postgresEngine: Engine = {
  name: 'postgres',
  async byWords(tx, words) {
    const { known, corrected } = await correct(tx, words);
    if (known.length === 0) return { parts: [], corrected };
    const rows = await tx.execute<{ id: string }>(
      sql`select id from find_parts_by_words(array[${sql.join(
        known.map(word => sql`${word}`),
        sql`, `,
      )}]::text[]) as id`,
    );
    return { parts: rows.map(row => row.id), corrected };
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
async function correct(tx: Tx, words: string[]): Promise<{ known: string[]; corrected: Correction[] }> {
  const known: string[] = [];
  const corrected: Correction[] = [];
  for (const word of words) {
    const [row] = await tx.execute<{ nearest: string }>(
      sql`select nearest from nearest_words(${word}) as nearest limit 1`,
    );
    if (row?.nearest.startsWith(word)) known.push(word);
    else if (row && !/\d/.test(word)) {
      known.push(row.nearest);
      corrected.push({ from: word, to: row.nearest });
    }
  }
  return { known, corrected };
}
