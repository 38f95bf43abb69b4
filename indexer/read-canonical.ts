import type { Reading, Span } from './reading/reading.ts';
import { parseSize, writeItem, writeSize } from './size.ts';

/** What is written exactly as a size is meant as one: nobody's list happens to print `o-ring 1.422x1.524`. */
const certainty = 0.97;

/** An inch thread's glued bare length under this many millimetres is an inch as a person writes it: 1/4-20x1. */
const leastLength = 1.5;

/** Reads a size's own text, so that what we write we read back; null for any other line. */
export function readCanonical(text: string): Reading | null {
  const parsed = text.length < 60 && /^[a-z]/.test(text) ? parseSize(text) : null;
  if (!parsed) return null;
  const { category, dims, implied } = parsed;
  if (typeof dims['length'] === 'number' && dims['length'] < leastLength) return null;
  if (Number(dims['thickness'] ?? 0) > Number(dims['od'] ?? Number.POSITIVE_INFINITY)) return null;
  const size = writeSize(category, dims, implied);
  if (size !== text) return null;
  return {
    category,
    // A pitch that the text prints is given, though it is the coarse one.
    dims: { ...dims, ...implied },
    attrs: {},
    implied: {},
    qty: null,
    size,
    item: writeItem(category, dims, implied, {}),
    certainty,
    review: false,
    alternatives: [],
    spans: spansOf(text, category, { ...dims, ...implied }),
    notes: [],
  };
}

/** Each value stands in the text once, in the order of the size. */
function spansOf(text: string, category: string, values: Readonly<Record<string, number | string>>): Span[] {
  const spans: Span[] = [{ field: 'category', start: 0, end: category.length }];
  const rest = text.slice(category.length + 1).split('x');
  let start = category.length + 1;
  for (const piece of rest) {
    const field = Object.keys(values).find(
      key => String(values[key]) === piece && !spans.some(s => s.field === key),
    );
    if (field) spans.push({ field, start, end: start + piece.length });
    start += piece.length + 1;
  }
  return spans;
}
