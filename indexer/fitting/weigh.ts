import type { Candidate } from '../categories/measurable.ts';
import { readingDensity } from '../measuring/density.ts';
import type { Um } from '../units/length.ts';
import { limits } from './limits.ts';
import type { Believed, Seats } from './seat.ts';

/** Seats are made within these of their nominal, in micrometres, by the usual classes, and wear one way by a mean of some hundredths. */
const shaftMade = { under: 25, over: 25, wear: -12 };
const housingMade = { under: 30, over: 30, wear: 12 };
/** A place for a bearing is as wide as the narrowest of its size, or wider by what shims fill. */
const widthMade = { under: 120, over: 600 };
/**
 * Now and then it is wider by more, where an open bearing stands for a shielded one, half a millimetre to two wider (catalogues): seldom
 * enough that such a one is named only where none fills the place.
 */
const wideMade = { under: 120, over: 2500, share: 0.005 };

/** How well a bearing agrees with the seats that were measured: its share of all bearings, times how likely each seat is for it. */
export function weightOf(candidate: Candidate, { shaft, housing, width }: Seats): number {
  let weight = candidate.common;
  if (shaft) weight *= seatWeight(limits(candidate, 'bore').max, shaft, shaftMade);
  if (housing && weight > 0) weight *= seatWeight(limits(candidate, 'od').max, housing, housingMade);
  if (width && weight > 0) {
    const nominal = limits(candidate, 'width').max;
    weight *=
      (1 - wideMade.share) * seatWeight(nominal, width, { ...widthMade, wear: 0 }) +
      wideMade.share * seatWeight(nominal, width, { ...wideMade, wear: 0 });
  }
  return weight;
}

/** A seat of a class belongs to its nominal; a measured one to every size whose usual seats could have read so. */
function seatWeight(nominal: Um, seat: Believed, made: { under: Um; over: Um; wear: number }): number {
  if (seat.nominal !== null) return Math.abs(nominal - seat.nominal) <= 3 ? 1 : 0;
  const range = { min: nominal - made.under, max: nominal + made.over };
  return readingDensity(seat.middle, range, made.wear, Math.max(1, seat.deviation ?? 1));
}
