import { and, eq, sql } from 'drizzle-orm';
import type { DocumentRows } from '../../indexer/intake/rows.ts';
import type { GivenColumns } from '../../indexer/reading/column-meanings.ts';
import { type DiagramRefusal, diagram } from '../db/schema/index.ts';
import type { Claim, Store } from '../db/store.ts';
import { storeReading } from '../diagrams/store-reading.ts';
import { Refusal } from '../refusal.ts';
import { readStretches } from './read-stretches.ts';

/** Reads a document's bytes where they can do no harm; refusals are thrown. */
export type ReadDocument = (
  bytes: Uint8Array,
  about: {
    name: string;
    mediaType?: string;
    /** What a person says that its columns hold. */
    columns?: GivenColumns | undefined;
    /** First and last page to read, where not all. */
    pages?: { from: number; to: number } | undefined;
    onProgress?: (rowsDone: number, rowsTotal: number) => void;
    signal?: AbortSignal;
  },
) => Promise<DocumentRows>;

/** How long a reader may be silent before another takes its document, in seconds. */
export const leaseSeconds = 20;

/** How often a document is tried whose reader is lost on the way: killed programs and databases count too. */
export const mostAttempts = 10;

/**
 * Claims the document that has waited longest, reads it and stores what it says. Answers whether there was one. What
 * can't be read is refused for good, with the remedy; what fails on our side, or is ended by `signal`, waits again.
 */
export async function readWaiting(
  store: Store,
  readDocument: ReadDocument,
  signal?: AbortSignal,
  onStored?: (claim: Claim) => void,
): Promise<boolean> {
  const claim = await store.claimDiagram(leaseSeconds);
  if (!claim) return false;
  const document = await load(store, claim);
  if (!document) return true;
  if (document.attempts > mostAttempts) {
    await settle(store, claim, readerLost(document.name));
    return true;
  }
  const beat = heartbeat(store, claim);
  try {
    const { bytes, name, mediaType, columns, stretches } = document;
    const read = await readStretches(
      pages =>
        readDocument(bytes, {
          name,
          mediaType,
          columns: columns ?? undefined,
          pages,
          onProgress: beat.progress,
          ...(signal && { signal }),
        }),
      stretches,
    );
    if (await storeReading(store, claim, read)) onStored?.(claim);
  } catch (error) {
    if (!(error instanceof Refusal) || error.status >= 500) {
      await release(store, claim);
      throw error;
    }
    const { code, place, message, remedy } = error;
    await settle(store, claim, { code, place, message, remedy });
  } finally {
    await beat.stop();
  }
  return true;
}

const readerLost = (name: string): DiagramRefusal => ({
  code: 'reader-lost',
  place: name,
  message: `Reading this document came to a bad end ${mostAttempts} times.`,
  remedy:
    'Save it anew from the program it came from, or as CSV, and take that in; or paste its lines as text.',
});

const held = (claim: Claim) => and(eq(diagram.id, claim.id), eq(diagram.lease, claim.lease));

async function load(store: Store, claim: Claim) {
  const [document] = await store.inWorkshop(claim.workshop, tx =>
    tx
      .select({
        bytes: diagram.bytes,
        name: diagram.name,
        mediaType: diagram.mediaType,
        columns: diagram.columns,
        attempts: diagram.attempts,
        stretches: diagram.stretches,
      })
      .from(diagram)
      .where(held(claim)),
  );
  return document;
}

/** Says that the document is still being read and how far, every few seconds, until stopped. */
function heartbeat(store: Store, claim: Claim) {
  let seen: { done: number; total: number | null } = { done: 0, total: null };
  let said = 0;
  let running: Promise<unknown> = Promise.resolve();
  const say = () => {
    said = Date.now();
    const { done, total } = seen;
    running = running
      .then(() =>
        store.inWorkshop(claim.workshop, tx =>
          tx
            .update(diagram)
            .set({
              rowsDone: done,
              rowsTotal: total,
              leaseUntil: sql`clock_timestamp() + make_interval(secs => ${leaseSeconds})`,
            })
            .where(held(claim)),
        ),
      )
      // A beat that is missed is made up by the next; the lease outlasts several.
      .catch(() => {});
  };
  const timer = setInterval(say, (leaseSeconds * 1000) / 6);
  return {
    progress(done: number, total: number) {
      seen = { done, total };
      if (Date.now() - said > 250) say();
    },
    async stop() {
      clearInterval(timer);
      await running;
    },
  };
}

/** Ends the reading with a refusal of the whole document. */
async function settle(store: Store, claim: Claim, refusal: DiagramRefusal): Promise<void> {
  await store.inWorkshop(claim.workshop, tx =>
    tx
      .update(diagram)
      .set({ state: 'refused', refusal, lease: null, leaseUntil: null, readAt: new Date() })
      .where(held(claim)),
  );
}

/** Lets the document wait again, for a failure that is not its own. */
async function release(store: Store, claim: Claim): Promise<void> {
  await store
    .inWorkshop(claim.workshop, tx =>
      tx.update(diagram).set({ state: 'waiting', lease: null, leaseUntil: null }).where(held(claim)),
    )
    // Without the database the lease runs out by itself.
    .catch(() => {});
}
