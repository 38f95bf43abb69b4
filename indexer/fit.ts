import { measuring as bearings } from './categories/bearing/measuring.ts';
import type { FitAnswer, FitRequest, SeatTaken } from './fitting/answer.ts';
import { cautionsOf } from './fitting/cautions.ts';
import { tenth } from './fitting/clearance.ts';
import { describeFit } from './fitting/describe-fit.ts';
import { type Believed, believe } from './fitting/seat.ts';
import { weightOf } from './fitting/weigh.ts';
import { withKnown } from './measuring/known.ts';
import { BadMeasurement } from './measuring/request.ts';
import { playGroups, radialPlay } from './standards/iso-5753.ts';
import { mm } from './units/length.ts';

/** Less likely than this part of the best is no answer. */
const worthNaming = 0.002;

/**
 * Which ball bearings of ISO 15 and of the inch series, and which of the workshop's own, sit on a shaft, in a housing, in a width:
 * with clearance or interference as interval and probability (bearing of the normal class of ISO 492), the play that is left, the
 * width gap and the shims that fill it. Agreement is a suggestion.
 *
 * @throws BadMeasurement naming the seat and the remedy.
 */
export function fit(request: FitRequest): FitAnswer {
  const shaft = request.shaft && believe(request.shaft, 'shaft', 'calliper-outside');
  const housing = request.housing && believe(request.housing, 'housing', 'calliper-inside');
  const width = request.width && believe(request.width, 'width', 'calliper-depth');
  if (!shaft && !housing)
    throw new BadMeasurement(
      'shaft',
      'Neither a shaft nor a housing was measured.',
      'Give "shaft", "housing" or both, each with a "value" in mm.',
    );
  refuseUnknownGroup(request.clearance);
  const seats = { shaft, housing, width };
  const { candidates } = withKnown(bearings, bearings.candidates(new Set()), request.known ?? []);
  const weighed = candidates
    // A needle, thrust or linear bearing sits otherwise.
    .filter(candidate => candidate.attrs?.type === undefined)
    .map(candidate => ({ candidate, weight: weightOf(candidate, seats) }))
    .filter(each => each.weight > 0);
  const best = Math.max(0, ...weighed.map(each => each.weight));
  const likely = weighed
    .filter(each => each.weight >= worthNaming * best)
    .sort((a, b) => b.weight - a.weight);
  const answers = likely.map(({ candidate, weight }) =>
    describeFit(candidate, weight / best, seats, request.clearance),
  );
  return {
    candidates: answers,
    taken: [
      ...(shaft ? [takenAs('shaft', shaft)] : []),
      ...(housing ? [takenAs('housing', housing)] : []),
      ...(width ? [takenAs('width', width)] : []),
    ],
    cautions: cautionsOf(answers, request, [shaft, housing]),
  };
}

const takenAs = (seat: SeatTaken['seat'], { middle, min, max, instrument }: Believed): SeatTaken => ({
  seat,
  value: tenth(middle),
  uncertainty: tenth((max - min) / 2),
  instrument,
});

/** A group of play that no bearing of any bore has. */
function refuseUnknownGroup(group: string | undefined): void {
  if (group === undefined || radialPlay(group, mm(5)) !== null) return;
  throw new BadMeasurement(
    'clearance',
    `"${group}" is no group of play.`,
    `Name one of ${playGroups.join(', ')}, or leave it out: C3 and MC3 are not the same.`,
  );
}
