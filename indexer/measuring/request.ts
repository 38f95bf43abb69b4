import type { Duty } from '../duty.ts';
import type { Attrs, CategoryName } from '../reading/reading.ts';
import type { Instrument } from './instruments.ts';

/** One dimension as it was taken from the part; lengths in millimetres. One of `value`, `values`, `span`, `threadsPerInch`. */
export interface Measurement {
  /** As the category names it: `bore`, `major`, `headDiameter`. */
  readonly dimension: string;
  readonly value?: number | undefined;
  /** Several readings of the same place, or all round it. */
  readonly values?: readonly number[] | undefined;
  readonly instrument?: Instrument | undefined;
  /** Half-width that holds 95 in 100; left out, the instrument's own. */
  readonly uncertainty?: number | undefined;
  /** Width of the flat on the inside jaws, where it is known. */
  readonly land?: number | undefined;
  /** Pitches counted (crests less one) and the length over them. */
  readonly pitches?: number | undefined;
  readonly span?: number | undefined;
  readonly threadsPerInch?: number | undefined;
  /** Of a pin or drill shank of `value`: whether it goes in. */
  readonly goes?: boolean | undefined;
}

/** A size the workshop has, and how often it met it. */
export interface KnownSize {
  readonly size: string;
  readonly count: number;
}

export interface MeasureRequest {
  readonly category: CategoryName;
  /** What is seen on the part: `head`, `type`, `material`, `seal`. */
  readonly attrs?: Attrs | undefined;
  readonly measurements: readonly Measurement[];
  readonly known?: readonly KnownSize[] | undefined;
  /** How much use is to be expected on it; `used` where nothing is said. */
  readonly condition?: 'new' | 'used' | 'worn' | undefined;
  /** Plated, as bright zinc: a thread stands 0.01 to 0.03 mm thicker. */
  readonly plated?: boolean | undefined;
  readonly duty?: Duty | undefined;
}

/** A request that cannot be answered as it stands, with its place and remedy. */
export class BadMeasurement extends Error {
  override readonly name = 'BadMeasurement';
  readonly place: string;
  readonly remedy: string;

  constructor(place: string, message: string, remedy: string) {
    super(message);
    this.place = place;
    this.remedy = remedy;
  }
}
