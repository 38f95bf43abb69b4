import { and, eq, inArray, ne, sql } from 'drizzle-orm';
import type { Article } from '../../indexer/categories/judge.ts';
import { type CategoryName, compareSizes, nearness, parseSize } from '../../indexer/index.ts';
import { notAnApproval, verdict } from '../../indexer/verdict.ts';
import type { Candidate, Interchange } from '../answers/index.ts';
import { part } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { gravest, lineDuties } from '../duty/line-duty.ts';
import { nearestSizes } from '../finding/near-sizes.ts';
import { notFound } from '../refusal.ts';
import { partRefs } from './part-refs.ts';

type PartRow = typeof part.$inferSelect;

/** How many parts of a kind are judged and answered. */
const most = 200;

/**
 * What could replace a part: parts of the same item, parts of the same size that differ or leave open what makes
 * another article, and near sizes with why they fail. Each is judged one way, by the duty of the wanted part where it
 * sits; agreement of sizes is a suggestion and never an approval.
 */
export async function interchangeOf(tx: Tx, id: string): Promise<Interchange> {
  const [wanted] = await tx.select().from(part).where(eq(part.id, id));
  if (!wanted) throw notFound('part', id);
  const duty = gravest((await lineDuties(tx, sql`row.part = ${id}`)).values());
  const others = wanted.size === null ? [] : await ofSizes(tx, id, [wanted.size]);
  const nearest = wanted.size === null ? [] : await nearestSizes(tx, wanted.size, 5);
  const nearSizes = nearest.filter(one => one.confusable).map(one => one.size);
  const near = await ofSizes(tx, id, nearSizes);
  const refs = await partRefs(tx, [id, ...others.map(one => one.id), ...near.map(one => one.id)]);

  const judged = (one: PartRow): Candidate => {
    const { verdict: answer, reasons } = verdict(articleOf(one), articleOf(wanted), {
      duty: duty.duty,
      samePart: false,
    });
    return {
      part: refs.get(one.id)!,
      verdict: answer,
      reasons: reasons.map(reason => ({ gate: reason.about, text: reason.text, severity: reason.severity })),
      differences: wanted.size === null || one.size === null ? [] : differences(wanted.size, one.size),
    };
  };
  const order = { fits: 0, 'fits-with-care': 1, 'does-not-fit': 2 };
  const best = (a: Candidate, b: Candidate) => order[a.verdict] - order[b.verdict];
  return {
    part: refs.get(id)!,
    duty,
    caution: duty.critical ? notAnApproval : null,
    sameItem: others
      .filter(one => one.item === wanted.item)
      .map(judged)
      .sort(best),
    sameSize: others
      .filter(one => one.item !== wanted.item)
      .map(judged)
      .sort(best),
    beyond: wanted.size === null ? 0 : (await countOf(tx, wanted.size)) - 1 - others.length,
    near: near.map(judged).sort((a, b) => nearnessOf(wanted, a) - nearnessOf(wanted, b)),
  };
}

async function ofSizes(tx: Tx, except: string, sizes: string[]): Promise<PartRow[]> {
  if (sizes.length === 0) return [];
  return tx
    .select()
    .from(part)
    .where(and(inArray(part.size, sizes), ne(part.id, except)))
    .orderBy(part.item, part.numberKey, part.id)
    .limit(most);
}

async function countOf(tx: Tx, size: string): Promise<number> {
  const [counted] = await tx.execute<{ parts: number }>(
    sql`select count(*)::int as parts from part where size = ${size}`,
  );
  return counted!.parts;
}

/** A part as what it is, for judging. */
function articleOf({ category, dims, attrs, size }: PartRow): Article {
  const implied = size === null ? {} : (parseSize(size)?.implied ?? {});
  return { category: category as CategoryName, dims, implied, attrs };
}

function differences(a: string, b: string) {
  const [first, second] = [parseSize(a), parseSize(b)];
  return first && second ? compareSizes(first, second) : [];
}

function nearnessOf(wanted: PartRow, candidate: Candidate): number {
  const [a, b] = [parseSize(wanted.size!), parseSize(candidate.part.size!)];
  return (a && b && nearness(a, b)) ?? Number.POSITIVE_INFINITY;
}
