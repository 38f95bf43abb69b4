import { measuring as ball } from '../categories/ball/measuring.ts';
import { measuring as bearing } from '../categories/bearing/measuring.ts';
import { measuring as bushing } from '../categories/bushing/measuring.ts';
import type { Measuring } from '../categories/measurable.ts';
import { measuring as nut } from '../categories/nut/measuring.ts';
import { measuring as oRing } from '../categories/o-ring/measuring.ts';
import { measuring as pin } from '../categories/pin/measuring.ts';
import { measuring as retainingRing } from '../categories/retaining-ring/measuring.ts';
import { measuring as screw } from '../categories/screw/measuring.ts';
import { measuring as setScrew } from '../categories/set-screw/measuring.ts';
import { measuring as shim } from '../categories/shim/measuring.ts';
import { measuring as spring } from '../categories/spring/measuring.ts';
import { measuring as washer } from '../categories/washer/measuring.ts';
import type { CategoryName } from '../reading/reading.ts';

/** The categories that can be named from measurements, by name. */
export const measurings: ReadonlyMap<CategoryName, Measuring> = new Map(
  [screw, setScrew, nut, bearing, washer, shim, retainingRing, oRing, pin, ball, spring, bushing].map(
    each => [each.category, each],
  ),
);
