import { defineTable, larger, rising } from './table.ts';

/**
 * Retaining rings of inch shafts (ASME B18.27): E-rings pressed on from the side, and rings sprung over the end. Free diameter of an
 * E-ring is its outside, of a ring over the end its inside. Source: memory of the standard and of dealers' lists, unverified.
 */
const eRings = defineTable(
  'inch E-rings',
  'ASME B18.27 from memory, unverified',
  ['size: text', 'shaft: inch', 'groove: inch', 'thickness: inch', 'free: inch'],
  [
    ['1/16', 0.0625, 0.052, 0.01, 0.156],
    ['3/32', 0.0938, 0.074, 0.015, 0.187],
    ['1/8', 0.125, 0.095, 0.015, 0.23],
    ['9/64', 0.1406, 0.105, 0.015, 0.27],
    ['5/32', 0.1562, 0.116, 0.025, 0.282],
    ['3/16', 0.1875, 0.147, 0.025, 0.335],
    ['7/32', 0.2188, 0.185, 0.025, 0.437],
    ['1/4', 0.25, 0.21, 0.025, 0.527],
    ['5/16', 0.3125, 0.25, 0.025, 0.5],
    ['3/8', 0.375, 0.303, 0.035, 0.66],
    ['7/16', 0.4375, 0.343, 0.035, 0.687],
    ['1/2', 0.5, 0.396, 0.042, 0.8],
  ],
  rising(['shaft']),
  larger('shaft', 'groove'),
  larger('free', 'shaft'),
  (row, previous) => (previous && previous.groove >= row.groove ? 'groove does not grow' : null),
);

const external = defineTable(
  'inch rings sprung over the end of a shaft',
  'ASME B18.27 from memory, unverified',
  ['size: text', 'shaft: inch', 'groove: inch', 'thickness: inch', 'free: inch'],
  [
    ['1/8', 0.125, 0.117, 0.01, 0.112],
    ['3/16', 0.1875, 0.175, 0.015, 0.168],
    ['1/4', 0.25, 0.23, 0.025, 0.225],
    ['5/16', 0.3125, 0.29, 0.025, 0.281],
    ['3/8', 0.375, 0.352, 0.025, 0.338],
    ['7/16', 0.4375, 0.412, 0.025, 0.395],
    ['1/2', 0.5, 0.468, 0.035, 0.461],
    ['9/16', 0.5625, 0.53, 0.035, 0.521],
    ['5/8', 0.625, 0.588, 0.035, 0.579],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a ring's diameter, no logarithm
    ['3/4', 0.75, 0.704, 0.042, 0.693],
    ['1', 1, 0.94, 0.042, 0.925],
  ],
  rising(['shaft']),
  larger('shaft', 'groove'),
  larger('groove', 'free'),
);

/** A retaining ring of an inch shaft; lengths in micrometres. */
export type InchRing = (typeof eRings.rows)[number];

/** E-rings, smallest first. */
export const inchERings: readonly InchRing[] = eRings.rows;

/** Rings over the end of a shaft, smallest first. */
export const inchExternalRings: readonly InchRing[] = external.rows;
