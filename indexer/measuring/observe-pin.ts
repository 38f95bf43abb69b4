import type { Measurable } from '../categories/measurable.ts';
import { writeMillimetres } from '../units/length.ts';
import { chanceAbove, uncertaintyOf } from '../units/uncertain.ts';
import { readingsOf, statedDeviation } from './numbers.ts';
import { type Observation, pinSlips } from './observation.ts';
import { BadMeasurement, type Measurement } from './request.ts';

/** A drill shank or dowel pin is at its nominal or up to 0.02 mm under it; a thumb pushes a pin 0.004 mm too thick (common practice). */
const shankUnder = 14;

/** A slip with a pin is the next drill taken for this one, or a burr: off by some hundredths, never by millimetres. */
const slipDeviation = 80;

/** What a pin says that went in or did not. */
export function observePin(measurement: Measurement, measurable: Measurable, place: string): Observation {
  if (!measurable.ways.includes('pin'))
    throw new BadMeasurement(
      `${place}.instrument`,
      `A pin does not measure the ${measurable.label}.`,
      `Use ${measurable.ways.join(' or ') || 'a count'}.`,
    );
  const [value] = readingsOf(measurement, measurable, place);
  const { goes } = measurement;
  if (goes === undefined)
    throw new BadMeasurement(
      `${place}.goes`,
      'A pin says whether it goes in.',
      'Give "goes": true or false.',
    );
  const stated = statedDeviation(measurement, place);
  const pin = value! * 1000 - (stated === null ? shankUnder : 4);
  const deviation = stated === null ? 6 : Math.max(2, stated);
  return {
    measurable,
    instrument: 'pin',
    read: { value: value! * 1000, uncertainty: uncertaintyOf(deviation) },
    likelihood: (made, wear) => {
      const done = (within: number) => {
        const enters = chanceAbove(made.min + wear, made.max + wear, pin, within);
        return goes ? enters : 1 - enters;
      };
      return (1 - pinSlips) * done(deviation) + pinSlips * done(slipDeviation);
    },
    anywhere: 0.5,
    goes,
    outside: made => {
      const wrong = goes ? Math.min(0, made.max - pin) : Math.max(0, made.min - pin);
      return Math.abs(wrong) > 2 * deviation ? -wrong : 0;
    },
    says: `a ${writeMillimetres(value!)} pin ${goes ? 'goes in' : 'does not go in'}`,
  };
}
