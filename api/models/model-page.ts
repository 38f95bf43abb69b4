import { eq, sql } from 'drizzle-orm';
import type { LineAnswer, ModelAnswer } from '../answers/index.ts';
import { model } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { countSizes } from '../diagrams/count-sizes.ts';
import { listDiagrams } from '../diagrams/list-diagrams.ts';
import { listLines } from '../parts/list-lines.ts';
import { notFound } from '../refusal.ts';
import { listsOf } from './model-lines.ts';
import { modelSummaries } from './model-refs.ts';

/** A model with its lists and lines, and the bearings that a full set for it takes. */
export async function modelPage(tx: Tx, id: string): Promise<ModelAnswer> {
  const [summary] = await modelSummaries(tx, eq(model.id, id));
  if (!summary) throw notFound('model', id);
  const { name, maker, duty } = summary;
  const lines = await listLines(tx, sql`diagram.id in ${listsOf(id)}`, id);
  const lists = await listDiagrams(tx, sql`diagram.id in ${listsOf(id)}`);
  return { id, name, maker, duty, lists, lines, bearings: bearingSet(lines) };
}

/** The bearings of one machine, without what the list gives for reference or as an option. */
function bearingSet(lines: LineAnswer[]) {
  const counted = lines.filter(
    line =>
      line.category === 'bearing' &&
      !line.facts.some(fact => fact.kind === 'reference-only' || fact.kind === 'option'),
  );
  return countSizes(counted);
}
