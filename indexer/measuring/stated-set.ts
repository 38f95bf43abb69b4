import type { Candidate } from '../categories/measurable.ts';
import type { Weighed } from './weigh.ts';

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
