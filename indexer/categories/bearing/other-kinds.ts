import { linearBearings } from '../../standards/linear-bearings.ts';
import { needleBearings } from '../../standards/needle-bearings.ts';
import { thrustBearings } from '../../standards/thrust-bearings.ts';
import { toMm, type Um } from '../../units/length.ts';
import { about, type Candidate } from '../measurable.ts';

interface Outline {
  readonly designation: string;
  readonly bore: Um;
  readonly od: Um;
  readonly width: Um;
}

/** By how much each dimension may lie under and over its nominal, in micrometres. */
type Room = Readonly<Record<'bore' | 'od' | 'width', readonly [under: Um, over: Um]>>;

const kind =
  (type: string, room: Room, source: string) =>
  ({ designation, bore, od, width }: Outline): Candidate => ({
    dims: { bore: toMm(bore), od: toMm(od), width: toMm(width) },
    attrs: { type },
    designations: [designation],
    common: 0.5,
    made: {
      bore: about(bore, ...room.bore, source),
      od: about(od, ...room.od, source),
      width: about(width, ...room.width, source),
    },
  });

/**
 * Needle, thrust and linear bearings. A drawn cup is round only in its seat, so it measures some hundredths either way while loose;
 * the housing washer of a thrust bearing has the wider bore and is not what is measured (makers' catalogues, from memory).
 */
export const otherKinds: readonly Candidate[] = [
  ...needleBearings
    .filter(each => each.kind === 'needle')
    .map(
      kind('needle', { bore: [0, 40], od: [20, 40], width: [300, 0] }, 'ISO 3245, out of round while loose'),
    ),
  ...thrustBearings
    .map(({ designation, bore, od, height }) => ({ designation, bore, od, width: height }))
    .map(kind('thrust', { bore: [10, 20], od: [30, 0], width: [100, 50] }, 'ISO 199')),
  ...linearBearings
    .map(({ designation, bore, od, length }) => ({ designation, bore, od, width: length }))
    .map(kind('linear', { bore: [10, 10], od: [19, 0], width: [300, 0] }, 'makers’ catalogues')),
];
