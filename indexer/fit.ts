import { measuring as bearings } from './categories/bearing/measuring.ts';
import type { Candidate, Made } from './categories/measurable.ts';
import type { Duty } from './duty.ts';
import { classOf } from './fitting/class-of.ts';
import { chanceLarger, type FitOf, fitBetween, tenth } from './fitting/clearance.ts';
import { playAfter } from './fitting/play.ts';
import { type Believed, believe, type Seat } from './fitting/seat.ts';
import { type ShimAnswer, shimsFor } from './fitting/shims.ts';
import { howItGoes } from './fitting/words.ts';
import { standingCautions } from './measuring/cautions.ts';
import { readingDensity } from './measuring/density.ts';
import type { Instrument } from './measuring/instruments.ts';
import { withKnown } from './measuring/known.ts';
import { BadMeasurement, type KnownSize } from './measuring/request.ts';
import type { Dims } from './reading/reading.ts';
import { axialPlay, type Play, playGroups, radialPlay, usualGroup } from './standards/iso-5753.ts';
import { inchName, inchShaft } from './units/inch-name.ts';
import { mm, type Um, writeMillimetres } from './units/length.ts';

export type { Seat } from './fitting/seat.ts';

export interface FitRequest {
  /** The shaft's diameter at the seat. */
  readonly shaft?: Seat | undefined;
  /** The housing's bore at the seat. */
  readonly housing?: Seat | undefined;
  /** The room for the bearing between shoulder and cover. */
  readonly width?: Seat | undefined;
  /** The group of play printed on the bearing, as C3 or MC5; left out, the usual one of its size. */
  readonly clearance?: string | undefined;
  readonly known?: readonly KnownSize[] | undefined;
  readonly duty?: Duty | undefined;
}

/** How one bearing sits, in millimetres. A part that nothing was measured for is null. */
export interface FitCandidate {
  size: string;
  designations: string[];
  dims: Dims;
  /** How well the seats agree with it, beside the best candidate. */
  likelihood: number;
  /** ISO 286 class of the shaft as measured; null where it passes for none. */
  shaftClass: string | null;
  /** Other usual classes that the doubt of the measurement allows. */
  shaftCouldBe: string[];
  housingClass: string | null;
  housingCouldBe: string[];
  onShaft: FitOf | null;
  inHousing: FitOf | null;
  widthGap: { min: number; max: number } | null;
  shims: ShimAnswer[];
  /** Radial play inside after fitting, with the group it starts from; null where the group is not known for the bore. */
  play: (Play & { group: string; state: string; axial: Play }) | null;
  /** In words: how it goes together, what is worn, what is an inch size. */
  reasons: string[];
}

/** What was taken of a seat: millimetres, with the doubt that was stated or is the instrument's own, or half its tolerance. */
export interface SeatTaken {
  seat: 'shaft' | 'housing' | 'width';
  value: number;
  uncertainty: number;
  /** Null of a seat that is told by its class. */
  instrument: Instrument | null;
}

export interface FitAnswer {
  candidates: FitCandidate[];
  taken: SeatTaken[];
  cautions: string[];
}

/** Seats are made within these of their nominal, in micrometres, by the classes above, and wear one way by a mean of some hundredths. */
const shaftMade = { under: 25, over: 25, wear: -12 };
const housingMade = { under: 30, over: 30, wear: 12 };
/** A place for a bearing is as wide as the narrowest of its size, or wider by what shims fill. */
const widthMade = { under: 120, over: 600 };
/**
 * Now and then it is wider by more, where an open bearing stands for a shielded one, half a millimetre to two wider (catalogues): seldom
 * enough that such a one is named only where none fills the place.
 */
const wideMade = { under: 120, over: 2500, share: 0.005 };

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
  const { candidates } = withKnown(bearings, bearings.candidates(new Set()), request.known ?? []);
  const weighed = candidates
    // A needle, thrust or linear bearing sits otherwise.
    .filter(candidate => candidate.attrs?.type === undefined)
    .map(candidate => ({ candidate, weight: weightOf(candidate, shaft, housing, width) }))
    .filter(each => each.weight > 0);
  const best = Math.max(0, ...weighed.map(each => each.weight));
  const likely = weighed
    .filter(each => each.weight >= worthNaming * best)
    .sort((a, b) => b.weight - a.weight);
  const answers = likely.map(({ candidate, weight }) =>
    answerFor(candidate, weight / best, { shaft, housing, width }, request.clearance),
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

const limits = (candidate: Candidate, key: 'bore' | 'od' | 'width') => candidate.made[key] as Made;

function weightOf(candidate: Candidate, shaft?: Believed, housing?: Believed, width?: Believed): number {
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

interface Seats {
  readonly shaft: Believed | undefined;
  readonly housing: Believed | undefined;
  readonly width: Believed | undefined;
}

function answerFor(
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

/** More likely tight than loose, and by more than a push. */
const isPress = ({ clearanceProbability, interferenceMax }: FitOf) =>
  clearanceProbability < 0.5 && interferenceMax > 0.005;

/** A doubt of a seat above this, in micrometres, is wider than the fits of small bearings. */
const coarse = 10;

function cautionsOf(
  answers: readonly FitCandidate[],
  request: FitRequest,
  seats: readonly (Believed | undefined)[],
): string[] {
  const cautions: string[] = [];
  const widest = Math.max(
    0,
    ...seats.map(seat => (seat && seat.deviation !== null ? (seat.max - seat.min) / 2 : 0)),
  );
  if (widest > coarse)
    cautions.push(
      `A doubt of ${writeMillimetres(Math.round(widest) / 1000)} mm is wider than a fit: a micrometer, or the bearing itself tried on, says more.`,
    );
  if (answers.length === 0)
    cautions.push(
      'No ball bearing known here sits on these seats: measure again, or take the seat for worn or for another part’s.',
    );
  const [shaft] = seats;
  const named = shaft && shaft.nominal === null ? inchShaft(shaft.middle, (shaft.max - shaft.min) / 2) : null;
  if (named !== null) cautions.push(`The shaft passes for an inch one, ${named} in.`);
  const inches = answers.filter(each => each.reasons.some(reason => reason.startsWith('An inch bearing')));
  if (inches.length > 0 && inches.length < answers.length)
    cautions.push(
      'Inch and metric sizes are among them: a bearing that needs force may be of the other system.',
    );
  if (answers.some(({ onShaft, inHousing }) => [onShaft, inHousing].some(of => of && isPress(of))))
    cautions.push(
      'A press can take all the play: turned by hand it must run free. Press on the fitted ring only, with eye protection.',
    );
  return [...cautions, ...standingCautions(request.duty)];
}
