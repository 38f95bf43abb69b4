import type { Tx } from '../db/store.ts';
import type { SearchEntry } from './entry.ts';

/** A word of the query that was taken for another. */
export interface Correction {
  from: string;
  to: string;
}

/** Parts by their ids, the best first. */
export interface Hits {
  parts: string[];
  corrected: Correction[];
}

/**
 * What finds parts by their words. The database answers by itself; an engine beside it is fed with entries from the
 * outbox and can always be rebuilt. Either answers ids alone: what they name is read from the database.
 */
export interface Engine {
  readonly name: 'postgres' | 'meilisearch';
  /** Parts whose words hold these, in any order and with typing errors. */
  byWords(tx: Tx, words: string[]): Promise<Hits>;
  /** Parts whose number, hyphens and spaces aside, is or holds this. */
  byNumber(tx: Tx, number: string): Promise<string[]>;
  put(entries: SearchEntry[]): Promise<void>;
  drop(workshop: string, ids: string[]): Promise<void>;
}
