import type { Candidate, Made, Measuring } from '../categories/measurable.ts';
import { agrees, limitsOf, wearOf } from './limits.ts';
import { anywhereTogether, type Observation } from './observation.ts';
import type { MeasureRequest } from './request.ts';

/** A candidate with what the measurements make of it. */
export interface Weighed {
  readonly candidate: Candidate;
  /** How well the measurements agree with it, beside the best candidate. */
  readonly likelihood: number;
  readonly probability: number;
}

/**
 * Share of the parts brought to a bench that are of no table: a special of its maker. One in ten is what we reckon with; somewhat more
 * is taken, since a special named as a standard size costs more than a second look.
 */
export const ofNoTable = 0.15;

/** No size counts for less than this part of the most common one: a rare size that fits stays among the answers. */
const leastCommon = 1 / 40;

/** Plating stands up to 15 micrometres on each side (platers' pages, from memory). */
const plating = 30;

/** What is seen on the part besides its measurements. */
type Seen = Pick<MeasureRequest, 'attrs' | 'condition' | 'plated'>;

/** Likelihood of one observation for one candidate: the mean over the standards it may be made to. */
function likelihoodOf(observation: Observation, all: readonly Made[], { condition, plated }: Seen): number {
  if (all.length === 0) return observation.anywhere;
  const { measurable } = observation;
  let sum = 0;
  for (const made of all) {
    const coated = plated && measurable.plates ? { ...made, max: made.max + plating } : made;
    sum += observation.likelihood(coated, wearOf(measurable, made, condition));
  }
  return sum / all.length;
}

/** How much a workshop's use of a size makes it more likely there: twice at once, eight times at most. */
const timesKnown = (count: number) => (count > 0 ? Math.min(8, 1 + Math.log2(1 + count)) : 1);

const most = (all: readonly number[]) => all.reduce((a, b) => Math.max(a, b), 0);
const sumOf = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);

/**
 * The candidates by their probability, best first, and that of none of them. A size and its limits are weighed by the
 * likelihood of all observations together, times how common it is. What a candidate has no limits for says nothing of it.
 */
export function weigh(
  measuring: Measuring,
  candidates: readonly Candidate[],
  counts: ReadonlyMap<Candidate, number>,
  observations: readonly Observation[],
  seenOn: Seen,
): { weighed: Weighed[]; noneOfThese: number } {
  const { attrs = {} } = seenOn;
  const suits = measuring.suits ?? (() => 1);
  const possible = candidates.filter(each => agrees(each.attrs, attrs) && suits(each, attrs) > 0);
  const commons = possible.map(each => each.common * timesKnown(counts.get(each) ?? 0));
  const floor = most(commons) * leastCommon;
  const priors = commons.map((common, at) => Math.max(floor, common) * suits(possible[at]!, attrs));
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
  const best = most(likelihoods);
  const share = (1 - ofNoTable) / sumOf(priors);
  const weights = likelihoods.map((likelihood, at) => share * likelihood * priors[at]!);
  const none = possible.length === 0 ? 1 : ofNoTable * anywhereTogether(observations);
  const total = none + sumOf(weights);
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
