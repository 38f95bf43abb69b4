import type { Attrs, Dims } from '../../reading/reading.ts';
import { type InchPin, inchPins } from '../../standards/inch-pins.ts';
import { deviations } from '../../standards/iso-286.ts';
import { lengthLimits } from '../../standards/iso-4759.ts';
import { lengthsOf, type Pin, pins } from '../../standards/pins.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import { about, type Candidate, keep, type Made, type Measurable, type Measuring } from '../measurable.ts';
import { plainSize } from '../size-text.ts';

/** Thicker pins are in no small mechanism. */
const greatest: Um = mm(30);

/** A dowel is measured out of its hole; a spring pin free, so larger than its nominal; a taper pin at its small end. */
const measurable: readonly Measurable[] = [
  {
    key: 'dia',
    label: 'diameter',
    ways: ['calliper-outside', 'micrometer'],
    wear: { grows: false, mean: 3 },
    range: [mm(0.4), greatest],
  },
  {
    key: 'length',
    label: 'length',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 10 },
    range: [mm(1), mm(250)],
  },
];

/** Plain pins are made h8 as well as m6 (ISO 2338). */
function diameters(pin: Pin): readonly Made[] {
  const tight: Made = { min: pin.min, max: pin.max, source: pin.standard };
  if (pin.standard !== 'ISO 2338') return [tight];
  const loose = deviations('h8', pin.diameter);
  return loose ? [tight, about(pin.diameter, -loose.lower, 0, 'ISO 2338 h8')] : [tight];
}

/** Lengths of pins lie within 0.25 mm up to 10, 0.5 up to 50, 0.75 above (ISO 2338, from memory). */
function lengthOf(nominal: Um): Made {
  const room = nominal <= mm(10) ? 250 : nominal <= mm(50) ? 500 : 750;
  return about(nominal, room, room, 'ISO 2338');
}

const alone = (pin: Pin): Candidate => ({
  dims: { dia: toMm(pin.diameter) },
  attrs: { type: pin.type },
  designations: [`${pin.standard} ${toMm(pin.diameter)}`],
  common: pin.type === 'dowel' ? 1 : 0.6,
  made: { dia: diameters(pin) },
});

const withLength = (pin: Candidate, length: Um): Candidate => ({
  ...pin,
  dims: { ...pin.dims, length: toMm(length) },
  designations: pin.designations.map(name => `${name}x${toMm(length)}`),
  made: { ...pin.made, length: lengthOf(length) },
});

/** Inch dowels and spring pins, each with its fraction of an inch. */
const ofInch = ({ type, size, diameter, min, max }: InchPin): Candidate => ({
  dims: { dia: toMm(diameter) },
  attrs: { type },
  designations: [`ASME B18.8.2 ${size}`],
  common: 0.4,
  made: { dia: { min, max, source: 'ASME B18.8.2' } },
});

const lists = keep((lengthMeasured: boolean): readonly Candidate[] =>
  [
    ...pins
      .filter(pin => pin.diameter <= greatest)
      .map(pin => ({ pin: alone(pin), lengths: lengthsOf(pin) })),
    ...inchPins.map(pin => ({ pin: ofInch(pin), lengths: pin.lengths })),
  ].flatMap(({ pin, lengths }) => (lengthMeasured ? lengths.map(length => withLength(pin, length)) : [pin])),
);

const general: Attrs = { type: 'dowel' };

/** Pins whose type a workshop's size does not say: limits h8 to m6 about the nominal. */
export const measuring: Measuring = {
  category: 'pin',
  measurable,
  candidates: measured => lists(measured.has('length')),
  known: (dims: Dims) => {
    const { dia, length } = dims;
    if (typeof dia !== 'number' || typeof length !== 'number') return null;
    const nominal = mm(dia);
    const [loose, tight] = [deviations('h8', nominal), deviations('m6', nominal)];
    return {
      dims: { dia, length },
      attrs: general,
      designations: [],
      common: 1,
      made: {
        dia: about(nominal, -(loose?.lower ?? -39), tight?.upper ?? 25, 'h8 to m6'),
        length: lengthLimits(mm(length)) ? lengthOf(mm(length)) : about(mm(length), 750, 750, 'ISO 2338'),
      },
    };
  },
  ...plainSize('dia', 'length'),
};
