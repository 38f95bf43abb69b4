import type { Candidate, Made, Measurable } from '../categories/measurable.ts';
import type { Attrs } from '../reading/reading.ts';
import type { Um } from '../units/length.ts';
import { type Instrument, jawBiases } from './instruments.ts';
import { limitsOf, wearOf } from './limits.ts';
import type { Observation } from './observation.ts';
import { observe } from './observe.ts';
import type { KnownSize, Measurement, MeasureRequest } from './request.ts';

/** What is to be told apart: a candidate, its share of the probability, and the name it is told by. */
export interface Possibility {
  readonly candidate: Candidate;
  readonly share: number;
  readonly name: string;
}

/** The doubt that is left, and what is known beside it. */
export interface Context {
  readonly possible: readonly Possibility[];
  readonly observations: readonly Observation[];
  readonly attrs: Attrs;
  readonly condition: MeasureRequest['condition'];
  readonly known: readonly KnownSize[];
}

/** Doubt in bits. */
export const entropy = (shares: readonly number[]) =>
  shares.reduce((sum, share) => (share > 0 ? sum - share * Math.log2(share) : sum), 0);

/** Forms of a part whose limits lie further apart than this many times the widest of them expect no one reading. */
const scattered = 2;

/**
 * Limits of a dimension that hold for a possibility, narrowed to what was read of it already. Null where no table has it, and where
 * the forms it may have lie so far apart that they expect nothing: a head's diameter before the head is seen.
 */
export function believed(
  { candidate }: Possibility,
  measurable: Measurable,
  { observations, attrs }: Context,
): Made | null {
  const all = limitsOf(candidate, measurable.key, attrs);
  if (all.length === 0 || all.some(each => each.general)) return null;
  let [min, max] = [Math.min(...all.map(each => each.min)), Math.max(...all.map(each => each.max))];
  if (max - min > scattered * Math.max(...all.map(each => each.max - each.min)) + 100) return null;
  for (const { measurable: read, read: taken, instrument } of observations) {
    if (read.key !== measurable.key || instrument === 'pin') continue;
    const [low, high] = [taken.value - 1.25 * taken.uncertainty, taken.value + 1.25 * taken.uncertainty];
    const nearest = Math.min(Math.max(taken.value, min), max);
    [min, max] = [Math.min(Math.max(min, low), nearest), Math.max(Math.min(max, high), nearest)];
  }
  return { min, max, source: all[0]!.source };
}

/** What an instrument would read of a possibility, in the middle; null where its limits are not known. */
export function expectedReading(
  possibility: Possibility,
  measurable: Measurable,
  instrument: Instrument,
  context: Context,
): Um | null {
  const made = believed(possibility, measurable, context);
  if (made === null) return null;
  const middle = (made.min + made.max) / 2;
  if (instrument !== 'calliper-inside' || measurable.soft) return middle;
  const biases = jawBiases(middle, null);
  return middle - biases.reduce((sum, bias) => sum + bias, 0) / biases.length;
}

/** Points of a possibility's readings: where in its limits the part lies, and the error in standard deviations, with weights. */
const places = [1 / 6, 1 / 2, 5 / 6];
const errors = [
  [-Math.sqrt(3), 1 / 6],
  [0, 2 / 3],
  [Math.sqrt(3), 1 / 6],
] as const;

/** The expected information, in bits, of a reading of this dimension: how much of the doubt it takes away. */
export function informationOf(
  measurable: Measurable,
  context: Context,
  instrument: Instrument,
  measurementOf: (value: Um) => Measurement,
): number {
  const limits = context.possible.map(each => believed(each, measurable, context));
  if (limits.some(each => each === null)) return 0;
  const all = limits as Made[];
  const wears = all.map(made => wearOf(measurable, made, context.condition));
  let information = 0;
  context.possible.forEach((possibility, own) => {
    const { min, max } = all[own]!;
    const middle = expectedReading(possibility, measurable, instrument, context)!;
    const deviation = observe(measurementOf(middle), measurable, '').read.uncertainty / 1.96;
    for (const place of places)
      for (const [error, weight] of errors) {
        const value = middle + (place - 0.5) * (max - min) + error * deviation;
        const reading = observe(measurementOf(Math.max(1, value)), measurable, '');
        const densities = all.map((made, at) => reading.likelihood(made, wears[at]!));
        const whole = densities.reduce((sum, each, at) => sum + each * context.possible[at]!.share, 0);
        if (densities[own]! > 0)
          information += (possibility.share * weight * Math.log2(densities[own]! / whole)) / places.length;
      }
  });
  return Math.max(0, information);
}

/** What one outcome adds: the sum over possibilities of p(outcome, possibility) log2 of p(possibility | outcome) over its share. */
export function gained(joint: readonly number[], possible: readonly Possibility[]): number {
  const whole = joint.reduce((sum, share) => sum + share, 0);
  if (whole <= 0) return 0;
  return joint.reduce(
    (sum, share, at) => (share > 0 ? sum + share * Math.log2(share / whole / possible[at]!.share) : sum),
    0,
  );
}
