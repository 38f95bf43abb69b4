import type { Dims } from '../../reading/reading.ts';
import { type InchRing, inchERings, inchExternalRings } from '../../standards/inch-rings.ts';
import {
  din6799EClips,
  externalRings,
  internalRings,
  jisEClips,
  type RetainingRing,
} from '../../standards/retaining-rings.ts';
import { mm, toMm, type Um } from '../../units/length.ts';
import { about, type Candidate, type Measurable, type Measuring } from '../measurable.ts';
import { plainSize } from '../size-text.ts';

/** A used ring is sprung, so the groove and the thickness say more than the ring (makers' pages). */
const measurable: readonly Measurable[] = [
  {
    key: 'shaft',
    label: 'shaft it sits on',
    ways: ['calliper-outside', 'micrometer'],
    wear: { grows: false, mean: 5 },
    range: [mm(0.8), mm(80)],
  },
  {
    key: 'housing',
    label: 'bore it sits in',
    ways: ['calliper-inside'],
    wear: { grows: true, mean: 5 },
    range: [mm(4), mm(80)],
  },
  {
    key: 'groove',
    label: 'groove diameter',
    ways: ['calliper-outside'],
    wear: { grows: false, mean: 10 },
    range: [mm(0.5), mm(80)],
  },
  {
    key: 'grooveWidth',
    label: 'groove width',
    ways: ['calliper-inside'],
    wear: { grows: true, mean: 20 },
    range: [mm(0.15), mm(6)],
  },
  {
    key: 'thickness',
    label: 'thickness',
    ways: ['calliper-outside', 'micrometer'],
    wear: { grows: false, mean: 5 },
    range: [mm(0.1), mm(6)],
  },
  {
    key: 'freeDiameter',
    label: 'diameter of the free ring',
    ways: ['calliper-outside', 'calliper-inside'],
    wear: null,
    range: [mm(0.4), mm(90)],
  },
];

/** Thickness of rings from strip: 0.05 mm under up to 1 mm, 0.06 above (DIN 471, from memory). */
const thickness = (nominal: Um, source: string) => about(nominal, nominal <= mm(1) ? 50 : 60, 0, source);

/**
 * A ring once fitted stays sprung by some hundredths of its diameter: an external one open, an internal one shut.
 * A seat is turned h11 or H11 at worst; taken as 0.1 mm. A groove is h10 to h13, taken as 0.1 mm too (DIN 471, memory).
 */
const ring =
  (type: 'external' | 'internal', standard: string) =>
  (row: RetainingRing): Candidate => {
    const outside = type === 'external';
    const room = row.nominal <= mm(10) ? 60 : 120;
    return {
      dims: { dia: toMm(row.nominal) },
      attrs: { type },
      designations: [`${standard}-${toMm(row.nominal)}`],
      common: 1,
      made: {
        [outside ? 'shaft' : 'housing']: outside
          ? about(row.nominal, 90, 0, standard)
          : about(row.nominal, 0, 110, standard),
        groove: outside ? about(row.groove, room, 0, standard) : about(row.groove, 0, room, standard),
        grooveWidth: about(row.grooveWidth, 0, 140, `${standard} H13`),
        thickness: thickness(row.thickness, standard),
        freeDiameter: outside
          ? about(row.freeDiameter, 0.03 * row.freeDiameter, 0.02 * row.freeDiameter, standard)
          : about(row.freeDiameter, 0.02 * row.freeDiameter, 0.03 * row.freeDiameter, standard),
      },
    };
  };

/** A ring of an inch shaft: named by its shaft, an E-ring by its groove as the metric ones are. Room from memory of ASME B18.27. */
const ofInch =
  (type: 'external' | 'e-clip') =>
  ({ size, shaft, groove, thickness: thick, free }: InchRing): Candidate => {
    const standard = 'ASME B18.27';
    return {
      dims: { dia: toMm(type === 'e-clip' ? groove : shaft) },
      attrs: { type },
      designations: [`${standard} ${type === 'e-clip' ? 'E-ring ' : ''}${size} in`],
      common: 0.4,
      made: {
        shaft: about(shaft, 90, 0, standard),
        groove: about(groove, 50, 50, standard),
        thickness: about(thick, 50, 50, standard),
        freeDiameter: about(free, 0.03 * free, 0.02 * free, standard),
      },
    };
  };

const sizes: readonly Candidate[] = [
  ...externalRings.map(ring('external', 'DIN 471')),
  ...internalRings.map(ring('internal', 'DIN 472')),
  ...din6799EClips.map(clip => ({
    dims: { dia: toMm(clip.groove) },
    attrs: { type: 'e-clip' },
    designations: [`DIN 6799-${toMm(clip.groove)}`],
    common: 1,
    made: {
      shaft: { min: clip.shaftMin, max: clip.shaftMax, source: 'DIN 6799' },
      groove: about(clip.groove, clip.groove <= mm(3) ? 40 : 75, 0, 'DIN 6799 h11'),
      grooveWidth: about(clip.grooveWidth, 0, 80, 'DIN 6799'),
      thickness: about(clip.thickness, 20, 20, 'DIN 6799'),
      freeDiameter: about(clip.outside, 0.05 * clip.outside, 0, 'DIN 6799, outside'),
    },
  })),
  ...jisEClips.map(clip => ({
    dims: { dia: toMm(clip.groove) },
    attrs: { type: 'e-clip' },
    designations: [`JIS B 2804-${toMm(clip.groove)}`],
    common: 0.6,
    made: {
      shaft: { min: clip.shaftMin, max: clip.shaftMax, source: 'JIS B 2804' },
      groove: about(clip.groove, clip.groove <= mm(3) ? 40 : 75, 0, 'JIS B 2804'),
      thickness: about(clip.thickness, 30, 30, 'JIS B 2804'),
      freeDiameter: about(clip.outside, 0.05 * clip.outside, 0.02 * clip.outside, 'JIS B 2804, outside'),
    },
  })),
  ...inchExternalRings.map(ofInch('external')),
  ...inchERings.map(ofInch('e-clip')),
];

export const measuring: Measuring = {
  category: 'retaining-ring',
  measurable,
  candidates: () => sizes,
  known: (dims: Dims) => sizes.find(size => size.dims.dia === dims.dia) ?? null,
  ...plainSize('dia'),
};
