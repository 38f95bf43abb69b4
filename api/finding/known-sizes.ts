import { sql } from 'drizzle-orm';
import { parseSize } from '../../indexer/index.ts';
import { planned, textArray } from '../db/planned.ts';
import type { Tx } from '../db/store.ts';
import { type Meaning, meets } from './understand.ts';

/** How many sizes a question that leaves a dimension open is answered with. */
const most = 40;

/**
 * The sizes that a query asks for. One that it settles is answered even where no part here has it; of those that bare
 * numbers or an open dimension allow, the ones that parts here have.
 */
export async function knownSizes(tx: Tx, { reading, sizes }: Meaning): Promise<string[]> {
  if (reading.size !== null) return [reading.size];
  const known = await ofParts(tx, sizes);
  if (known.length > 0) return known;
  return Object.keys(reading.dims).length > 0 ? withDims(tx, reading.category, reading.dims) : [];
}

async function ofParts(tx: Tx, sizes: string[]): Promise<string[]> {
  if (sizes.length === 0) return [];
  const rows = await planned<{ size: string }>(
    tx,
    sql`
    select asked.size from unnest(${textArray(sizes)}::text[]) as asked(size)
    where exists (select from part where part.size = asked.size)`,
  );
  const known = new Set(rows.map(row => row.size));
  return sizes.filter(size => known.has(size));
}

/** Sizes of the category that have all of these dimensions, the most used first. */
async function withDims(tx: Tx, category: string, dims: Meaning['reading']['dims']): Promise<string[]> {
  const { thread } = dims;
  const ofThread =
    typeof thread === 'string'
      ? sql`and (thread = ${thread} or starts_with(thread, ${`${thread}x`}))`
      : sql``;
  const rows = await tx.execute<{ size: string }>(
    sql`select size from size where category = ${category} ${ofThread}`,
  );
  const having = rows
    .map(row => row.size)
    .filter(size => {
      const parsed = parseSize(size);
      return parsed !== null && meets(dims, parsed);
    });
  if (having.length === 0) return [];
  const used = await tx.execute<{ size: string }>(sql`
    select size from part where size in ${having} group by size order by count(*) desc, size limit ${most}`);
  return used.map(row => row.size);
}
