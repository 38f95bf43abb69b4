import type { Dims } from '../../reading/reading.ts';
import { oRings } from '../../standards/o-rings.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import { about, type Candidate, type Measurable, type Measuring } from '../measurable.ts';
import { plainSize } from '../size-text.ts';

/** A used ring is flattened and stretched: take the larger of two section readings, or size it from its groove (guides). */
const measurable: readonly Measurable[] = [
  {
    key: 'cs',
    label: 'cross-section',
    ways: ['calliper-outside', 'micrometer'],
    wear: { grows: false, mean: 0, share: 0.01 },
    range: [mm(0.5), mm(10)],
    soft: true,
    flattens: true,
  },
  {
    key: 'id',
    label: 'inside diameter',
    ways: ['calliper-inside', 'calliper-outside'],
    wear: { grows: true, mean: 0, share: 0.003 },
    range: [mm(0.5), mm(200)],
    soft: true,
  },
  {
    key: 'od',
    label: 'outside diameter',
    ways: ['calliper-outside'],
    wear: { grows: true, mean: 0, share: 0.003 },
    range: [mm(2), mm(220)],
    soft: true,
  },
  {
    key: 'groove',
    label: 'diameter of the groove it sits round',
    ways: ['calliper-outside'],
    wear: null,
    range: [mm(0.5), mm(200)],
  },
  {
    key: 'glandDepth',
    label: 'depth of the groove with its cover on',
    ways: ['calliper-depth', 'calliper-outside'],
    wear: null,
    range: [mm(0.4), mm(9)],
  },
];

/** Section tolerances by section, in micrometres either way (ISO 3601-1, from memory). */
const sectionRoom = (cs: Um) => (cs <= 2650 ? 80 : cs <= 3550 ? 100 : cs <= 5400 ? 130 : 150);

/** Inside-diameter tolerance where the table names none: about 1 in 100 and 0.1 mm (ISO 3601-1 class B, from memory). */
const insideRoom = (id: Um) => Math.round(100 + 0.009 * id);

/**
 * Limits of a ring and of the grooves it goes in: ring 2 to 5 in 100 under the groove, squeezed 8 to 30 in 100 of its section
 * between moving and still parts (O-ring guides: 8 to 16 moving, 15 to 25 still).
 */
function candidate(
  id: Um,
  cs: Um,
  idTolerance: Um | null,
  designations: readonly string[],
  common: number,
): Candidate {
  const [inside, section] = [idTolerance ?? insideRoom(id), sectionRoom(cs)];
  return {
    dims: { id: toMm(id), cs: toMm(cs) },
    designations,
    common,
    made: {
      cs: about(cs, section, section, 'ISO 3601-1'),
      id: about(id, inside, inside, 'ISO 3601-1'),
      od: about(id + 2 * cs, inside + section, inside + section, 'ISO 3601-1'),
      groove: { min: id, max: id / 0.95, source: 'ring 0 to 5 % under its groove' },
      glandDepth: { min: 0.7 * cs, max: 0.92 * cs, source: 'squeeze 8 to 30 %' },
    },
  };
}

/** Rings of the same two dimensions in several series are one size. */
function published(): Candidate[] {
  const sizes = new Map<string, Candidate>();
  for (const { id, cs, idTolerance, designation, standard } of oRings) {
    const key = `${id}x${cs}`;
    const earlier = sizes.get(key);
    const designations = [...(earlier?.designations ?? []), ...(designation === null ? [] : [designation])];
    const common = standard === 'ISO 3601-1' ? 0.5 : 1;
    sizes.set(key, candidate(id, cs, idTolerance, designations, Math.max(common, earlier?.common ?? 0)));
  }
  return [...sizes.values()];
}

const sizes = published();

/** How much of a section of this size a groove presses, in per cent. */
export const squeeze = (cs: number, glandDepth: number): number => (100 * (cs - glandDepth)) / cs;

export const measuring: Measuring = {
  category: 'o-ring',
  measurable,
  candidates: () => sizes,
  known: (dims: Dims) => {
    const { id, cs } = dims;
    return typeof id === 'number' && typeof cs === 'number' ? candidate(mm(id), mm(cs), null, [], 1) : null;
  },
  remarks(dims, measured) {
    const depth = measured.get('glandDepth');
    if (depth === undefined || typeof dims.cs !== 'number') return [];
    const per = Math.round(squeeze(mm(dims.cs), depth));
    const use =
      per < 8
        ? 'too little to seal'
        : per < 15
          ? 'for moving parts (8 to 16)'
          : per <= 25
            ? 'for still parts (15 to 25)'
            : 'much: it will be hard to close';
    return [`Squeeze ${per} %: ${use}.`];
  },
  ...plainSize('id', 'cs'),
};
