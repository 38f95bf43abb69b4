import type { Following, Measurable, Measuring } from './categories/measurable.ts';
import { measurings } from './measuring/categories.ts';
import { cautionsOf } from './measuring/cautions.ts';
import type { Instrument } from './measuring/instruments.ts';
import { withKnown } from './measuring/known.ts';
import { limitsOf } from './measuring/limits.ts';
import { nextMeasurements } from './measuring/next.ts';
import type { NextMeasurement } from './measuring/next-measurement.ts';
import type { Observation } from './measuring/observation.ts';
import { observe } from './measuring/observe.ts';
import { reasonsFor, remarksOn } from './measuring/reasons.ts';
import { BadMeasurement, type MeasureRequest } from './measuring/request.ts';
import { smallestSet, together } from './measuring/stated-set.ts';
import { type Weighed, weigh } from './measuring/weigh.ts';
import type { Attrs, CategoryName, Dims } from './reading/reading.ts';
import { toMm } from './units/length.ts';
import type { Uncertain } from './units/uncertain.ts';

export type { Instrument } from './measuring/instruments.ts';
export { instruments } from './measuring/instruments.ts';
export type { NextMeasurement } from './measuring/next-measurement.ts';
export {
  BadMeasurement,
  type KnownSize,
  type Measurement,
  type MeasureRequest,
} from './measuring/request.ts';

/** One size that the measurements allow. */
export interface CandidateAnswer {
  /** The canonical size; without the length of a screw or pin where that was not measured. */
  size: string;
  designation: string | null;
  designations: string[];
  dims: Dims;
  attrs: Attrs;
  probability: number;
  /** How well the measurements agree with it, beside the best candidate, whatever is common. */
  likelihood: number;
  /** What it is made to, in millimetres, of each dimension that was measured: several where standards differ. */
  limits: Record<string, { min: number; max: number }[]>;
  /** What each measurement says of it. */
  reasons: string[];
}

/** One measurement as it was taken: millimetres, with the doubt that was stated or is the instrument's own. */
export interface TakenAs {
  dimension: string;
  value: number;
  uncertainty: number;
  instrument: Instrument | null;
}

export interface MeasureAnswer {
  /** Best first; with `noneOfThese` they sum to one. */
  candidates: CandidateAnswer[];
  noneOfThese: number;
  /** The sizes that hold 99 in 100 of what is not none of them: one when the measurements decide. */
  cannotTellApart: string[];
  /** What would settle it, the most telling first. */
  next: NextMeasurement[];
  taken: TakenAs[];
  /** What follows from the measurements alone, as a spring's rate. */
  follows: Following[];
  cautions: string[];
}

/** Share of the probability that the stated set holds. */
const stated = 0.99;

/** Probabilities below this are no answer. */
const negligible = 1e-4;

/**
 * What a part is, from what was measured on it: every published size of its category, and every size the workshop knows, by
 * probability, with "none of these" among them. What cannot be told apart is said as a set, with what would settle it.
 * Measured agreement is a suggestion, never an approval.
 *
 * @throws BadMeasurement naming the measurement and the remedy.
 */
export function measure(request: MeasureRequest): MeasureAnswer {
  const measuring = measuringOf(request.category);
  const observations = observed(measuring, request);
  const measured = new Set(observations.map(each => each.measurable.key));
  const { candidates, counts } = withKnown(measuring, measuring.candidates(measured), request.known ?? []);
  const { weighed: apart, noneOfThese } = weigh(measuring, candidates, counts, observations, request);
  const weighed = together(apart, candidate => sizeOf(measuring, candidate.dims));
  const set = smallestSet(weighed, stated);
  const names = namesOf(measuring, weighed);
  const listed = weighed.filter((each, at) => at < set.length || each.probability >= negligible);
  // What is too unlikely to be listed is shared out, so that the answer sums to one.
  const whole = listed.reduce((sum, each) => sum + each.probability, noneOfThese);
  return {
    candidates: listed.map(each => ({
      ...answerOf(each, names.get(each)!.size),
      probability: rounded(each.probability / whole),
      limits: limitsMeasured(each, observations, request),
      reasons: [
        ...reasonsFor(each.candidate, observations, request.attrs ?? {}),
        ...remarksOn(measuring, each.candidate, observations),
      ],
    })),
    noneOfThese: rounded(noneOfThese / whole),
    cannotTellApart: [...new Set(set.map(each => names.get(each)!.name))],
    next: nextMeasurements(measuring, observations, set, each => names.get(each)!, request),
    taken: observations.map(takenAs),
    follows: measuring.follows?.(inMillimetres(observations), request.attrs ?? {}) ?? [],
    cautions: cautionsOf(request, observations, set, noneOfThese, candidates),
  };
}

