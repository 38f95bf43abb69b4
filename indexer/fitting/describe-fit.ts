import { measuring as bearings } from '../categories/bearing/measuring.ts';
import type { Candidate } from '../categories/measurable.ts';
import { axialPlay, playGroups, radialPlay, usualGroup } from '../standards/iso-5753.ts';
import { inchName } from '../units/inch-name.ts';
import type { Um } from '../units/length.ts';
import type { FitCandidate } from './answer.ts';
import { classOf } from './class-of.ts';
import { chanceLarger, type FitOf, fitBetween, tenth } from './clearance.ts';
import { limits } from './limits.ts';
import { playAfter } from './play.ts';
import type { Seats } from './seat.ts';
import { shimsFor } from './shims.ts';
import { howItGoes } from './words.ts';

/**
 * How one bearing sits on the seats that were measured.
 *
 * @param likelihood beside the best candidate's, 0 to 1
 * @param group of play printed on the bearing; undefined for the usual one of its size
 */
export function describeFit(
  candidate: Candidate,
  likelihood: number,
  seats: Seats,
  group: string | undefined,
): FitCandidate {
  const { shaft, housing, width } = seats;
  const [bore, od, across] = [limits(candidate, 'bore'), limits(candidate, 'od'), limits(candidate, 'width')];
  const onShaft = shaft ? fitBetween(bore, shaft, chanceLarger(bore, shaft)) : null;
  const inHousing = housing ? fitBetween(housing, od, 1 - chanceLarger(od, housing)) : null;
  const gap = width ? { min: width.min - across.max, max: width.max - across.min } : null;
  const shaftClass = shaft ? classOf('shaft', shaft, bore.max) : { best: null, also: [] };
  const housingClass = housing ? classOf('housing', housing, od.max) : { best: null, also: [] };
  const reasons = [
    ...howItGoes({ onShaft, inHousing, gap, shaft, housing, bore: bore.max, od: od.max }),
    ...inchWords(bore.max),
    ...groupWords(group, bore.max),
  ];
  return {
    size: `bearing ${bearings.write(candidate.dims, {})}`,
    designations: [...candidate.designations],
    dims: candidate.dims,
    likelihood: Math.round(likelihood * 1e4) / 1e4,
    shaftClass: shaftClass.best,
    shaftCouldBe: shaftClass.also,
    housingClass: housingClass.best,
    housingCouldBe: housingClass.also,
    onShaft,
    inHousing,
    widthGap: gap && { min: tenth(gap.min), max: tenth(gap.max) },
    shims: gap ? shimsFor({ bore: bore.max, od: od.max }, gap) : [],
    play: playOf(bore.max, group, onShaft, inHousing),
    reasons,
  };
}

function playOf(bore: Um, asked: string | undefined, onShaft: FitOf | null, inHousing: FitOf | null) {
  const group = asked ?? usualGroup(bore);
  const inside = radialPlay(group, bore);
  if (!inside) return null;
  const press = (of: FitOf | null) => ({
    min: 1000 * (of?.interferenceMin ?? 0),
    max: 1000 * (of?.interferenceMax ?? 0),
  });
  const left = playAfter(inside, press(onShaft), press(inHousing));
  const axial = axialPlay({ min: Math.max(0, left.min), max: Math.max(0, left.max) });
  return {
    group,
    min: tenth(left.min),
    max: tenth(left.max),
    state: left.state,
    axial: { min: tenth(axial.min), max: tenth(axial.max) },
  };
}

/** Miniature groups end below 10 mm of bore, where the ordinary ones alone go on. */
function groupWords(group: string | undefined, bore: Um): string[] {
  if (group === undefined || radialPlay(group, bore) !== null) return [];
  const held = playGroups.filter(each => radialPlay(each, bore) !== null);
  return [`${group} is no group of play of this bore: it has ${held.join(', ') || 'none known here'}.`];
}

function inchWords(bore: Um): string[] {
  const name = inchName(bore);
  return name === null ? [] : [`An inch bearing: bore ${name} in.`];
}
