import type { Tx } from '../db/store.ts';
import type { SearchEntry } from './entry.ts';

/** A word of the query that was taken for another. */
export interface Correction {
  from: string;
  to: string;
}

/** The words of a query as the workshop knows them; one that nothing is like is left out. */
export interface KnownWords {
  known: string[];
  corrected: Correction[];
}

/**
 * What finds parts by their words. The database answers by itself; an engine beside it is fed with entries from the
 * outbox and can always be rebuilt. Either answers ids alone, the best first: what they name is read from the database.
 */
export interface Engine {
  readonly name: 'postgres' | 'meilisearch';
  /** `behind`: it answers, and was not fed all yet; `away`: the database finds in its place. */
  state(): Promise<'here' | 'behind' | 'away'>;
  /** What the words of a query mean here, typing errors mended. */
  correct(tx: Tx, words: string[]): Promise<KnownWords>;
  /** Parts whose words hold these, in any order. */
  byWords(tx: Tx, words: string[]): Promise<string[]>;
  /** Parts whose number, hyphens and spaces aside, is or holds this. */
  byNumber(tx: Tx, number: string): Promise<string[]>;
  put(entries: SearchEntry[]): Promise<void>;
  drop(workshop: string, ids: string[]): Promise<void>;
}
