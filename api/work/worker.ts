import { setTimeout as sleep } from 'node:timers/promises';
import type { Claim, Store } from '../db/store.ts';
import { DrawAhead } from './draw-ahead.ts';
import type { DrawPage } from './draw-in-child.ts';
import { type ReadDocument, readWaiting } from './read-waiting.ts';

export interface Worker {
  /** A document waits: look now. */
  wake(): void;
  /** Lets the document at hand wait for the next start, and ends. */
  stop(): Promise<void>;
}

interface Options {
  store: Store;
  readDocument: ReadDocument;
  /** Draws the pages of what was read, when nothing waits to be read. */
  drawPage: DrawPage;
  log(entry: Record<string, unknown>): void;
  /** How long to rest when nothing waits, in milliseconds. */
  rest?: number;
}

/** Reads waiting documents one after another until it is stopped, and draws their pages in between. */
export function startWorker({ store, readDocument, drawPage, log, rest = 2000 }: Options): Worker {
  const ahead = new DrawAhead(store, drawPage);
  const read: Claim[] = [];
  let stopping = false;
  const ending = new AbortController();
  let alarm = new AbortController();

  const running = (async () => {
    while (!stopping) {
      const signal = alarm.signal;
      const worked = await readWaiting(store, readDocument, ending.signal, claim => read.push(claim))
        .then(async worked => {
          for (const claim of read.splice(0)) await ahead.add(claim);
          return worked || (!stopping && ahead.next(ending.signal));
        })
        .catch((error: Error) => {
          if (stopping) return false;
          const { message } = rootOf(error);
          log({ level: 'error', what: 'reading a document', name: error.name, message });
          return false;
        });
      if (!worked && !stopping) await sleep(rest, undefined, { signal }).catch(() => {});
      if (signal.aborted) alarm = new AbortController();
    }
  })();

  return {
    wake: () => alarm.abort(),
    async stop() {
      stopping = true;
      ending.abort(new Error('The program is closing.'));
      alarm.abort();
      await running;
    },
  };
}

const rootOf = (error: Error): Error => (error.cause instanceof Error ? rootOf(error.cause) : error);
