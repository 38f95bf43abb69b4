import { inch, type Um } from '../units/length.ts';
import { atLeast, defineTable, larger, unique } from './table.ts';

/**
 * Plain washers of inch screws (ASME B18.21.1): type B narrow and regular, and the type A sizes that dealers stock.
 *
 * Sources: type B from an open CAD library and memory, which agree; type A from memory. Thickness limits from memory.
 */
const table = defineTable(
  'plain inch washers',
  'ASME B18.21.1: type B in an open CAD library and memory; type A from memory',
  ['type: text', 'size: text', 'id: inch', 'od: inch', 'thickness: inch'],
  [
    ['B narrow', '0', 0.068, 0.125, 0.025],
    ['B narrow', '1', 0.084, 0.156, 0.025],
    ['B narrow', '2', 0.094, 0.188, 0.025],
    ['B narrow', '3', 0.109, 0.219, 0.025],
    ['B narrow', '4', 0.125, 0.25, 0.032],
    ['B narrow', '5', 0.141, 0.281, 0.032],
    ['B narrow', '6', 0.156, 0.312, 0.032],
    ['B narrow', '8', 0.188, 0.375, 0.04],
    ['B narrow', '10', 0.203, 0.406, 0.04],
    ['B narrow', '12', 0.234, 0.438, 0.04],
    ['B narrow', '1/4', 0.281, 0.5, 0.063],
    ['B narrow', '5/16', 0.344, 0.625, 0.063],
    ['B narrow', '3/8', 0.406, 0.734, 0.063],
    ['B narrow', '1/2', 0.531, 1, 0.063],
    ['B regular', '0', 0.068, 0.188, 0.025],
    ['B regular', '1', 0.084, 0.219, 0.025],
    ['B regular', '2', 0.094, 0.25, 0.032],
    ['B regular', '3', 0.109, 0.312, 0.032],
    ['B regular', '4', 0.125, 0.375, 0.04],
    ['B regular', '5', 0.141, 0.406, 0.04],
    ['B regular', '6', 0.156, 0.438, 0.04],
    ['B regular', '8', 0.188, 0.5, 0.04],
    ['B regular', '10', 0.203, 0.562, 0.04],
    ['B regular', '12', 0.234, 0.625, 0.063],
    ['B regular', '1/4', 0.281, 0.734, 0.063],
    ['B regular', '5/16', 0.344, 0.875, 0.063],
    ['B regular', '3/8', 0.406, 1, 0.063],
    ['B regular', '1/2', 0.531, 1.25, 0.1],
    ['A', '4', 0.125, 0.312, 0.032],
    ['A', '6', 0.156, 0.375, 0.049],
    ['A', '8', 0.188, 0.438, 0.049],
    ['A', '10', 0.219, 0.5, 0.049],
    ['A', '12', 0.25, 0.562, 0.065],
    ['A narrow', '1/4', 0.281, 0.625, 0.065],
    ['A narrow', '5/16', 0.344, 0.688, 0.065],
    ['A narrow', '3/8', 0.406, 0.812, 0.065],
    ['A narrow', '7/16', 0.469, 0.922, 0.065],
    ['A narrow', '1/2', 0.531, 1.062, 0.095],
    ['A wide', '1/4', 0.312, 0.734, 0.065],
    ['A wide', '5/16', 0.375, 0.875, 0.083],
    ['A wide', '3/8', 0.438, 1, 0.083],
    ['A wide', '7/16', 0.5, 1.25, 0.083],
    ['A wide', '1/2', 0.562, 1.375, 0.109],
  ],
  larger('od', 'id'),
  unique('id', 'od', 'thickness'),
);

/** Least and greatest by nominal thickness, in thousandths of an inch: type B is held closer than type A. */
const thicknesses = defineTable(
  'thickness of plain inch washers',
  'ASME B18.21.1 from memory, unverified',
  ['nominal: inch', 'min: inch', 'max: inch'],
  [
    [0.025, 0.022, 0.028],
    [0.032, 0.028, 0.036],
    [0.04, 0.036, 0.045],
    [0.049, 0.036, 0.065],
    [0.063, 0.056, 0.071],
    [0.065, 0.051, 0.08],
    [0.083, 0.064, 0.104],
    [0.095, 0.074, 0.121],
    [0.1, 0.09, 0.112],
    [0.109, 0.086, 0.132],
  ],
  atLeast('nominal', 'min'),
  atLeast('max', 'nominal'),
);

/** A plain washer of an inch screw; lengths in micrometres. */
export interface InchWasher {
  /** `ASME B18.21.1 type B narrow`. */
  readonly standard: string;
  readonly size: string;
  readonly id: Um;
  readonly od: Um;
  readonly thickness: Um;
  readonly min: Um;
  readonly max: Um;
}

/** All plain inch washers, by type and size. */
export const inchWashers: readonly InchWasher[] = table.rows.map(({ type, ...row }) => {
  const { min, max } = thicknesses.rows.find(each => each.nominal === row.thickness)!;
  return { ...row, standard: `ASME B18.21.1 type ${type}`, min, max };
});

/** Holes lie up to this over their nominal, outsides as much either way, in micrometres (ASME B18.21.1, memory). */
export const inchWasherRoom: Um = inch(0.008);
