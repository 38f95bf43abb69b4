import type { Candidate, Measuring } from '../categories/measurable.ts';
import type { Attrs } from '../reading/reading.ts';
import { toMm, writeMillimetres } from '../units/length.ts';
import { limitsOf } from './limits.ts';
import type { Observation } from './observation.ts';

const written = (um: number) => writeMillimetres(toMm(um));

/** What each measurement says of a candidate: within its limits, or by how much outside, and whose limits they are. */
export function reasonsFor(
  candidate: Candidate,
  observations: readonly Observation[],
  attrs: Attrs,
): string[] {
  return observations.map(observation => {
    const { label, key } = observation.measurable;
    const said = `${label} ${observation.says}`;
    const all = limitsOf(candidate, key, attrs);
    if (all.length === 0) return `${said}: no limits known of this size`;
    const made = all.reduce((a, b) =>
      Math.abs(observation.outside(b)) < Math.abs(observation.outside(a)) ? b : a,
    );
    const limits =
      made.max - made.min < 10 && key === 'pitch'
        ? `pitch ${written(Math.round((made.min + made.max) / 2))}`
        : `limits ${written(made.min)} to ${written(made.max)} (${made.source})`;
    const off = observation.outside(made);
    if (off === 0) return `${said}: agrees with ${limits}`;
    if (Math.abs(off) <= observation.read.uncertainty && observation.instrument !== 'pin')
      return `${said}: agrees, within its doubt, with ${limits}`;
    if (observation.instrument === 'pin') return `${said}: speaks against ${limits}`;
    return `${said}: ${written(Math.abs(off))} ${off < 0 ? 'under' : 'over'} ${limits}`;
  });
}

/** What the measurements say of a candidate beside its size, in its category's own words. */
export function remarksOn(
  measuring: Measuring,
  candidate: Candidate,
  observations: readonly Observation[],
): string[] {
  const measured = new Map(observations.map(({ measurable, read }) => [measurable.key, read.value]));
  return measuring.remarks?.(candidate.dims, measured) ?? [];
}
