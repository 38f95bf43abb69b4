import { and, eq, isNull } from 'drizzle-orm';
import type { BalloonChange, NewBalloon } from '../answers/index.ts';
import { balloonCorrection, page } from '../db/schema/index.ts';
import type { Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { notFound, refuse } from '../refusal.ts';
import { foundOn, standingCorrections } from './drawing-of.ts';
import type { Spot } from './effective-balloons.ts';

/** Puts a balloon where none was found. Answers the id of the correction, by which it can be taken back. */
export async function placeBalloon(tx: Tx, diagramId: string, spot: NewBalloon): Promise<string> {
  await pageIsThere(tx, diagramId, spot.page);
  return keep(tx, diagramId, { from: null, to: spot, replaces: null });
}

/** Moves a balloon on its page, or puts its number right. */
export async function changeBalloon(
  tx: Tx,
  diagramId: string,
  id: string,
  change: BalloonChange,
): Promise<string> {
  const stands = await balloonById(tx, diagramId, id);
  return keep(tx, diagramId, { ...stands, to: { ...stands.to, ...change } });
}

/** Says that what was found, or put there by a person, is no balloon. */
export async function removeBalloon(tx: Tx, diagramId: string, id: string): Promise<string> {
  const stands = await balloonById(tx, diagramId, id);
  return keep(tx, diagramId, { ...stands, to: null });
}

/** Takes a correction back: what stood before it stands again. Taken back already, nothing changes. */
export async function takeBalloonBack(tx: Tx, diagramId: string, correctionId: string): Promise<void> {
  const [correction] = await tx
    .select({ replaces: balloonCorrection.replaces, endedAt: balloonCorrection.endedAt })
    .from(balloonCorrection)
    .where(and(eq(balloonCorrection.diagram, diagramId), eq(balloonCorrection.id, correctionId)))
    .for('update');
  if (!correction) throw notFound('correction', correctionId);
  if (correction.endedAt) return;
  await end(tx, diagramId, correctionId, new Date());
  if (correction.replaces) await end(tx, diagramId, correction.replaces, null);
}

interface Standing {
  /** As the reading found it; null where a person put it there. */
  from: Spot | null;
  /** The correction that stands for it now. */
  replaces: string | null;
}

async function balloonById(tx: Tx, diagramId: string, id: string): Promise<Standing & { to: Spot }> {
  const correction = (await standingCorrections(tx, diagramId)).find(each => each.id === id);
  if (correction?.to) return { from: correction.from, replaces: id, to: correction.to };
  const found = (await foundOn(tx, diagramId)).find(each => each.id === id);
  if (!found) throw notFound('balloon', id);
  const { id: _, ...spot } = found;
  return { from: spot, replaces: null, to: spot };
}

async function keep(
  tx: Tx,
  diagramId: string,
  { from, to, replaces }: Standing & { to: Spot | null },
): Promise<string> {
  if (replaces) await end(tx, diagramId, replaces, new Date());
  const [kept] = await tx
    .insert(balloonCorrection)
    .values({
      workshop: thisWorkshop,
      diagram: diagramId,
      page: (to ?? from)!.page,
      fromRef: from?.ref,
      fromX: from?.x,
      fromY: from?.y,
      ref: to?.ref,
      x: to?.x,
      y: to?.y,
      replaces,
    })
    .returning({ id: balloonCorrection.id });
  return kept!.id;
}

async function end(tx: Tx, diagramId: string, id: string, endedAt: Date | null): Promise<void> {
  const ended = await tx
    .update(balloonCorrection)
    .set({ endedAt })
    .where(
      and(
        eq(balloonCorrection.diagram, diagramId),
        eq(balloonCorrection.id, id),
        endedAt ? isNull(balloonCorrection.endedAt) : undefined,
      ),
    )
    .returning({ id: balloonCorrection.id });
  if (ended.length === 0)
    throw refuse('changed-meanwhile', {
      place: `balloon ${id}`,
      message: 'Somebody else changed this balloon meanwhile.',
      remedy: 'Look at it as it stands now, and change it again.',
    });
}

async function pageIsThere(tx: Tx, diagramId: string, number: number): Promise<void> {
  const [there] = await tx
    .select({ number: page.number })
    .from(page)
    .where(and(eq(page.diagram, diagramId), eq(page.number, number)));
  if (!there) throw notFound('page', String(number));
}
