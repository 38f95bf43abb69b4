import { eq, sql } from 'drizzle-orm';
import type { Article } from '../../indexer/categories/judge.ts';
import {
  type CategoryName,
  categories,
  compareArticles,
  foldNumber,
  parseSize,
  read,
  writeItem,
} from '../../indexer/index.ts';
import { notAnApproval, verdict } from '../../indexer/verdict.ts';
import type { ComparedAnswer, Comparison } from '../answers/index.ts';
import { part } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { gravest, lineDuties, notStated } from '../duty/line-duty.ts';
import { partRefs } from '../parts/part-refs.ts';
import { notFound, refuse } from '../refusal.ts';

const uuid = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/**
 * Two things side by side, each a part by its id or a size or article in any writing, and each judged in the place of
 * the other: by the duty of the wanted one where it sits. Refused where one is neither.
 */
export async function compare(tx: Tx, first: string, second: string): Promise<Comparison> {
  const [a, b] = [await thingNamed(tx, first, 'a'), await thingNamed(tx, second, 'b')];
  return {
    a,
    b,
    rows: compareArticles(articleOf(a), articleOf(b)),
    bForA: judged(b, a),
    aForB: judged(a, b),
  };
}

/** The candidate in the place of the wanted one. */
function judged(candidate: ComparedAnswer, wanted: ComparedAnswer): Comparison['aForB'] {
  const samePart = candidate.part !== null && candidate.part.id === wanted.part?.id;
  const { verdict: said, reasons } = verdict(articleOf(candidate), articleOf(wanted), {
    duty: wanted.duty.duty,
    samePart,
  });
  return {
    verdict: said,
    reasons: reasons.map(({ about, text, severity }) => ({ gate: about, text, severity })),
    caution: wanted.duty.critical && !samePart ? notAnApproval : null,
  };
}

/** What nobody could read as a kind of part compares as a plain one. */
function articleOf({ category, dims, implied, attrs }: ComparedAnswer): Article {
  const known = categories.has(category as CategoryName);
  return { category: known ? (category as CategoryName) : 'plain', dims, implied, attrs };
}

async function thingNamed(tx: Tx, named: string, place: string): Promise<ComparedAnswer> {
  if (uuid.test(named)) return partNamed(tx, named);
  const { category, size, dims, implied, attrs } = read(named);
  const numbered = await numberedSo(tx, named);
  if (numbered.length === 1) return partNamed(tx, numbered[0]!);
  if (numbered.length > 1 && size === null)
    throw refuse('bad-request', {
      place,
      message: `${numbered.length} makers have a part numbered "${named}".`,
      remedy: 'Find it, open the one that is meant, and compare from its page.',
    });
  if (size === null)
    throw refuse('not-a-size', {
      place,
      message: `"${named}" is neither a part's id nor gives a size.`,
      remedy:
        'Name a part by its id, or write the kind of part and its dimensions, such as "bearing 5x11x4".',
    });
  const item = writeItem(category as CategoryName, dims, implied, attrs);
  return { part: null, category, size, item, dims, implied, attrs, duty: notStated };
}

/** Parts of exactly this number, hyphens and spaces aside. */
async function numberedSo(tx: Tx, named: string): Promise<string[]> {
  const key = foldNumber(named);
  if (!/\d/.test(key)) return [];
  const rows = await tx.execute<{ id: string }>(sql`
    select part.id from part join maker on part.maker = maker.id
    where part.number_key = ${key} and part.number is not null limit 9`);
  return rows.map(row => row.id);
}

async function partNamed(tx: Tx, id: string): Promise<ComparedAnswer> {
  const [own] = await tx.select().from(part).where(eq(part.id, id));
  const ref = (await partRefs(tx, [id])).get(id);
  if (!own || !ref) throw notFound('part', id);
  const { category, size, item, dims, attrs } = own;
  const implied = size === null ? {} : (parseSize(size)?.implied ?? {});
  const duty = gravest((await lineDuties(tx, sql`row.part = ${id}`)).values());
  return { part: ref, category, size, item, dims, implied, attrs, duty };
}
