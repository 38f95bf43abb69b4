import { and, asc, eq, sql } from 'drizzle-orm';
import type { WrittenFound } from '../answers/index.ts';
import { page } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { diagramById } from './list-diagrams.ts';

/** Places that one answer shows. */
const most = 60;

/** Where a diagram's pages say something; capitals, accents and blanks make no difference. */
export async function findWritten(tx: Tx, diagramId: string, asked: string): Promise<WrittenFound> {
  await diagramById(tx, diagramId);
  const wanted = folded(asked);
  if (!wanted) return { places: [], more: false };
  const pages = await tx
    .select({ number: page.number, places: page.places })
    .from(page)
    .where(and(eq(page.diagram, diagramId), sql`${page.words} <> ''`))
    .orderBy(asc(page.number));
  const places = pages.flatMap(({ number, places }) =>
    places.filter(({ text }) => says(text, wanted)).map(place => ({ page: number, ...place })),
  );
  return { places: places.slice(0, most), more: places.length > most };
}

/** A number is looked for as a whole: 4 is not in 14. */
const says = (text: string, wanted: string): boolean =>
  /^\d{1,3}$/.test(wanted) ? folded(text) === wanted : folded(text).includes(wanted);

const folded = (text: string): string =>
  text.normalize('NFKD').replace(/\p{M}/gu, '').replace(/\s+/g, '').toLowerCase();
