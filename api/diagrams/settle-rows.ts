import { and, eq, isNull, sql } from 'drizzle-orm';
import { storableJson } from '../db/copy-text.ts';
import { correction, diagram, maker, model, part, reading, row } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { modelsOf } from '../models/model-columns.ts';
import { dropUnreferredParts } from '../parts/drop-unreferred.ts';
import { partIdentity } from '../parts/part-identity.ts';
import { settleParts } from '../parts/settle-parts.ts';
import { settleSizes } from '../parts/settle-sizes.ts';
import { type Effective, ofCorrection, ofReading } from './effective-reading.ts';

/**
 * Puts evidence and parts of some rows of a document in line with what counts now, a person's word or the reading, and
 * settles the parts that they named before and name now.
 */
export async function settleRows(tx: Tx, diagramId: string, keys: readonly string[]): Promise<void> {
  const wanted = [...new Set(keys)];
  if (wanted.length === 0) return;
  await tx.execute(sql`create temporary table touched (id uuid, size text) on commit drop`);
  const lines = await linesOf(tx, diagramId, wanted);
  const settled = [];
  for (const line of lines) {
    const says = line.correction
      ? ofCorrection(line.correction)
      : line.reading
        ? ofReading(line.reading)
        : null;
    const isPart = says !== null && says.category !== 'not-a-part';
    const partId = isPart ? (line.row.part ?? (await partOfRow(tx, line, says))) : null;
    settled.push({
      ...(isPart ? says : null),
      row: line.row.id,
      key: line.row.key,
      before: line.row.part,
      part: partId,
      detail: line.reading?.text ?? line.row.description,
    });
  }
  const given = storableJson(settled);
  await tx.execute(sql`
    insert into touched
    select id, size from part where id in (
      select named.id from jsonb_to_recordset(${given}::jsonb) as line(before uuid, part uuid),
      lateral (values (line.before), (line.part)) as named(id))`);
  await tx.execute(sql`
    update row set part = line.part
    from jsonb_to_recordset(${given}::jsonb) as line(row uuid, part uuid) where row.id = line.row`);
  await tx.execute(sql`
    delete from evidence using jsonb_to_recordset(${given}::jsonb) as line(key text)
    where evidence.diagram = ${diagramId} and evidence.row_key = line.key`);
  await tx.execute(sql`
    insert into evidence (workshop, part, kind, category, size, item, dims, attrs, certainty, diagram, row_key, detail)
    select this_workshop(), part, kind, category, size, item, dims, attrs, certainty, ${diagramId}::uuid, key, detail
    from jsonb_to_recordset(${given}::jsonb) as line(part uuid, kind text, category text, size text, item text,
      dims jsonb, attrs jsonb, certainty real, key text, detail text)
    where part is not null`);
  await settleParts(tx);
  await dropUnreferredParts(tx);
  await settleSizes(tx, await modelsOf(tx, diagramId));
}

function linesOf(tx: Tx, diagramId: string, keys: string[]) {
  return tx
    .select({ row, reading, correction, model: model.id, maker: maker.id })
    .from(row)
    .innerJoin(diagram, eq(diagram.id, row.diagram))
    .innerJoin(model, eq(model.id, diagram.model))
    .innerJoin(maker, eq(maker.id, model.maker))
    .leftJoin(reading, eq(reading.row, row.id))
    .leftJoin(
      correction,
      and(eq(correction.diagram, row.diagram), eq(correction.rowKey, row.key), isNull(correction.undoneAt)),
    )
    .where(
      and(
        eq(row.diagram, diagramId),
        sql`${row.key} in (select jsonb_array_elements_text(${JSON.stringify(keys)}::jsonb))`,
        eq(row.outcome, 'taken'),
      ),
    );
}

type Line = Awaited<ReturnType<typeof linesOf>>[number];

/** The part that a row names, made where an earlier reading saw none in it. */
async function partOfRow(tx: Tx, line: Line, says: Effective): Promise<string> {
  const { number, numberKey } = partIdentity(line.model, line.row);
  await tx
    .insert(part)
    .values({
      workshop: thisWorkshop,
      maker: line.maker,
      number,
      numberKey,
      name: line.row.description,
      category: says.category,
      dims: {},
      attrs: {},
    })
    .onConflictDoNothing();
  const [found] = await tx
    .select({ id: part.id })
    .from(part)
    .where(and(eq(part.maker, line.maker), eq(part.numberKey, numberKey)));
  return found!.id;
}
