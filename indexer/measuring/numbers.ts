import type { Measurable } from '../categories/measurable.ts';
import { deviationOf } from '../units/uncertain.ts';
import { BadMeasurement, type Measurement } from './request.ts';

/** The standard deviation that a measurement states, in micrometres; null where it states none. */
export function statedDeviation({ uncertainty }: Measurement, place: string): number | null {
  if (uncertainty === undefined) return null;
  if (!(uncertainty >= 0) || !Number.isFinite(uncertainty))
    throw new BadMeasurement(`${place}.uncertainty`, 'An uncertainty is not below nought.', 'Give it in mm.');
  return deviationOf(uncertainty * 1000);
}

/** The numbers of a measurement, in millimetres. */
export function readingsOf(
  { value, values }: Measurement,
  measurable: Measurable,
  place: string,
): readonly number[] {
  const all = values ?? (value === undefined ? [] : [value]);
  if (all.length === 0)
    throw new BadMeasurement(
      place,
      `There is no number for the ${measurable.label}.`,
      'Give "value", "values", or for a pitch "pitches" and "span".',
    );
  if (!all.every(each => Number.isFinite(each) && each > 0))
    throw new BadMeasurement(place, `The ${measurable.label} is not above nought.`, 'Measure it again.');
  return all;
}
