import type { Duty } from '../duty.ts';
import type { Instrument } from '../measuring/instruments.ts';
import type { KnownSize } from '../measuring/request.ts';
import type { Dims } from '../reading/reading.ts';
import type { Play } from '../standards/iso-5753.ts';
import type { FitOf } from './clearance.ts';
import type { Seat } from './seat.ts';
import type { ShimAnswer } from './shims.ts';

/** What was measured of the place that a bearing is wanted for. */
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
