import { pageTooMuch, restUnread } from '../../indexer/intake/pdf/tell.ts';
import type { DocumentRows } from '../../indexer/intake/rows.ts';
import { Refusal } from '../refusal.ts';

/** Reads a document from a page on, as far as one reading goes. */
type ReadFrom = (pages: { from: number; to: number } | undefined) => Promise<DocumentRows>;

/**
 * Reads a document in so many stretches at most, each as long as one reading may be, one after the other: the first
 * from the beginning, every further one from the page where the one before met a limit. A further stretch that is
 * refused leaves what was read before.
 */
export async function readStretches(read: ReadFrom, stretches: number): Promise<DocumentRows> {
  let whole = await read(undefined);
  for (let nth = 1; nth < stretches; nth += 1) {
    const rest = restOf(whole);
    if (rest === null) break;
    const { pages } = whole.document;
    const further = await read({ from: rest, to: pages }).catch(error => {
      if (!(error instanceof Refusal) || error.status >= 500) throw error;
      const after = rest < pages ? [restUnread(rest + 1, pages)] : [];
      return { faults: [pageTooMuch(rest, error.message), ...after] };
    });
    whole = joined(whole, further);
  }
  return whole;
}

/** The page from which a document is not read yet, null where all of it is. */
export const restOf = ({ faults }: Pick<DocumentRows, 'faults'>): number | null =>
  faults.find(({ code }) => code === 'pages-not-read')?.page ?? null;

/** What is read of a stretch; of one that is refused there are faults alone. */
type Stretch = Pick<DocumentRows, 'faults'> & Partial<DocumentRows>;

function joined(before: DocumentRows, after: Stretch): DocumentRows {
  return {
    document: before.document,
    tables: [...before.tables, ...(after.tables ?? [])],
    rows: [...before.rows, ...(after.rows ?? [])],
    relations: [...before.relations, ...(after.relations ?? [])],
    balloons: [...before.balloons, ...(after.balloons ?? [])],
    pageSizes: [...(before.pageSizes ?? []), ...(after.pageSizes ?? [])],
    written: [...(before.written ?? []), ...(after.written ?? [])],
    faults: [...before.faults.filter(({ code }) => code !== 'pages-not-read'), ...after.faults],
  };
}
