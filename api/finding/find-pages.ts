import { sql } from 'drizzle-orm';
import type { Found } from '../answers/index.ts';
import type { Tx } from '../db/store.ts';

const most = 8;
const shortest = 3;

/** Pages of diagrams on which the query is written: a title, a note, a label on a drawing. */
export async function findPages(tx: Tx, query: string): Promise<Found['pages']> {
  const asked = query.trim().replace(/\s+/g, ' ');
  if (asked.length < shortest || asked.length > 80 || !/\p{L}/u.test(asked)) return [];
  const like = `%${asked.replace(/[\\%_]/g, sign => `\\${sign}`)}%`;
  const rows = await tx.execute<{
    diagram: string;
    name: string;
    page: number;
    text: string;
    model: string;
    modelName: string;
    maker: string;
    makerName: string;
  }>(sql`
    select page.diagram, diagram.name, page.number as page,
           (select line from unnest(string_to_array(page.words, E'\n')) as line where line ilike ${like} limit 1) as text,
           model.id as model, model.name as "modelName", maker.id as maker, maker.name as "makerName"
    from page
    join diagram on diagram.id = page.diagram and diagram.state <> 'removed'
    join model on model.id = diagram.model
    join maker on maker.id = model.maker
    where page.words ilike ${like}
    order by maker.name, model.name, diagram.name, page.number
    limit ${most}`);
  return rows.map(({ diagram, name, page, text, ...of }) => ({
    diagram,
    name,
    page,
    text: text ?? asked,
    model: { id: of.model, name: of.modelName, maker: { id: of.maker, name: of.makerName } },
  }));
}
