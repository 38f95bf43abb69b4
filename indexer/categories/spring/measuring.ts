import type { Attrs, Dims } from '../../reading/reading.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import type { Uncertain } from '../../units/uncertain.ts';
import { about, type Candidate, type Following, type Measurable, type Measuring } from '../measurable.ts';
import { plainSize } from '../size-text.ts';
import { deadCoils, rateRange, shearModulus, springRate } from './rate.ts';

/** A spring is never worn longer; plating makes its wire seem thicker, so measure where it is bright (spring makers' pages). */
const measurable: readonly Measurable[] = [
  {
    key: 'wire',
    label: 'wire diameter',
    ways: ['micrometer', 'calliper-outside'],
    wear: { grows: false, mean: 3 },
    range: [mm(0.08), mm(10)],
  },
  {
    key: 'od',
    label: 'outside diameter',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 10 },
    range: [mm(0.8), mm(100)],
  },
  {
    key: 'id',
    label: 'inside diameter',
    ways: ['calliper-inside', 'pin'],
    wear: { grows: true, mean: 10 },
    range: [mm(0.5), mm(100)],
  },
  {
    key: 'length',
    label: 'free length',
    ways: ['calliper-outside', 'rule'],
    wear: { grows: false, mean: 0, share: 0.02 },
    range: [mm(1), mm(300)],
  },
  { key: 'coils', label: 'coils in all', ways: [], wear: null, range: [500, mm(200)], counted: true },
];

/** A spring as its maker holds it: wire 2 in 100, outside 0.1, free length 0.5 up to 13 mm, 4 in 100 above (a maker's page). */
function candidate(wire: Um, od: Um, length: Um): Candidate {
  const [thick, long] = [Math.max(8, 0.02 * wire), Math.max(500, 0.04 * length)];
  const wide = Math.max(100, 0.015 * od);
  return {
    dims: { wire: toMm(wire), od: toMm(od), length: toMm(length) },
    designations: [],
    common: 1,
    made: {
      wire: about(wire, thick, thick, 'maker’s tolerance'),
      od: about(od, wide, wide, 'maker’s tolerance'),
      id: about(od - 2 * wire, wide, wide, 'maker’s tolerance'),
      length: about(length, long, long, 'maker’s tolerance'),
    },
  };
}

/** Springs have no published sizes: those a workshop knows are the only ones it can be. */
export const measuring: Measuring = {
  category: 'spring',
  measurable,
  candidates: () => [],
  known: (dims: Dims) => {
    const { wire, od, length } = dims;
    if (typeof wire !== 'number' || typeof od !== 'number' || typeof length !== 'number') return null;
    return candidate(mm(wire), mm(od), mm(length));
  },
  follows: rate,
  ...plainSize('wire', 'od', 'length'),
};

/**
 * The rate, where wire, a diameter and the coils are measured. Wire counts by its fourth power: with a calliper on thin wire
 * no rate is worth better than a quarter.
 */
function rate(measured: ReadonlyMap<string, Uncertain>, attrs: Attrs): Following[] {
  const [wire, od, id, coils] = ['wire', 'od', 'id', 'coils'].map(key => measured.get(key));
  const across = od ?? id;
  if (!wire || !across || !coils) return [];
  const ends = String(attrs.ends ?? 'closed');
  const active = coils.value - (deadCoils[ends] ?? 2);
  const mean = od ? od.value - wire.value : across.value + wire.value;
  if (!(active > 0) || !(mean > 0)) return [];
  const material = String(attrs.material ?? 'steel');
  const known = shearModulus[material] !== undefined;
  const modulus = shearModulus[material] ?? shearModulus.steel!;
  const coil = { wire: wire.value, mean, active };
  const doubt = {
    wire: Math.min(wire.uncertainty, 0.9 * wire.value),
    mean: Math.min(Math.hypot(across.uncertainty, wire.uncertainty), 0.9 * mean),
    active: Math.min(coils.uncertainty, 0.9 * active),
  };
  const { least, most } = rateRange(coil, doubt, modulus);
  return [
    {
      what: 'rate',
      value: threeFigures(springRate(coil, modulus)),
      least: threeFigures(least),
      most: threeFigures(most),
      unit: 'N/mm',
      why: `G d^4 / (8 D^3 n) of ${known ? material : 'steel'}${known ? '' : `, as nobody knows "${material}" here`}${attrs.material === undefined ? ', as no material is stated' : ''}; ${active} of ${coils.value} coils work (${ends} ends)`,
    },
  ];
}

/** No spring is known closer than to a few parts in a hundred: more figures would be false. */
const threeFigures = (value: number): number => Number(value.toPrecision(3));
