import type { Measurable } from '../categories/measurable.ts';
import type { Limits } from '../standards/iso-965.ts';
import { inch, toMm, writeMillimetres } from '../units/length.ts';
import { deviationOf, uncertaintyOf } from '../units/uncertain.ts';
import { readingDensity } from './density.ts';
import {
  crestUncertainty,
  deviationOfMean,
  gaugeUncertainty,
  type Instrument,
  instruments,
  jawBiases,
  labelOf,
} from './instruments.ts';
import { readingsOf, statedDeviation } from './numbers.ts';
import { type Observation, slips } from './observation.ts';
import { observePin } from './observe-pin.ts';
import { BadMeasurement, type Measurement } from './request.ts';

/** A slip is some times wider than the instrument, and not under some hundredths of a millimetre. */
const slipDeviation = (deviation: number) => Math.max(4 * deviation, Math.min(40, 20 * deviation));

/**
 * Turns a measurement into what it says.
 *
 * @throws BadMeasurement when it lacks a number, or has one that cannot be.
 */
export function observe(measurement: Measurement, measurable: Measurable, place: string): Observation {
  const { instrument = null } = measurement;
  if (instrument !== null && !instruments.includes(instrument))
    throw new BadMeasurement(
      `${place}.instrument`,
      `"${instrument}" is no instrument known here.`,
      `Name one of ${instruments.join(', ')}, or leave it out and state the uncertainty.`,
    );
  if (instrument === 'pin' || measurement.goes !== undefined)
    return observePin(measurement, measurable, place);
  if (instrument === 'thread-gauge' && measurable.key !== 'pitch')
    throw new BadMeasurement(
      `${place}.instrument`,
      `A thread gauge does not measure the ${measurable.label}.`,
      `Use ${measurable.ways.join(' or ')}.`,
    );
  const taken = take(measurement, measurable, place);
  const biased = taken.instrument === 'calliper-inside' && measurable.soft !== true;
  const land = measurement.land === undefined ? null : measurement.land * 1000;
  const { value, deviation } = taken;
  const wide = slipDeviation(deviation);
  const core = (made: Limits, wear: number) => {
    if (!biased) return readingDensity(value, made, wear, deviation);
    const biases = jawBiases((made.min + made.max) / 2, land);
    const sum = biases.reduce((all, bias) => all + readingDensity(value + bias, made, wear, deviation), 0);
    return sum / biases.length;
  };
  return {
    measurable,
    instrument: taken.instrument,
    read: { value, uncertainty: uncertaintyOf(deviation) },
    likelihood: (made, wear) =>
      (1 - slips) * core(made, wear) + slips * readingDensity(value, made, wear, wide),
    anywhere: anywhereOf(measurable, value),
    goes: null,
    outside: made => (value < made.min ? value - made.min : value > made.max ? value - made.max : 0),
    says: taken.says,
  };
}

/** Density of a reading for a part of no table: in proportion alike over the range of the dimension. */
function anywhereOf({ range: [least, most] }: Measurable, value: number): number {
  return 1 / (Math.max(value, least / 4) * Math.log(most / least));
}

interface Taken {
  value: number;
  deviation: number;
  instrument: Instrument | null;
  says: string;
}

function take(measurement: Measurement, measurable: Measurable, place: string): Taken {
  const { span, pitches, threadsPerInch } = measurement;
  if (span !== undefined || pitches !== undefined || threadsPerInch !== undefined) {
    if (measurable.key !== 'pitch')
      throw new BadMeasurement(place, 'Only a pitch is counted over a length.', 'Give "value" instead.');
    return threadsPerInch === undefined
      ? counted(measurement, place)
      : threads(measurement, threadsPerInch, place);
  }
  const values = readingsOf(measurement, measurable, place);
  const flattened = measurable.flattens === true;
  const value = 1000 * (flattened ? Math.max(...values) : meanOf(values));
  const instrument = measurement.instrument ?? measurable.ways[0] ?? null;
  const own = ownDeviation(measurable, instrument, value, flattened ? 1 : values.length);
  const stated = statedDeviation(measurement, place);
  const round = flattened ? 0 : deviationAmong(values) / Math.sqrt(values.length);
  return {
    value,
    deviation: Math.max(stated ?? own, round, 0.5),
    instrument,
    says: `${writeMillimetres(toMm(value))} by ${instrument === null ? 'count' : labelOf(instrument)}`,
  };
}

function ownDeviation(
  measurable: Measurable,
  instrument: Instrument | null,
  value: number,
  count: number,
): number {
  if (instrument === null) return deviationOf(250);
  if (instrument === 'thread-gauge') return deviationOf(gaugeUncertainty(value));
  const own = deviationOfMean(instrument, count);
  return measurable.soft ? Math.max(own, deviationOf(100) / Math.sqrt(count)) : own;
}

const meanOf = (values: readonly number[]) => values.reduce((sum, each) => sum + each, 0) / values.length;

/** Spread of repeated readings, in micrometres. */
function deviationAmong(values: readonly number[]): number {
  if (values.length < 2) return 0;
  const mean = meanOf(values);
  return 1000 * Math.sqrt(values.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (values.length - 1));
}

function counted(measurement: Measurement, place: string): Taken {
  const { span, pitches } = measurement;
  if (!(span! > 0) || !(pitches! >= 1) || !Number.isInteger(pitches))
    throw new BadMeasurement(
      place,
      'A counted pitch needs the length over a whole number of pitches.',
      'Lay the calliper over the crests and give "span", and "pitches": the crests less one.',
    );
  const over = statedDeviation(measurement, place) ?? deviationOf(crestUncertainty);
  return {
    value: (span! * 1000) / pitches!,
    deviation: Math.max(over, 1) / pitches!,
    instrument: measurement.instrument ?? 'calliper-outside',
    says: `${pitches} pitches over ${writeMillimetres(span!)}`,
  };
}

function threads(measurement: Measurement, perInch: number, place: string): Taken {
  if (!(perInch >= 1) || perInch > 200)
    throw new BadMeasurement(
      `${place}.threadsPerInch`,
      'That is no number of threads an inch.',
      'Count again.',
    );
  const value = inch(1 / perInch);
  const stated = statedDeviation(measurement, place);
  return {
    value,
    deviation: stated ?? deviationOf(gaugeUncertainty(value)),
    instrument: measurement.instrument ?? 'thread-gauge',
    says: `${perInch} threads an inch`,
  };
}
