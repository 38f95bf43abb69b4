import type { Evidenced } from '../read.ts';

/**
 * One thing that a document can teach of its own lines. It hears every line as it reads by itself, and settles in the end
 * over all of them together; votes are whole numbers, so that the order of the lines does not matter.
 */
export interface Lesson<T> {
  hear(line: Evidenced): void;
  /** What was learnt; null where too few lines tell, or too many tell otherwise. */
  settle(): T | null;
}

/** Votes for one of several ways. */
export class Votes<T> {
  readonly #counts = new Map<T, number>();

  add(way: T, votes = 1): void {
    this.#counts.set(way, (this.#counts.get(way) ?? 0) + votes);
  }

  of(way: T): number {
    return this.#counts.get(way) ?? 0;
  }

  counted(): Iterable<[way: T, votes: number]> {
    return this.#counts;
  }

  /** The way with the most votes, if it has at least `least`, and `margin` times those of all others together. */
  settle(least: number, margin: number): T | null {
    let best: T | null = null;
    let most = 0;
    let all = 0;
    for (const [way, votes] of this.#counts) {
      all += votes;
      if (votes > most) [best, most] = [way, votes];
    }
    return most >= least && most >= margin * (all - most) ? best : null;
  }
}
