import { type SQL, sql } from 'drizzle-orm';
import type { LineAnswer } from '../answers/index.ts';
import { planned } from '../db/planned.ts';
import type { Tx } from '../db/store.ts';
import { lineDuties, notStated } from '../duty/line-duty.ts';
import { ofModel } from '../models/model-lines.ts';

/**
 * Taken lines that `which` (a condition on `row` and `diagram`) picks, model by model in printed order: a list with a
 * column for each model gives a line for each. With a model, its lines alone.
 */
export async function listLines(tx: Tx, which: SQL, ofOne?: string): Promise<LineAnswer[]> {
  const asked = ofOne === undefined ? sql`not of_model.family` : sql`of_model.model = ${ofOne}`;
  const rows = await planned<Omit<LineAnswer, 'duty'> & Record<string, unknown>>(
    tx,
    sql`
    select row.id as row, jsonb_build_object('id', diagram.id, 'name', diagram.name) as diagram,
           jsonb_build_object('id', model.id, 'name', model.name,
                              'maker', jsonb_build_object('id', maker.id, 'name', maker.name)) as model,
           row.page, row.ref, row.part_number as "partNumber", row.description,
           coalesce(of_model.qty, correction.qty, row.qty, reading.qty) as qty, row.qty_text as "qtyText", row.remarks, row.part,
           coalesce(said.category, reading.category, 'unsure') as category, said.size, said.item,
           coalesce(reading.review, true) and correction.id is null as review,
           coalesce((select jsonb_agg(jsonb_build_object('kind', kind, 'from', serial_from, 'to', serial_to))
                     from row_fact where row_fact.diagram = row.diagram and row_fact.row_key = row.key), '[]') as facts
    from row
    join diagram on diagram.id = row.diagram
    ${ofModel}
    join model on model.id = of_model.model
    join maker on maker.id = model.maker
    left join reading on reading.row = row.id
    left join correction on correction.diagram = row.diagram and correction.row_key = row.key
                         and correction.undone_at is null
    left join evidence as said on said.diagram = row.diagram and said.row_key = row.key
    where row.outcome = 'taken' and ${which} and ${asked}
    order by maker.name, model.name, diagram.created_at, diagram.id, row.position`,
  );
  const duties = await lineDuties(tx, sql`row.outcome = 'taken' and ${which}`);
  return rows.map(row => ({ ...row, duty: duties.get(row.row) ?? notStated }));
}