/** What can be measured on a part of a category, in the order a person would; null where sizes are not told so. */
export function measurablesOf(category: CategoryName): readonly Measurable[] | null {
  return measurings.get(category)?.measurable ?? null;
}

/** The kinds of part that can be named from measurements. */
export const measuredCategories: readonly CategoryName[] = [...measurings.keys()];

function measuringOf(category: CategoryName): Measuring {
  const measuring = measurings.get(category);
  if (measuring) return measuring;
  throw new BadMeasurement(
    'category',
    `A part of the kind "${category}" is not named from measurements.`,
    `Name one of ${[...measurings.keys()].join(', ')}.`,
  );
}

function observed(measuring: Measuring, { measurements }: MeasureRequest): Observation[] {
  if (measurements.length === 0)
    throw new BadMeasurement(
      'measurements',
      'Nothing was measured.',
      `Measure one or more of ${keysOf(measuring)}.`,
    );
  return measurements.map((measurement, at) => {
    const place = `measurements.${at}`;
    const measurable = measuring.measurable.find(each => each.key === measurement.dimension);
    if (!measurable)
      throw new BadMeasurement(
        `${place}.dimension`,
        `A ${measuring.category} has no "${measurement.dimension}" that is measured.`,
        `Name one of ${keysOf(measuring)}.`,
      );
    return observe(measurement, measurable, place);
  });
}

const keysOf = (measuring: Measuring) => measuring.measurable.map(each => each.key).join(', ');

const rounded = (probability: number) => Math.round(probability * 1e6) / 1e6;

/** The size's text, and a name that is unique among the candidates: with its type where two types share a size. */
function namesOf(
  measuring: Measuring,
  weighed: readonly Weighed[],
): Map<Weighed, { size: string; name: string }> {
  const sizes = weighed.map(({ candidate }) => sizeOf(measuring, candidate.dims));
  const times = new Map<string, number>();
  for (const size of sizes) times.set(size, (times.get(size) ?? 0) + 1);
  return new Map(
    weighed.map((each, at) => {
      const size = sizes[at]!;
      const type = each.candidate.attrs?.type;
      return [each, { size, name: times.get(size)! > 1 && type ? `${size} ${type}` : size }];
    }),
  );
}

/** The canonical size; where a length is open, what is there of it, in the same order. */
function sizeOf(measuring: Measuring, dims: Dims): string {
  const whole = measuring.write(dims, {});
  return `${measuring.category} ${whole ?? Object.values(dims).join('x')}`;
}

function answerOf({ candidate, likelihood }: Weighed, size: string) {
  return {
    size,
    designation: candidate.designations[0] ?? null,
    designations: [...candidate.designations],
    dims: candidate.dims,
    attrs: candidate.attrs ?? {},
    likelihood: rounded(likelihood),
  };
}

const limitsMeasured = (
  { candidate }: Weighed,
  observations: readonly Observation[],
  { attrs = {} }: MeasureRequest,
) =>
  Object.fromEntries(
    observations.map(({ measurable: { key } }) => [
      key,
      limitsOf(candidate, key, attrs).map(({ min, max }) => ({ min: tenth(min), max: tenth(max) })),
    ]),
  );

/** Millimetres to the tenth of a micrometre. */
const tenth = (um: number) => Math.round(um * 10) / 1e4;

const takenAs = ({ measurable, read, instrument }: Observation): TakenAs => ({
  dimension: measurable.key,
  value: tenth(read.value),
  uncertainty: tenth(read.uncertainty),
  instrument,
});

function inMillimetres(observations: readonly Observation[]): ReadonlyMap<string, Uncertain> {
  return new Map(
    observations
      .filter(each => each.instrument !== 'pin')
      .map(({ measurable, read }) => [
        measurable.key,
        { value: toMm(read.value), uncertainty: toMm(read.uncertainty) },
      ]),
  );
}
