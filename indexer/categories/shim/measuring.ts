import type { Dims } from '../../reading/reading.ts';
import { shimRings, shimThicknesses, stockedShimThicknesses } from '../../standards/din-988.ts';
import { deviations } from '../../standards/iso-286.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import { about, type Candidate, type Measurable, type Measuring } from '../measurable.ts';
import { plainSize } from '../size-text.ts';

const measurable: readonly Measurable[] = [
  {
    key: 'id',
    label: 'inside diameter',
    ways: ['calliper-inside', 'pin'],
    wear: { grows: true, mean: 10 },
    range: [mm(1), mm(80)],
  },
  {
    key: 'od',
    label: 'outside diameter',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 10 },
    range: [mm(2), mm(100)],
  },
  {
    key: 'thickness',
    label: 'thickness',
    ways: ['micrometer', 'calliper-outside'],
    wear: { grows: false, mean: 3 },
    range: [mm(0.05), mm(4)],
  },
];

/** Thickness of a shim ring lies this far off, in micrometres: from the rolled strip (DIN 988, from memory). */
const thicknessRoom = (thickness: Um) => (thickness <= mm(0.2) ? 20 : thickness <= mm(0.5) ? 30 : 50);

/** A shim ring: D12 inside, d12 outside (DIN 988, from memory). */
function candidate(
  id: Um,
  od: Um,
  thickness: Um,
  common: number,
  designations: readonly string[],
): Candidate {
  const inside = deviations('D12', id) ?? { upper: 330, lower: 80 };
  const outside = deviations('d12', od) ?? { upper: -80, lower: -330 };
  const room = thicknessRoom(thickness);
  return {
    dims: { id: toMm(id), od: toMm(od), thickness: toMm(thickness) },
    designations,
    common,
    made: {
      id: about(id, -inside.lower, inside.upper, 'DIN 988 D12'),
      od: about(od, -outside.lower, outside.upper, 'DIN 988 d12'),
      thickness: about(thickness, room, room, 'DIN 988'),
    },
  };
}

const sizes: readonly Candidate[] = shimRings.flatMap(({ id, od }) =>
  shimThicknesses.map(thickness =>
    candidate(id, od, thickness, stockedShimThicknesses.includes(thickness) ? 1 : 0.3, [
      `DIN 988 ${toMm(id)}x${toMm(od)}x${toMm(thickness)}`,
    ]),
  ),
);

export const measuring: Measuring = {
  category: 'shim',
  measurable,
  candidates: () => sizes,
  known: (dims: Dims) => {
    const { id, od, thickness } = dims;
    if (typeof id !== 'number' || typeof od !== 'number' || typeof thickness !== 'number') return null;
    return candidate(mm(id), mm(od), mm(thickness), 1, []);
  },
  ...plainSize('id', 'od', 'thickness'),
};
