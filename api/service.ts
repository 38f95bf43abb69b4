import type { Store } from './db/store.ts';
import type { Engine } from './search/engine.ts';
import type { DrawPage } from './work/draw-in-child.ts';
import type { ReadDocument } from './work/read-waiting.ts';

/** How people reach the service, where they sign in. */
export interface Accounts {
  /** The address that people open, such as `https://bench.example`; without a path. */
  origin: string;
  /** How many proxies of one's own stand before it, each adding to `X-Forwarded-For`. */
  proxies: number;
}

/** What lets the command line of the same person keep and bring back everything: the announced key, and the folder. */
export interface Keeping {
  key: string;
  folder: string;
}

/** What every route is given: nothing reaches for a thing that is not handed to it. */
export interface Service {
  store: Store;
  engine: Engine;
  /** Reads a document in a child process under limits. */
  readDocument: ReadDocument;
  /** Draws a page of a document, likewise. */
  drawPage: DrawPage;
  /** Says that a document waits, so that the worker need not look for it. */
  wake(): void;
  /** One line of the log; never holds what a document or a person says. */
  log(entry: Record<string, unknown>): void;
  /** Ports that the page may be reached at. Empty: any, for what is served in process alone. */
  ports: number[];
  /** The built page's folder; null serves the API alone. */
  pageFolder: string | null;
  /** Whether there is room on the database's disk; absent where it is not this machine's. */
  hasRoom?: (() => Promise<boolean>) | undefined;
  /** Where people sign in; absent where nobody does, because the service is this machine's alone. */
  accounts?: Accounts | undefined;
  /** What backup and restore of the served folder need; absent where the database is a server's. */
  keeping?: Keeping | undefined;
}
