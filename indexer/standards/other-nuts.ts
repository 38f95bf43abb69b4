import { inch, mm, type Um } from '../units/length.ts';
import { baThreads } from './ba-threads.ts';
import { defineTable, larger } from './table.ts';

/**
 * Nuts of inch threads (ASME B18.6.3 machine screw nuts, B18.2.2 hexagon and jam nuts): across flats and height with limits.
 * Sources: an open CAD library's table of the machine screw nuts, whose middles agree with memory; B18.2.2 from memory.
 */
const table = defineTable(
  'nuts of inch threads',
  'ASME machine screw nuts in an open CAD library, and memory; ASME B18.2.2 from memory',
  [
    'standard: text',
    'type: text',
    'size: text',
    'acrossFlats: inch',
    'acrossFlatsMin: inch',
    'height: inch',
    'heightMin: inch',
  ],
  [
    ['ASME B18.6.3', 'hex', '0', 0.156, 0.15, 0.05, 0.043],
    ['ASME B18.6.3', 'hex', '1', 0.156, 0.15, 0.05, 0.043],
    ['ASME B18.6.3', 'hex', '2', 0.188, 0.18, 0.066, 0.057],
    ['ASME B18.6.3', 'hex', '3', 0.188, 0.18, 0.066, 0.057],
    ['ASME B18.6.3', 'hex', '4', 0.25, 0.241, 0.098, 0.087],
    ['ASME B18.6.3', 'hex', '5', 0.312, 0.302, 0.114, 0.102],
    ['ASME B18.6.3', 'hex', '6', 0.312, 0.302, 0.114, 0.102],
    ['ASME B18.6.3', 'hex', '8', 0.344, 0.332, 0.13, 0.117],
    ['ASME B18.6.3', 'hex', '10', 0.375, 0.362, 0.13, 0.117],
    ['ASME B18.6.3', 'hex', '12', 0.438, 0.423, 0.161, 0.148],
    ['ASME B18.6.3', 'hex', '1/4', 0.438, 0.423, 0.193, 0.178],
    ['ASME B18.6.3', 'hex', '5/16', 0.562, 0.545, 0.225, 0.208],
    ['ASME B18.6.3', 'hex', '3/8', 0.625, 0.607, 0.257, 0.239],
    ['ASME B18.2.2', 'hex', '1/4', 0.438, 0.428, 0.226, 0.212],
    ['ASME B18.2.2', 'hex', '5/16', 0.5, 0.489, 0.273, 0.258],
    ['ASME B18.2.2', 'hex', '3/8', 0.562, 0.551, 0.337, 0.32],
    ['ASME B18.2.2', 'hex', '7/16', 0.688, 0.675, 0.385, 0.365],
    ['ASME B18.2.2', 'hex', '1/2', 0.75, 0.736, 0.448, 0.427],
    ['ASME B18.2.2', 'jam', '1/4', 0.438, 0.428, 0.163, 0.15],
    ['ASME B18.2.2', 'jam', '5/16', 0.5, 0.489, 0.195, 0.18],
    ['ASME B18.2.2', 'jam', '3/8', 0.562, 0.551, 0.227, 0.21],
    ['ASME B18.2.2', 'jam', '7/16', 0.688, 0.675, 0.26, 0.24],
    ['ASME B18.2.2', 'jam', '1/2', 0.75, 0.736, 0.323, 0.302],
  ],
  larger('acrossFlats', 'acrossFlatsMin'),
  larger('height', 'heightMin'),
  row => (row.acrossFlatsMin > 0.95 * row.acrossFlats ? null : 'the flats are too loose'),
);

/** A nut by its thread's name; lengths in micrometres. */
export interface NutBody {
  readonly standard: string;
  readonly type: string;
  readonly acrossFlats: Um;
  readonly acrossFlatsMin: Um;
  readonly height: Um;
  readonly heightMin: Um;
}

/** The nuts of an inch thread by the size in its name: `4` of 4-40, `1/4` of 1/4-20. */
export const inchNuts = (size: string): readonly NutBody[] => table.rows.filter(row => row.size === size);

/**
 * BA nuts are 1.75 diameters across flats (an encyclopedia's page on BA threads and a fastener dealer's), made a few hundredths under;
 * a full nut is as high as its thread is thick, a thin one two thirds of that (memory of BS 57).
 */
export function baNuts(designation: string): readonly NutBody[] {
  const thread = baThreads.find(each => each.designation === designation);
  if (!thread) return [];
  const acrossFlats = Math.round(1.75 * thread.nominal);
  const body = (type: string, height: Um): NutBody => ({
    standard: 'BS 57',
    type,
    acrossFlats,
    acrossFlatsMin: acrossFlats - Math.max(inch(0.003), Math.round(0.02 * acrossFlats)),
    height,
    heightMin: Math.round(0.92 * height),
  });
  return [body('hex', thread.nominal), body('jam', Math.round((2 / 3) * thread.nominal))];
}

/** Across flats of nuts and hexagon heads on the older Japanese threads (a maker's bulletin of 1967). */
const olderFlats: Readonly<Record<string, Um>> = { 'M3x0.6': mm(6), 'M4x0.75': mm(8), 'M5x0.9': mm(9) };

/** The nut of an older Japanese thread, 0.8 diameters high; none for another thread. */
export function olderJapaneseNuts(designation: string): readonly NutBody[] {
  const acrossFlats = olderFlats[designation];
  if (acrossFlats === undefined) return [];
  const height = Math.round(0.8 * Number(designation.slice(1, 2)) * 1000);
  return [
    {
      standard: 'older Japanese nut',
      type: 'hex',
      acrossFlats,
      acrossFlatsMin: acrossFlats - 220,
      height,
      heightMin: height - 300,
    },
  ];
}
