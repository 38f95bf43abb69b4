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
  /** How far, in micrometres, the reading lies outside the limits; nought inside, negative below. */
  outside(made: Limits): number;
  /** The measurement in words. */
  readonly says: string;
}

/** This part of the readings are slips: misread, the wrong instrument named, a burr. */
export const slips = 0.01;

/** Density of two readings of one dimension of a part of no table: the second must agree with the first. */
export function anywhereTogether(observations: readonly Observation[]): number {
  let density = 1;
  const seen = new Map<string, Observation>();
  for (const each of observations) {
    const earlier = each.instrument === 'pin' ? undefined : seen.get(each.measurable.key);
    if (earlier) {
      const deviation = deviationOf(Math.hypot(each.read.uncertainty, earlier.read.uncertainty, 20));
      density *= normalDensity((each.read.value - earlier.read.value) / deviation) / deviation + 1e-9;
    } else density *= each.anywhere;
    if (each.instrument !== 'pin') seen.set(each.measurable.key, each);
  }
  return density;
}
