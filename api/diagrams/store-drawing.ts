import { sql } from 'drizzle-orm';
import type { DocumentRows, Written } from '../../indexer/intake/rows.ts';
import { copyInto } from '../db/copy-rows.ts';
import { balloon, page } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';

/** Stores a document's pages and the balloons on them, in place of what an earlier reading found. */
export async function storeDrawing(
  tx: Tx,
  diagram: string,
  { pageSizes = [], written = [], balloons }: Pick<DocumentRows, 'pageSizes' | 'written' | 'balloons'>,
): Promise<void> {
  for (const table of ['balloon', 'page'])
    await tx.execute(sql`delete from ${sql.identifier(table)} where diagram = ${diagram}`);
  const places = new Map<number, Omit<Written, 'page'>[]>(pageSizes.map(each => [each.page, []]));
  for (const { page: number, ...place } of written) places.get(number)?.push(place);
  const pages = pageSizes.map(({ page: number, width, height }) => ({
    diagram,
    number,
    width,
    height,
    words: places
      .get(number)!
      .map(({ text }) => text)
      .join('\n'),
    places: places.get(number)!,
  }));
  await copyInto(tx, page, ['diagram', 'number', 'width', 'height', 'words', 'places'], pages);
  const found = balloons.map(spot => ({ ...spot, diagram }));
  await copyInto(tx, balloon, ['diagram', 'page', 'ref', 'x', 'y'], found);
}
