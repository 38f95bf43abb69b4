import { setTimeout as sleep } from 'node:timers/promises';
import type { Store } from '../db/store.ts';
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
  log(entry: Record<string, unknown>): void;
  /** How long to rest when nothing waits, in milliseconds. */
  rest?: number;
}

/** Reads waiting documents one after another until it is stopped. */
export function startWorker({ store, readDocument, log, rest = 2000 }: Options): Worker {
  let stopping = false;
  const ending = new AbortController();
  let alarm = new AbortController();

  const running = (async () => {
    while (!stopping) {
      const signal = alarm.signal;
      const worked = await readWaiting(store, readDocument, ending.signal).catch((error: Error) => {
        if (stopping) return false;
        log({ level: 'error', what: 'reading a document', name: error.name, message: rootOf(error).message });
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
