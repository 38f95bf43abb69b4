import type { Dims } from '../../reading/reading.ts';
import { bushings } from '../../standards/bushings.ts';
import { inchBushings } from '../../standards/inch-bushings.ts';
import { toleranceOf } from '../../standards/iso-286.ts';
import { inchName } from '../../units/inch-name.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import { about, type Candidate, type Measurable, type Measuring } from '../measurable.ts';
import { plainSize } from '../size-text.ts';

/** The bore is what wears; the outside sits pressed in and stays (common practice). */
const measurable: readonly Measurable[] = [
  {
    key: 'id',
    label: 'inside diameter',
    ways: ['calliper-inside', 'pin'],
    wear: { grows: true, mean: 20 },
    range: [mm(0.8), mm(60)],
  },
  {
    key: 'od',
    label: 'outside diameter',
    ways: ['calliper-outside', 'micrometer'],
    wear: { grows: false, mean: 5 },
    range: [mm(2), mm(80)],
  },
  {
    key: 'length',
    label: 'length',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 15 },
    range: [mm(0.8), mm(80)],
  },
];

/** Bore F7 to H8, outside from nominal to s7 or so, length js13 (ISO 2795, from memory). */
function candidate(id: Um, od: Um, length: Um, designations: readonly string[]): Candidate {
  const room = (toleranceOf(13, length) ?? 330) / 2;
  return {
    dims: { id: toMm(id), od: toMm(od), length: toMm(length) },
    designations,
    common: 1,
    made: {
      id: about(id, 0, 50, 'bore F7 to H8'),
      od: about(od, 0, 60, 'outside r6 to s8'),
      length: about(length, room, room, 'js13'),
    },
  };
}

const sizes: readonly Candidate[] = [
  ...bushings.map(({ standard, id, od, length }) =>
    candidate(id, od, length, [`${standard} ${toMm(id)}x${toMm(od)}x${toMm(length)}`]),
  ),
  ...inchBushings.map(({ id, od, length }) =>
    candidate(id, od, length, [`${[id, od, length].map(um => inchName(um)).join(' x ')} in`]),
  ),
];

export const measuring: Measuring = {
  category: 'bushing',
  measurable,
  candidates: () => sizes,
  known: (dims: Dims) => {
    const { id, od, length } = dims;
    if (typeof id !== 'number' || typeof od !== 'number' || typeof length !== 'number') return null;
    return candidate(mm(id), mm(od), mm(length), []);
  },
  ...plainSize('id', 'od', 'length'),
};
