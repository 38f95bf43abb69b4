import type { Limits } from '../standards/iso-965.ts';
import type { Um } from '../units/length.ts';
import { chanceAbove } from '../units/uncertain.ts';
import type { Believed } from './seat.ts';

/** How a hole and a shaft go together, in millimetres. Clearance and interference are both positive amounts. */
export interface FitOf {
  /** In the words of ISO 286: always loose, always tight, or either. */
  kind: 'clearance' | 'transition' | 'interference';
  clearanceMin: number;
  clearanceMax: number;
  interferenceMin: number;
  interferenceMax: number;
  /** The chance that there is clearance. */
  clearanceProbability: number;
}

/** Micrometres to millimetres, to the tenth of a micrometre: js classes have halves. */
export const tenth = (um: Um): number => Math.round(um * 10) / 1e4;

const positive = (um: Um) => tenth(Math.max(0, um));

/** The fit of a hole and a shaft from the least and greatest of both, in micrometres. */
export function fitBetween(hole: Limits, shaft: Limits, clearanceProbability: number): FitOf {
  const [loosest, tightest] = [hole.max - shaft.min, hole.min - shaft.max];
  return {
    kind: tightest >= 0 ? 'clearance' : loosest <= 0 ? 'interference' : 'transition',
    clearanceMin: positive(tightest),
    clearanceMax: positive(loosest),
    interferenceMin: positive(-loosest),
    interferenceMax: positive(-tightest),
    clearanceProbability: Math.round(clearanceProbability * 1000) / 1000,
  };
}

/** Steps over the limits of a seat made to a class. */
const steps = 64;

/** Chance that a ring made evenly between its limits is larger than the seat. */
export function chanceLarger(ring: Limits, seat: Believed): number {
  if (seat.deviation !== null) return chanceAbove(ring.min, ring.max, seat.middle, seat.deviation);
  let sum = 0;
  for (let at = 0; at < steps; at++)
    sum += chanceAbove(ring.min, ring.max, seat.min + ((at + 0.5) / steps) * (seat.max - seat.min), 0);
  return sum / steps;
}
