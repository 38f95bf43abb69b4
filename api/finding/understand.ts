import { categories, type Dims, type Reading, read } from '../../indexer/index.ts';
import type { Understood } from '../answers/index.ts';

/** A query as it was read, and the sizes that it can mean. */
export interface Meaning {
  understood: Understood | null;
  /** Canonical sizes, the likeliest first; several where bare numbers leave the kind of part open. */
  sizes: string[];
  /** What of the query no dimension was read from. */
  rest: string;
  reading: Reading;
}

/** Reads a query as a line of a parts list is read; bare numbers are tried as every kind of part. */
export function understand(query: string): Meaning {
  const reading = read(query);
  const bare = reading.size === null && isBare(query);
  const tried = bare ? triedAs(query) : [];
  const sizes = reading.size === null ? tried.map(one => one.size!) : [reading.size];
  const others = reading.alternatives.flatMap(other => other.size ?? []);
  const knows = reading.category !== 'plain' && reading.category !== 'not-a-part';
  return {
    understood: knows || tried.length > 0 ? answered(query, reading, tried) : null,
    sizes: [...new Set([...sizes, ...others])],
    rest: tried.length > 0 ? '' : restOf(query, reading),
    reading,
  };
}

/** Nothing but numbers and what stands between them: 5x11x4, 5 x 11 x 4 mm, 3/16 × 1/2. */
const isBare = (query: string) =>
  /\d/.test(query) &&
  !/[\p{L}]/u.test(query.replace(/\d\s*[x×*]\s*(?=\d)/gi, '').replace(/\b(mm|in|inch)\b/gi, ''));

/**
 * The query as each kind of part that these numbers can be a size of. A way that leaves a number out, or that does not
 * agree with itself, is none.
 */
function triedAs(query: string): Reading[] {
  const numbers = query.includes('/') ? [] : (query.match(/\d+(?:[.,]\d+)?/g) ?? []);
  return [...categories.keys()].flatMap(category => {
    const one = read(`${category.replace('-', ' ')} ${query}`);
    const whole = Object.keys(one.dims).length >= numbers.length && !one.review;
    return one.category === category && one.size !== null && whole ? [one] : [];
  });
}

function answered(query: string, reading: Reading, tried: Reading[]): Understood {
  const first = tried.length === 1 ? tried[0]! : reading;
  const alternatives = reading.alternatives.map(({ category, size, why }) => ({ category, size, why }));
  const named = new Set(alternatives.map(other => other.size));
  const others = tried.length > 1 ? tried.filter(one => !named.has(one.size)) : [];
  const otherwise = [
    ...alternatives,
    ...others.map(one => ({
      category: one.category,
      size: one.size,
      why: 'the numbers alone do not say which kind of part',
    })),
  ];
  const { category, size, dims, implied, attrs, notes } = first;
  return { category, size, dims, implied, attrs, fields: fieldsOf(query, first, reading), otherwise, notes };
}

/** Each thing understood with the words of the query that say it; what a standard adds is assumed. */
function fieldsOf(query: string, first: Reading, reading: Reading): Understood['fields'] {
  const spans = new Map(reading.spans.map(span => [span.field, span]));
  const stated = Object.entries({ ...first.dims, ...first.attrs }).map(([field, value]) => {
    const span = first === reading ? (spans.get(field) ?? spans.get('designation')) : undefined;
    return {
      field,
      value,
      text: span ? query.slice(span.start, span.end) : null,
      start: span?.start ?? null,
      end: span?.end ?? null,
      how: 'stated' as const,
    };
  });
  const assumed = Object.entries(first.implied).map(([field, value]) => ({
    field,
    value,
    text: null,
    start: null,
    end: null,
    how: 'assumed' as const,
  }));
  return [...stated, ...assumed];
}

/** The query without the characters that dimensions and attributes were read from. */
function restOf(query: string, { spans, size, dims }: Reading): string {
  if (size === null && Object.keys(dims).length === 0) return query;
  const kept = query.split('');
  for (const { start, end } of spans) kept.fill(' ', start, end);
  // A times sign that stood between two sizes says nothing once they are out.
  return kept.join('').replace(/(?<![^\s])[x×*](?![^\s])/gi, ' ');
}

/** True where every dimension that was given is the size's own: `screw M3` is met by every length of M3. */
export function meets(given: Dims, size: { dims: Dims; implied: Dims }): boolean {
  return Object.entries(given).every(([name, value]) => (size.dims[name] ?? size.implied[name]) === value);
}
