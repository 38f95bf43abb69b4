import { inch, type Um } from '../units/length.ts';
import { defineTable, larger, rising } from './table.ts';

/**
 * Inch pins (ASME B18.8.2), by nominal: hardened dowels, 0.0002 in over it, and slotted spring pins measured free.
 * Source: memory of the standard and of dealers' lists, unverified.
 */
const table = defineTable(
  'inch pins',
  'ASME B18.8.2 from memory, unverified',
  ['size: text', 'nominal: inch', 'springMin: inch?', 'springMax: inch?', 'least: inch', 'most: inch'],
  [
    ['1/16', 0.0625, 0.066, 0.069, 0.1875, 1],
    ['5/64', 0.0781, 0.083, 0.086, 0.1875, 1.5],
    ['3/32', 0.0938, 0.099, 0.103, 0.1875, 1.5],
    ['1/8', 0.125, 0.131, 0.135, 0.25, 2],
    ['5/32', 0.1562, 0.162, 0.167, 0.375, 2.5],
    ['3/16', 0.1875, 0.194, 0.199, 0.375, 2.5],
    ['7/32', 0.2188, 0.226, 0.232, 0.5, 3],
    ['1/4', 0.25, 0.258, 0.264, 0.5, 3],
    ['5/16', 0.3125, 0.321, 0.328, 0.5, 3],
    ['3/8', 0.375, 0.385, 0.392, 0.75, 3],
    ['1/2', 0.5, 0.513, 0.521, 0.75, 3],
  ],
  rising(['nominal']),
  larger('springMax', 'springMin'),
  larger('springMin', 'nominal'),
);

/** An inch pin; lengths in micrometres. */
export interface InchPin {
  readonly type: 'dowel' | 'spring';
  /** `1/8`. */
  readonly size: string;
  readonly diameter: Um;
  readonly min: Um;
  readonly max: Um;
  readonly lengths: readonly Um[];
}

/** Sixteenths to half an inch, eighths to one, quarters above. */
const lengths: readonly Um[] = [3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 20, 24, 28, 32, 36, 40, 44, 48].map(
  sixteenths => inch(sixteenths / 16),
);

/** All inch pins, dowels first. */
export const inchPins: readonly InchPin[] = (['dowel', 'spring'] as const).flatMap(type =>
  table.rows.flatMap(({ size, nominal, springMin, springMax, least, most }): InchPin[] => {
    const fraction = inch(Number(size.split('/')[0]) / Number(size.split('/')[1]));
    const shared = {
      type,
      size,
      diameter: fraction,
      lengths: lengths.filter(each => each >= least && each <= most),
    };
    if (type === 'dowel') return [{ ...shared, min: nominal + 2, max: nominal + 8 }];
    return springMin === null || springMax === null ? [] : [{ ...shared, min: springMin, max: springMax }];
  }),
);
