import type { Dims } from '../../reading/reading.ts';
import { type InchWasher, inchWasherRoom, inchWashers } from '../../standards/inch-washers.ts';
import { deviations, toleranceOf } from '../../standards/iso-286.ts';
import { type Washer, washers } from '../../standards/iso-7089.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import { about, type Candidate, type Measurable, type Measuring } from '../measurable.ts';
import { plainSize } from '../size-text.ts';

/** Use thins a washer where it rubs and opens its hole: measure the rim that nothing touched (common practice). */
const measurable: readonly Measurable[] = [
  {
    key: 'id',
    label: 'inside diameter',
    ways: ['calliper-inside', 'pin'],
    wear: { grows: true, mean: 15 },
    range: [mm(0.8), mm(80)],
  },
  {
    key: 'od',
    label: 'outside diameter',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 10 },
    range: [mm(2), mm(150)],
  },
  {
    key: 'thickness',
    label: 'thickness',
    ways: ['calliper-outside', 'micrometer'],
    wear: { grows: false, mean: 10 },
    range: [mm(0.1), mm(10)],
  },
];

/** Holes H14 and outsides h15 where the row names none (ISO 4759-3 product grade A, from memory). */
const hole = (d1: Um) => toleranceOf(14, d1) ?? mm(0.6);
const outside = (d2: Um) => toleranceOf(15, d2) ?? mm(1.2);

const published = ({ d1, d2, h, hMin, hMax, standard, thread, type }: Washer): Candidate => ({
  dims: { id: toMm(d1), od: toMm(d2), thickness: toMm(h) },
  attrs: { type },
  designations: [`${standard} ${thread}`],
  common: standard === 'ISO 7089' || standard === 'DIN 125-A' ? 1 : 0.4,
  made: {
    id: about(d1, 0, hole(d1), standard),
    od: about(d2, outside(d2), 0, standard),
    thickness: { min: hMin, max: hMax, source: standard },
  },
});

/** Washers of inch screws: the same hole and outside as their fractions, thicker or thinner by much. */
const ofInchScrew = ({ id, od, thickness, min, max, standard, size }: InchWasher): Candidate => ({
  dims: { id: toMm(id), od: toMm(od), thickness: toMm(thickness) },
  attrs: { type: 'flat' },
  designations: [`${standard} ${size}`],
  common: 0.4,
  made: {
    id: about(id, 50, inchWasherRoom, standard),
    od: about(od, inchWasherRoom, inchWasherRoom, standard),
    thickness: { min, max, source: standard },
  },
});

const sizes = [...washers.map(published), ...inchWashers.map(ofInchScrew)];

/** A washer that no table has is cut freely: h15 outside, ISO 2768 medium in thickness (0.1 mm either way). */
export const measuring: Measuring = {
  category: 'washer',
  measurable,
  candidates: () => sizes,
  known: (dims: Dims) => {
    const { id, od, thickness } = dims;
    if (typeof id !== 'number' || typeof od !== 'number' || typeof thickness !== 'number') return null;
    const [d1, d2, h] = [mm(id), mm(od), mm(thickness)];
    const room = Math.min(100, 0.2 * h);
    return {
      dims: { id, od, thickness },
      designations: [],
      common: 1,
      made: {
        id: about(d1, 100, (deviations('H14', d1)?.upper ?? hole(d1)) / 2, 'general tolerance'),
        od: about(d2, outside(d2) / 2, 100, 'general tolerance'),
        thickness: about(h, room, room, 'general tolerance'),
      },
    };
  },
  ...plainSize('id', 'od', 'thickness'),
};
