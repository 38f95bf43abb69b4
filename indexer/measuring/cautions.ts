import type { Candidate, Made } from '../categories/measurable.ts';
import { type Duty, isCritical } from '../duty.ts';
import type { Attrs, CategoryName } from '../reading/reading.ts';
import { uncertaintyOfInstrument } from './instruments.ts';
import type { Observation } from './observation.ts';
import type { MeasureRequest } from './request.ts';
import type { Weighed } from './weigh.ts';

/**
 * What stands with every answer that rests on measurements: agreement is a suggestion; where someone could be hurt, not even
 * that.
 */
export function standingCautions(duty: Duty | undefined): string[] {
  return [
    ...(duty !== undefined && isCritical(duty)
      ? ['What hangs on this part asks for the maker’s part only: agreement of sizes is not an approval.']
      : []),
    'A measured match is a suggestion; the maker’s instructions come first.',
  ];
}

/**
 * Readings of one diameter this far apart speak of wear or a bend, in millimetres (common practice). Inside jaws and rules differ by
 * more on a sound part: a repair tutorial reads 4.93 to 5.00 in one bore of 5.
 */
const ovality = 0.03;

/** A calliper presses rubber by as much: readings of it part by more before they say anything (common practice). */
const pressed = 0.1;

/** What can fly when it is taken off or put on, and is measured all the same (common practice). */
const flies: Partial<Record<CategoryName, string>> = {
  spring: 'Springs fly: eye protection, a cloth or bag over the work, face out of line.',
  'retaining-ring': 'Clips fly: eye protection, a finger or a cloth over the ring, face out of line.',
};

/** What to mind about an answer: what flies, readings that speak of wear, no size that agrees, threads of two systems. */
export function cautionsOf(
  request: MeasureRequest,
  observations: readonly Observation[],
  set: readonly Weighed[],
  noneOfThese: number,
  candidates: readonly Candidate[],
): string[] {
  const cautions: string[] = [];
  request.measurements.forEach(({ values }, at) => {
    if (!values || values.length < 2) return;
    const { measurable, instrument } = observations[at]!;
    const { label, soft } = measurable;
    const spread = Math.max(...values) - Math.min(...values);
    const coarse = instrument === 'calliper-inside' || instrument === 'rule';
    const own = coarse ? (2 * uncertaintyOfInstrument(instrument)) / 1000 : ovality;
    if (spread > (soft ? pressed : own))
      cautions.push(
        `The readings of the ${label} differ by ${spread.toFixed(2)} mm: ${soft ? 'flattened or stretched by use' : 'worn, bent or out of round'}.`,
      );
  });
  cautions.push(...unknownAttributes(request, candidates));
  if (candidates.length === 0)
    cautions.push(
      `No table lists a ${request.category} like this, and this bench has met none: there is nothing to name it by.`,
    );
  else if (noneOfThese > 0.5)
    cautions.push(
      'No size known here agrees with these measurements: measure again, or take it for a special.',
    );
  const systems = new Set(set.map(({ candidate }) => threadSystem(candidate.dims.thread)).filter(Boolean));
  if (systems.size > 1)
    cautions.push(
      'Threads of two systems are among them: the wrong one starts a turn or two, then seizes and strips. Try it by hand.',
    );
  const flying = flies[request.category];
  return [...cautions, ...(flying ? [flying] : []), ...standingCautions(request.duty)];
}

/** What was said to be seen on the part, but no limit here knows: a head by another name. */
function unknownAttributes({ attrs = {} }: MeasureRequest, candidates: readonly Candidate[]): string[] {
  const seen = Object.entries(attrs);
  if (seen.length === 0) return [];
  const values = valuesKnown(candidates);
  return seen.flatMap(([key, value]) => {
    const known = values.get(key);
    return known === undefined || known.has(value)
      ? []
      : [`No table here knows a ${key} "${value}": it knows ${[...known].sort().join(', ')}.`];
  });
}

/** Every value of every attribute that a list of candidates tells apart, worked out once for a list: it is long. */
function valuesKnown(candidates: readonly Candidate[]): ReadonlyMap<string, ReadonlySet<unknown>> {
  const earlier = known.get(candidates);
  if (earlier) return earlier;
  const values = new Map<string, Set<unknown>>();
  const note = (attrs: Attrs | undefined) => {
    for (const [key, value] of Object.entries(attrs ?? {}))
      values.set(key, (values.get(key) ?? new Set()).add(value));
  };
  const done = new Set<unknown>();
  for (const { attrs, made } of candidates) {
    note(attrs);
    for (const limits of Object.values(made)) {
      // A thread comes in many lengths, all with the same heads.
      if (done.has(limits)) continue;
      done.add(limits);
      for (const { when } of Array.isArray(limits) ? (limits as readonly Made[]) : [limits as Made])
        note(when);
    }
  }
  known.set(candidates, values);
  return values;
}

const known = new WeakMap<readonly Candidate[], ReadonlyMap<string, ReadonlySet<unknown>>>();

function threadSystem(thread: unknown): string | null {
  if (typeof thread !== 'string') return null;
  return thread.startsWith('M') ? 'metric' : thread.endsWith('BA') ? 'BA' : 'inch';
}
