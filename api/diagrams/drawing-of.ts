import { and, asc, eq, isNull, sql } from 'drizzle-orm';
import { refsOfBalloon } from '../../indexer/intake/balloon-refs.ts';
import type { DrawingAnswer } from '../answers/index.ts';
import { balloon, balloonCorrection, page } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { effectiveBalloons, type SpotCorrection } from './effective-balloons.ts';
import { diagramById } from './list-diagrams.ts';

/** The pages of a diagram and the balloons on them, each with the lines that it stands for. */
export async function drawingOf(tx: Tx, diagramId: string): Promise<DrawingAnswer> {
  await diagramById(tx, diagramId);
  const pages = await tx
    .select({ number: page.number, width: page.width, height: page.height })
    .from(page)
    .where(eq(page.diagram, diagramId))
    .orderBy(asc(page.number));
  const balloons = effectiveBalloons(await foundOn(tx, diagramId), await standingCorrections(tx, diagramId));
  const lines = await linesByRef(tx, diagramId);
  return {
    pages,
    balloons: balloons
      .map(spot => ({
        ...spot,
        lines: refsOfBalloon(spot.ref, lines.keys()).flatMap(ref => lines.get(ref) ?? []),
      }))
      .sort((a, b) => a.page - b.page || a.y - b.y || a.x - b.x),
  };
}

export const foundOn = (tx: Tx, diagramId: string) =>
  tx
    .select({ id: balloon.id, page: balloon.page, ref: balloon.ref, x: balloon.x, y: balloon.y })
    .from(balloon)
    .where(eq(balloon.diagram, diagramId));

export async function standingCorrections(tx: Tx, diagramId: string): Promise<SpotCorrection[]> {
  const rows = await tx
    .select()
    .from(balloonCorrection)
    .where(and(eq(balloonCorrection.diagram, diagramId), isNull(balloonCorrection.endedAt)))
    .orderBy(asc(balloonCorrection.createdAt), asc(balloonCorrection.id));
  return rows.map(row => ({
    id: row.id,
    from: row.fromRef === null ? null : { page: row.page, ref: row.fromRef, x: row.fromX!, y: row.fromY! },
    to: row.ref === null ? null : { page: row.page, ref: row.ref, x: row.x!, y: row.y! },
  }));
}

/**
 * Rows by their reference number: those of this document, or, where it has none of that number, those of the same
 * model's other documents, since makers print the drawing and its list apart.
 */
async function linesByRef(tx: Tx, diagramId: string) {
  const rows = await tx.execute<{ ref: string; diagram: string; row: string; own: boolean }>(sql`
    select row.ref, row.diagram, row.id as row, row.diagram = ${diagramId} as own
    from row
    join diagram on diagram.id = row.diagram
    where diagram.model = (select model from diagram where id = ${diagramId})
      and row.outcome = 'taken' and row.ref <> ''
    order by own desc, row.diagram, row.position`);
  const lines = new Map<string, { diagram: string; row: string }[]>();
  const own = new Set<string>();
  for (const { own: isOwn, ref, ...line } of rows) {
    if (isOwn) own.add(ref);
    else if (own.has(ref)) continue;
    lines.set(ref, [...(lines.get(ref) ?? []), line]);
  }
  return lines;
}
