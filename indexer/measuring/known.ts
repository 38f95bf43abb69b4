import { type Candidate, keep, type Measuring } from '../categories/measurable.ts';
import type { Dims } from '../reading/reading.ts';
import type { KnownSize } from './request.ts';

/** Published candidates by what their size names, built once for a list. */
const indexed = keep((published: readonly Candidate[]) => {
  const keys = [...new Set(published.flatMap(each => Object.keys(each.dims)))];
  const keyOf = (dims: Dims) => keys.map(key => dims[key] ?? '').join('x');
  const bySize = new Map<string, Candidate[]>();
  for (const each of published) {
    const same = bySize.get(keyOf(each.dims));
    if (same) same.push(each);
    else bySize.set(keyOf(each.dims), [each]);
  }
  return (dims: Dims): readonly Candidate[] => bySize.get(keyOf(dims)) ?? [];
});

/** Sizes of the workshop that are of this category: those that no list has are added, all with their counts. */
export function withKnown(
  measuring: Measuring,
  published: readonly Candidate[],
  known: readonly KnownSize[],
): WithKnown {
  const earlier = lastKnown.get(known);
  if (earlier?.published === published) return earlier;
  const made = { published, ...joinKnown(measuring, published, known) };
  lastKnown.set(known, made);
  return made;
}

interface WithKnown {
  readonly candidates: readonly Candidate[];
  readonly counts: ReadonlyMap<Candidate, number>;
}

/** A page asks again and again with the same list of its workshop's sizes, at every key that is pressed. */
const lastKnown = new WeakMap<readonly KnownSize[], WithKnown & { published: readonly Candidate[] }>();

function joinKnown(
  measuring: Measuring,
  published: readonly Candidate[],
  known: readonly KnownSize[],
): WithKnown {
  const counts = new Map<Candidate, number>();
  const front = `${measuring.category} `;
  const find = indexed(published);
  const added: Candidate[] = [];
  for (const { size, count } of known) {
    const parsed = size.startsWith(front) ? measuring.parse(size.slice(front.length)) : null;
    if (!parsed) continue;
    const dims = { ...parsed.implied, ...parsed.dims };
    const same = find(dims);
    for (const candidate of same) counts.set(candidate, (counts.get(candidate) ?? 0) + count);
    const own = same.length > 0 ? null : measuring.known(dims);
    if (own) {
      added.push(own);
      counts.set(own, count);
    }
  }
  return { candidates: added.length === 0 ? published : [...published, ...added], counts };
}
