import { deviationOfMean, type Instrument, instruments, jawBiases } from '../measuring/instruments.ts';
import { BadMeasurement } from '../measuring/request.ts';
import { deviations } from '../standards/iso-286.ts';
import { mm, type Um } from '../units/length.ts';
import { deviationOf, uncertaintyOf } from '../units/uncertain.ts';

/** A shaft, housing or width as it was measured, in millimetres; or as a drawing gives it, by nominal and tolerance class. */
export interface Seat {
  readonly value?: number | undefined;
  readonly values?: readonly number[] | undefined;
  /** Half-width that holds 95 in 100; left out, the instrument's own. */
  readonly uncertainty?: number | undefined;
  readonly instrument?: Instrument | undefined;
  readonly land?: number | undefined;
  readonly nominal?: number | undefined;
  /** ISO 286, as `h6` or `H7`. */
  readonly class?: string | undefined;
}

/** What is believed of a seat, in micrometres: between these limits, and how. */
export interface Believed {
  readonly min: Um;
  readonly max: Um;
  readonly middle: Um;
  /** Standard deviation of a measured seat; null for one made to a class, alike likely all over its limits. */
  readonly deviation: number | null;
  readonly nominal: Um | null;
  /** The class that the drawing gives; null of a measured seat. */
  readonly toleranceClass: string | null;
  readonly instrument: Instrument | null;
}

/**
 * What a seat's measurement says of it. Inside jaws read under a bore: their bias is taken off, and widens the doubt.
 *
 * @throws BadMeasurement when neither a measurement nor a class is there, or one that cannot be.
 */
export function believe(seat: Seat, place: string, usual: Instrument): Believed {
  if (seat.class !== undefined) return byClass(seat, place);
  const values = seat.values ?? (seat.value === undefined ? [] : [seat.value]);
  if (values.length === 0 || !values.every(each => Number.isFinite(each) && each > 0 && each < 1000))
    throw new BadMeasurement(
      place,
      'There is no measurement above nought.',
      'Give "value" or "values" in mm, or "nominal" and "class".',
    );
  const instrument = seat.instrument ?? usual;
  if (!instruments.includes(instrument) || instrument === 'pin' || instrument === 'thread-gauge')
    throw new BadMeasurement(
      `${place}.instrument`,
      `"${instrument}" does not measure a seat.`,
      'Name a calliper, a micrometer or a rule, or state the uncertainty.',
    );
  const value = (1000 * values.reduce((sum, each) => sum + each, 0)) / values.length;
  const stated = seat.uncertainty === undefined ? null : doubtOf(seat.uncertainty, place);
  const own = stated ?? uncertaintyOf(deviationOfMean(instrument, values.length));
  if (instrument !== 'calliper-inside' || (stated !== null && seat.instrument === undefined))
    return measured(value, own, instrument);
  const biases = jawBiases(value, seat.land === undefined ? null : mm(seat.land));
  const [most, mean] = [Math.max(...biases), biases.reduce((sum, each) => sum + each, 0) / biases.length];
  return measured(value + mean, Math.hypot(own, Math.max(most - mean, mean)), instrument);
}

const measured = (value: number, uncertainty: number, instrument: Instrument): Believed => ({
  min: value - uncertainty,
  max: value + uncertainty,
  middle: value,
  deviation: deviationOf(uncertainty),
  nominal: null,
  toleranceClass: null,
  instrument,
});

function doubtOf(uncertainty: number, place: string): number {
  if (uncertainty >= 0 && uncertainty < 10) return uncertainty * 1000;
  throw new BadMeasurement(
    `${place}.uncertainty`,
    'That is no uncertainty.',
    'Give the half-width in mm that holds 95 in 100 readings.',
  );
}

function byClass({ nominal, class: toleranceClass }: Seat, place: string): Believed {
  const at = nominal === undefined ? null : mm(nominal);
  const found = at === null ? null : deviations(toleranceClass!, at);
  if (at === null || found === null)
    throw new BadMeasurement(
      `${place}.class`,
      `ISO 286 has no limits here for ${toleranceClass} of ${nominal ?? 'no nominal'}.`,
      'Give "nominal" up to 120 mm and a class such as h6 or H7.',
    );
  const [min, max] = [at + found.lower, at + found.upper];
  return {
    min,
    max,
    middle: (min + max) / 2,
    deviation: null,
    nominal: at,
    toleranceClass: toleranceClass!,
    instrument: null,
  };
}

/** The seats of one place for a bearing; undefined where nothing was measured. */
export interface Seats {
  readonly shaft: Believed | undefined;
  readonly housing: Believed | undefined;
  readonly width: Believed | undefined;
}
