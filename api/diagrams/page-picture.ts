import { and, asc, desc, eq, gte, sql } from 'drizzle-orm';
import { diagram, page, pagePicture } from '../db/schema/index.ts';
import type { Store, Tx } from '../db/store.ts';
import { thisWorkshop } from '../db/this-workshop.ts';
import { notFound, refuse } from '../refusal.ts';
import type { DrawPage, Picture } from '../work/draw-in-child.ts';
import { ChildEnded } from '../work/watched-child.ts';

/** Pages being drawn by this process, so that two who look at the same page wait for one drawing of it. */
const underWay = new Map<string, Promise<void>>();

/**
 * The picture of a page that is at least so many pixels wide, or the widest there is. Drawn from the document the
 * first time that anyone looks at it, at every scale, and kept.
 */
export async function pictureOfPage(
  store: Store,
  drawPage: DrawPage,
  workshop: string,
  asked: { diagram: string; page: number; width: number },
): Promise<Buffer> {
  const kept = () => store.inWorkshop(workshop, tx => keptPicture(tx, asked));
  const known = await kept();
  if (known) return known;
  const key = `${workshop} ${asked.diagram} ${asked.page}`;
  const drawing = underWay.get(key) ?? drawAndKeep(store, drawPage, workshop, asked);
  underWay.set(key, drawing);
  try {
    await drawing;
  } finally {
    underWay.delete(key);
  }
  return (await kept()) ?? Promise.reject(notFound('page', String(asked.page)));
}

async function keptPicture(
  tx: Tx,
  { diagram: id, page: number, width }: { diagram: string; page: number; width: number },
): Promise<Buffer | null> {
  const ofPage = and(eq(pagePicture.diagram, id), eq(pagePicture.page, number));
  const columns = { bytes: pagePicture.bytes };
  const [enough] = await tx
    .select(columns)
    .from(pagePicture)
    .where(and(ofPage, gte(pagePicture.width, width)))
    .orderBy(asc(pagePicture.width))
    .limit(1);
  if (enough) return enough.bytes;
  const [widest] = await tx
    .select(columns)
    .from(pagePicture)
    .where(ofPage)
    .orderBy(desc(pagePicture.width))
    .limit(1);
  return widest?.bytes ?? null;
}

async function drawAndKeep(
  store: Store,
  drawPage: DrawPage,
  workshop: string,
  asked: { diagram: string; page: number },
): Promise<void> {
  const [document] = await store.inWorkshop(workshop, tx =>
    tx
      .select({ name: diagram.name, bytes: diagram.bytes })
      .from(page)
      .innerJoin(diagram, eq(diagram.id, page.diagram))
      .where(and(eq(page.diagram, asked.diagram), eq(page.number, asked.page))),
  );
  if (!document) throw notFound('page', String(asked.page));
  const pictures = await drawPage(document.bytes, asked.page).catch(error => {
    if (error instanceof ChildEnded) throw notDrawn(document.name, asked.page, error);
    throw error;
  });
  await store.inWorkshop(workshop, tx => keepPictures(tx, asked, pictures));
}

async function keepPictures(
  tx: Tx,
  asked: { diagram: string; page: number },
  pictures: Picture[],
): Promise<void> {
  for (const picture of pictures)
    await tx
      .insert(pagePicture)
      .values({ workshop: thisWorkshop, diagram: asked.diagram, page: asked.page, ...picture })
      .onConflictDoUpdate({
        target: [pagePicture.workshop, pagePicture.diagram, pagePicture.page, pagePicture.width],
        set: { bytes: sql`excluded.bytes` },
      });
}

const notDrawn = (name: string, page: number, cause: ChildEnded) =>
  refuse(
    'page-not-drawn',
    {
      place: `${name}, page ${page}`,
      message:
        cause.why === 'died'
          ? 'This page could not be drawn.'
          : 'Drawing this page takes more time or memory than one page may.',
      remedy: 'Its lines are read all the same. To see it, save the document as it came and open it there.',
    },
    cause,
  );
