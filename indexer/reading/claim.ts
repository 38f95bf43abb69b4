import { toMm, type Um } from '../units/length.ts';
import { agree } from './agree.ts';
import { Features } from './evidence.ts';
import type { Attrs, CategoryName, Dims, Span } from './reading.ts';

/** Where in the text something stands: half-open offsets. */
export interface Place {
  start: number;
  end: number;
}

/**
 * What a category says a line is: dimensions, attributes, and what speaks for and against it. Lengths are whole
 * micrometres; a thread is text, a count of teeth or a module a plain number.
 */
export class Claim {
  readonly category: CategoryName;
  readonly lengths = new Map<string, Um>();
  readonly attrs: Attrs = {};
  readonly spans: Span[] = [];
  readonly features = new Features();
  readonly notes: string[] = [];
  review = false;
  // Most claims have none of these, and most lines one claim: they are made when they are first asked for.
  #texts: Map<string, string> | null = null;
  #counts: Map<string, number> | null = null;
  #implied: Map<string, Um | string> | null = null;

  constructor(category: CategoryName) {
    this.category = category;
  }

  get texts(): Map<string, string> {
    this.#texts ??= new Map();
    return this.#texts;
  }

  get counts(): Map<string, number> {
    this.#counts ??= new Map();
    return this.#counts;
  }

  /** Dimensions that only a standard gives: lengths, or a thread's number that leaves its pitch open. */
  get implied(): Map<string, Um | string> {
    this.#implied ??= new Map();
    return this.#implied;
  }

  has(key: string): boolean {
    return this.lengths.has(key) || this.#texts?.has(key) === true || this.#counts?.has(key) === true;
  }

  /** A dimension from its printed number. The first one given stands. */
  measure(key: string, measure: Place & { um: Um }, um: Um = measure.um): void {
    if (this.has(key)) return;
    this.lengths.set(key, um);
    this.span(key, measure);
  }

  /** A dimension that a printed designation defines. */
  designated(key: string, um: Um): void {
    if (!this.has(key)) this.lengths.set(key, um);
  }

  text(key: string, value: string, place: Place): void {
    if (this.has(key)) return;
    this.texts.set(key, value);
    this.span(key, place);
  }

  count(key: string, value: number, place: Place): void {
    if (this.has(key)) return;
    this.counts.set(key, value);
    this.span(key, place);
  }

  /** An attribute. Of two values that agree the finer stands; of two that exclude each other the first, and a person looks. */
  attr(key: string, value: string | boolean, place?: Place): void {
    const stated = this.attrs[key];
    const agreed = stated === undefined ? { kept: value } : agree(key, stated, value);
    if (agreed === 'contradict') {
      this.contradict(`the ${key} is said to be ${stated} and ${value}`);
      // left and right are both of them, and neither is which
      if (key === 'side') delete this.attrs[key];
    } else if (agreed.kept !== stated) {
      this.attrs[key] = agreed.kept;
      if (place) this.span(key, place);
    }
  }

  span(field: string, { start, end }: Place): void {
    this.spans.push({ field, start, end });
  }

  /** A person should look, because … */
  doubt(why: string): void {
    this.review = true;
    this.notes.push(why);
  }

  /** Takes back every dimension that came from one of the places, and tells whether there was one. */
  withdraw(places: readonly Place[]): boolean {
    const from = (field: string) =>
      this.spans.some(s => s.field === field && places.some(p => p.start < s.end && s.start < p.end));
    const keys = [...this.lengths.keys(), ...this.texts.keys(), ...this.counts.keys()];
    const gone = keys.filter(
      key => from(key) || (from('designation') && !this.spans.some(s => s.field === key)),
    );
    for (const key of gone) {
      this.lengths.delete(key);
      this.texts.delete(key);
      this.counts.delete(key);
    }
    if (gone.length > 0) this.implied.clear();
    return gone.length > 0;
  }

  /** The line says two things that cannot both be true. */
  contradict(why: string): void {
    this.doubt(why);
    this.features.add('contradiction');
  }

  /** The dimensions as they stand at the edge: millimetres and text, in the given order. */
  dims(order: readonly string[]): Dims {
    const dims: Dims = {};
    let left = this.lengths.size + (this.#texts?.size ?? 0) + (this.#counts?.size ?? 0);
    for (const key of order) if (left > 0 && this.give(key, dims)) left--;
    if (left === 0) return dims;
    for (const key of this.lengths.keys()) this.give(key, dims);
    for (const key of this.#texts?.keys() ?? []) this.give(key, dims);
    for (const key of this.#counts?.keys() ?? []) this.give(key, dims);
    return dims;
  }

  private give(key: string, dims: Dims): boolean {
    const um = this.lengths.get(key);
    const value = this.#texts?.get(key) ?? this.#counts?.get(key) ?? (um === undefined ? um : toMm(um));
    if (value === undefined) return false;
    dims[key] ??= value;
    return true;
  }

  impliedDims(): Dims {
    const dims: Dims = {};
    for (const [key, value] of this.#implied ?? [])
      dims[key] = typeof value === 'string' ? value : toMm(value);
    return dims;
  }
}
