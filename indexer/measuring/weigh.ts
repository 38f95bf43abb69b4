import {
  type Candidate,
  keep,
  type Made,
  type Measurable,
  type Measuring,
} from '../categories/measurable.ts';
import type { Attrs, Dims } from '../reading/reading.ts';
import type { Um } from '../units/length.ts';
import { anywhereTogether, type Observation } from './observe.ts';
import type { KnownSize, MeasureRequest } from './request.ts';

/** A candidate with what the measurements make of it. */
export interface Weighed {
  readonly candidate: Candidate;
  /** How well the measurements agree with it, beside the best candidate. */
  readonly likelihood: number;
  readonly probability: number;
}

/** Share of the parts brought to a bench that are of no table (common practice: a special of its maker). */
export const ofNoTable = 0.1;

/** No size counts for less than this part of the most common one: a rare size that fits stays among the answers. */
const leastCommon = 1 / 40;

const wearFactor = { new: 0.1, used: 1, worn: 3 } as const;

/** Mean wear of a dimension in micrometres, above nought where it grows. */
export function wearOf(
  { wear }: Measurable,
  made: { max: Um },
  condition: MeasureRequest['condition'],
): number {
  if (wear === null) return 0;
  const amount = (wear.mean + (wear.share ?? 0) * made.max) * wearFactor[condition ?? 'used'];
  return wear.grows ? amount : -amount;
}

const agrees = (has: Attrs | undefined, seen: Attrs): boolean =>
  has === undefined ||
  Object.entries(has).every(([key, value]) => seen[key] === undefined || seen[key] === value);

/** The limits of a dimension that hold for a part of these attributes; none where nothing is known. */
export function limitsOf(candidate: Candidate, key: string, attrs: Attrs): readonly Made[] {
  const made = candidate.made[key];
  if (made === undefined) return [];
  const all = Array.isArray(made) ? (made as readonly Made[]) : [made as Made];
  return all.filter(each => agrees(each.when, attrs));
}

/** Likelihood of one observation for one candidate: the mean over the standards it may be made to. */
function likelihoodOf(
  observation: Observation,
  all: readonly Made[],
  condition: MeasureRequest['condition'],
) {
  if (all.length === 0) return observation.anywhere;
  let sum = 0;
  for (const made of all)
    sum += observation.likelihood(made, wearOf(observation.measurable, made, condition));
  return sum / all.length;
}

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

/** How much a workshop's use of a size makes it more likely there: twice at once, eight times at most. */
const timesKnown = (count: number) => (count > 0 ? Math.min(8, 1 + Math.log2(1 + count)) : 1);

/**
 * The candidates by their probability, best first, and that of none of them. A size and its limits are weighed by the
 * likelihood of all observations together, times how common it is. What a candidate has no limits for says nothing of it.
 */
export function weigh(
  candidates: readonly Candidate[],
  counts: ReadonlyMap<Candidate, number>,
  observations: readonly Observation[],
  seenOn: Seen,
): { weighed: Weighed[]; noneOfThese: number } {
  const { attrs = {} } = seenOn;
  const possible = candidates.filter(candidate => agrees(candidate.attrs, attrs));
  const commons = possible.map(candidate => candidate.common * timesKnown(counts.get(candidate) ?? 0));
  const floor = commons.reduce((most, each) => Math.max(most, each), 0) * leastCommon;
  let [all, best] = [0, 0];
  // Candidates that share a limit share what is said of it: a thread comes in many lengths.
  const seen = observations.map(() => new Map<unknown, number>());
  const likelihoods = possible.map(candidate => {
    let product = 1;
    for (let at = 0; at < observations.length && product > 0; at++) {
      const observation = observations[at]!;
      const key = candidate.made[observation.measurable.key];
      let value = seen[at]!.get(key);
      if (value === undefined) {
        value = likelihoodOf(observation, limitsOf(candidate, observation.measurable.key, attrs), seenOn);
        seen[at]!.set(key, value);
      }
      product *= value;
    }
    return product;
  });
  possible.forEach((_, at) => {
    all += Math.max(floor, commons[at]!);
    best = Math.max(best, likelihoods[at]!);
  });
  const none = possible.length === 0 ? 1 : ofNoTable * anywhereTogether(observations);
  const weights = likelihoods.map(
    (likelihood, at) => ((1 - ofNoTable) * likelihood * Math.max(floor, commons[at]!)) / all,
  );
  const total = weights.reduce((sum, weight) => sum + weight, none);
  const weighed = possible
    .map((candidate, at) => ({
      candidate,
      likelihood: best > 0 ? likelihoods[at]! / best : 0,
      probability: weights[at]! / total,
    }))
    .filter(each => each.probability > 1e-6)
    .sort((a, b) => b.probability - a.probability);
  return { weighed, noneOfThese: none / total };
}

/** Candidates of one size and type, as several standards make it, as one: the best of them speaks, with all their names. */
export function together(weighed: readonly Weighed[], nameOf: (candidate: Candidate) => string): Weighed[] {
  const bySize = new Map<string, Weighed>();
  for (const each of weighed) {
    const key = `${nameOf(each.candidate)} ${each.candidate.attrs?.type ?? ''}`;
    const best = bySize.get(key);
    bySize.set(key, best ? joined(best, each) : each);
  }
  return [...bySize.values()].sort((a, b) => b.probability - a.probability);
}

function joined(best: Weighed, other: Weighed): Weighed {
  const designations = [...new Set([...best.candidate.designations, ...other.candidate.designations])];
  return {
    candidate: { ...best.candidate, designations },
    likelihood: Math.max(best.likelihood, other.likelihood),
    probability: best.probability + other.probability,
  };
}

/** The smallest set of candidates that holds this share of what is not none of them. Best first in, best first out. */
export function smallestSet(weighed: readonly Weighed[], share: number): Weighed[] {
  const wanted = share * weighed.reduce((sum, each) => sum + each.probability, 0);
  const set: Weighed[] = [];
  let held = 0;
  for (const each of weighed) {
    if (held >= wanted) break;
    set.push(each);
    held += each.probability;
  }
  return set;
}
