import { sql } from 'drizzle-orm';
import { foldNumber } from '../../indexer/index.ts';
import { notAnApproval } from '../../indexer/verdict.ts';
import type { PartHit } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';
import { partRefs } from '../parts/part-refs.ts';
import type { Correction, Engine } from '../search/engine.ts';
import { wordsOf } from '../search/entry.ts';
import { criticalParts } from './size-hits.ts';

/** How many parts a search answers. */
const most = 100;

interface Question {
  query: string;
  /** The sizes that were understood. */
  sizes: string[];
  /** What else the query says. */
  rest: string;
}

/**
 * Parts by their number, with and without hyphens, whole or in part; by size; and by words. Where a size was
 * understood, words only say which of its parts come first.
 */
export async function findParts(
  tx: Tx,
  engine: Engine,
  { query, sizes, rest }: Question,
): Promise<{ parts: PartHit[]; corrected: Correction[] }> {
  const matched = new Map<string, PartHit['matched']>();
  const folded = foldNumber(query);
  if (/\d/.test(folded) && folded.length >= 2)
    for (const id of await engine.byNumber(tx, query)) matched.set(id, 'part-of-number');

  const byWords = await engine.byWords(tx, wordsOf(rest));
  const ofSize = await partsOfSizes(tx, sizes);
  if (sizes.length > 0) {
    const inSize = new Set(ofSize);
    for (const id of byWords.parts) if (inSize.has(id)) matched.set(id, matched.get(id) ?? 'size');
    for (const id of ofSize) matched.set(id, matched.get(id) ?? 'size');
  } else for (const id of byWords.parts) matched.set(id, matched.get(id) ?? 'words');

  const ids = [...matched.keys()].slice(0, most);
  const refs = await partRefs(tx, ids);
  const critical = await criticalParts(tx, ids);
  const parts = ids.flatMap(id => {
    const ref = refs.get(id);
    if (!ref) return [];
    const whole = ref.number !== null && foldNumber(ref.number) === folded;
    const how = whole ? 'number' : matched.get(id)!;
    return [{ ...ref, matched: how, caution: critical.has(id) ? notAnApproval : null }];
  });
  return { parts, corrected: sizes.length > 0 ? [] : byWords.corrected };
}

async function partsOfSizes(tx: Tx, sizes: string[]): Promise<string[]> {
  if (sizes.length === 0) return [];
  const rows = await tx.execute<{ id: string }>(sql`
    select part.id from part join maker on maker.id = part.maker
    where part.size in ${sizes}
    order by maker.name, part.number_key, part.id
    limit ${most}`);
  return rows.map(row => row.id);
}
