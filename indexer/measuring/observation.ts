import type { Measurable } from '../categories/measurable.ts';
import type { Limits } from '../standards/iso-965.ts';
import { deviationOf, normalDensity, type Uncertain } from '../units/uncertain.ts';
import type { Instrument } from './instruments.ts';

/** What a measurement says of any limits the dimension could be made to. */
export interface Observation {
  readonly measurable: Measurable;
  readonly instrument: Instrument | null;
  /** The dimension in micrometres and its 95-in-100 half-width; of a pin, the pin. */
  readonly read: Uncertain;
  /** Density per micrometre of the reading, or the chance of what the pin did, for a part made to these limits. */
  likelihood(made: Limits, wear: number): number;
  /** The same for a part of no table: alike likely, in proportion, anywhere the dimension is met with. */
  readonly anywhere: number;
  /** Of a pin, whether it went in; null of a reading. */
  readonly goes: boolean | null;
  /** How far, in micrometres, the reading lies outside the limits; nought inside, negative below. */
  outside(made: Limits): number;
  /** The measurement in words. */
  readonly says: string;
}

/** This part of the readings are slips: misread, the wrong instrument named, a burr. */
export const slips = 0.007;

/** Density of two readings of one dimension of a part of no table: the second must agree with the first. */
export function anywhereTogether(observations: readonly Observation[]): number {
  let density = 1;
  const seen = new Map<string, Observation>();
  for (const each of observations) {
    if (each.goes !== null) continue;
    const earlier = seen.get(each.measurable.key);
    if (earlier) {
      const deviation = deviationOf(Math.hypot(each.read.uncertainty, earlier.read.uncertainty, 20));
      density *= normalDensity((each.read.value - earlier.read.value) / deviation) / deviation + 1e-9;
    } else density *= each.anywhere;
    seen.set(each.measurable.key, each);
  }
  const pinned = new Set(observations.filter(each => each.goes !== null).map(each => each.measurable));
  for (const measurable of pinned)
    density *= pinsAnywhere(
      measurable,
      observations.filter(each => each.measurable === measurable && each.goes !== null),
      seen.get(measurable.key)?.read.value ?? null,
    );
  return density;
}

/** Pins do otherwise than their size says less often than readings slip: they go in or do not. */
export const pinSlips = 0.001;

/** The chance that the pins of one dimension did what they did, for a part of no table: between the last in and the first refused. */
function pinsAnywhere({ range }: Measurable, pins: readonly Observation[], read: number | null): number {
  const sizes = (went: boolean) => pins.filter(each => each.goes === went).map(each => each.read.value);
  const [least, most] = [Math.max(range[0], ...sizes(true)), Math.min(range[1], ...sizes(false))];
  // What was read of the bore as well says whether the pins agree; jaws read up to a tenth under.
  if (read !== null) return least <= read + 100 && read <= most ? 1 : pinSlips;
  return Math.max(pinSlips ** 2, Math.log(Math.max(1, most / least)) / Math.log(range[1] / range[0]));
}
