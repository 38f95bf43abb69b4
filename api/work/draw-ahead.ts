import { and, asc, eq, isNull, sql } from 'drizzle-orm';
import { page, pagePicture } from '../db/schema/index.ts';
import type { Claim, Store } from '../db/store.ts';
import { pictureOfPage } from '../diagrams/page-picture.ts';
import type { DrawPage } from './draw-in-child.ts';

type Document = Pick<Claim, 'workshop' | 'id'>;

/** Pages of one document that are drawn before anyone looks at them; further ones are drawn when first looked at. */
const mostPages = 40;

/**
 * Draws the pages of documents that were just read, so that the first look at one need not wait. What is not drawn
 * when the program ends is drawn when someone looks at it.
 */
export class DrawAhead {
  private readonly waiting: { document: Document; pages: number[] }[] = [];
  private readonly store: Store;
  private readonly drawPage: DrawPage;

  constructor(store: Store, drawPage: DrawPage) {
    this.store = store;
    this.drawPage = drawPage;
  }

  /** Takes in the pages of a document that have no picture yet, those with the most balloons first. */
  async add(document: Document): Promise<void> {
    const pages = await this.store.inWorkshop(document.workshop, tx =>
      tx
        .select({ number: page.number })
        .from(page)
        .leftJoin(pagePicture, and(eq(pagePicture.diagram, page.diagram), eq(pagePicture.page, page.number)))
        .where(and(eq(page.diagram, document.id), isNull(pagePicture.page)))
        .orderBy(
          sql`(select count(*) from balloon where balloon.diagram = ${page.diagram} and balloon.page = ${page.number}) desc`,
          asc(page.number),
        )
        .limit(mostPages),
    );
    if (pages.length > 0) this.waiting.push({ document, pages: pages.map(({ number }) => number) });
  }

  /** Draws one page; answers whether there was one. A page that can't be drawn is left to who looks at it, and told why. */
  async next(signal?: AbortSignal): Promise<boolean> {
    const [first] = this.waiting;
    const number = first?.pages.shift();
    if (first?.pages.length === 0) this.waiting.shift();
    if (!first || number === undefined) return false;
    const { workshop, id } = first.document;
    const draw: DrawPage = (bytes, asked) => this.drawPage(bytes, asked, signal);
    await pictureOfPage(this.store, draw, workshop, { diagram: id, page: number, width: 1 }).catch(() => {});
    return true;
  }
}
