import { sql } from 'drizzle-orm';
import { foldNumber } from '../../indexer/index.ts';
import { notAnApproval } from '../../indexer/verdict.ts';
import type { PartHit } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { criticalParts } from '../duty/line-duty.ts';
import { partRefs } from '../parts/part-refs.ts';
import { onNothing } from '../parts/spoken-of.ts';
import type { Engine } from '../search/engine.ts';

/** How many parts a search answers. */
const most = 50;

interface Question {
  query: string;
  /** The sizes that were understood. */
  sizes: string[];
  /** What else the query says, each word as it is known here. */
  words: string[];
}

/**
 * Parts by their number, with and without hyphens, whole or in part; by size; and by words. Where a size was
 * understood, words only say which of its parts come first.
 */
export async function findParts(
  tx: Tx,
  engine: Engine,
  { query, sizes, words }: Question,
): Promise<PartHit[]> {
  const matched = new Map<string, PartHit['matched']>();
  const folded = foldNumber(query);
  if (/\d/.test(folded) && folded.length >= 2)
    for (const id of await engine.byNumber(tx, query)) matched.set(id, 'part-of-number');
  if (sizes.length > 0) {
    for (const id of await partsOfSizes(tx, sizes, words)) matched.set(id, matched.get(id) ?? 'size');
  } else if (words.length > 0)
    for (const id of await engine.byWords(tx, words)) matched.set(id, matched.get(id) ?? 'words');

  const ids = [...matched.keys()].slice(0, most);
  const refs = await partRefs(tx, ids);
  const critical = await criticalParts(tx, ids);
  const forgotten = await forgottenOf(
    tx,
    ids.filter(id => refs.get(id)?.models.length === 0),
  );
  return ids.flatMap(id => {
    const ref = refs.get(id);
    if (!ref || forgotten.has(id)) return [];
    const whole = ref.number !== null && foldNumber(ref.number) === folded;
    const how = whole ? 'number' : matched.get(id)!;
    return [{ ...ref, matched: how, caution: critical.has(id) ? notAnApproval : null }];
  });
}

/** Those that no list, evidence or job speaks of any more: kept for what a person said of them, until a list names them again. */
async function forgottenOf(tx: Tx, ids: string[]): Promise<Set<string>> {
  if (ids.length === 0) return new Set();
  const rows = await tx.execute<{ id: string }>(sql`
    select id from part where id in ${ids} and ${onNothing}`);
  return new Set(rows.map(row => row.id));
}

/** How many parts of a size are looked at for the words that were said besides. */
const mostOfASize = 1000;

async function partsOfSizes(tx: Tx, sizes: string[], words: string[]): Promise<string[]> {
  const held = sql`(select count(*) from unnest(${`{${words.map(word => JSON.stringify(word)).join(',')}}`}::text[]) as word
                    where position(' ' || word in ' ' || of_size.find_text) > 0)`;
  const rows = await tx.execute<{ id: string }>(sql`
    select id from (
      select id, number_key, find_text from part where size in ${sizes} order by number_key, id limit ${words.length > 0 ? mostOfASize : most}
    ) as of_size
    order by ${words.length > 0 ? sql`${held} desc,` : sql``} number_key, id
    limit ${most}`);
  return rows.map(row => row.id);
}
