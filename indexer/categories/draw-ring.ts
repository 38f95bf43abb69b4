import type { Dims } from '../reading/reading.ts';
import { axis, circles, type Drawing, lengthsOf, polyline, rectangle, sheet } from './drawing.ts';

interface RingKeys {
  inside: string;
  outside: string;
  across: string;
}

/** A flat ring or a sleeve, cut through its axis and seen on its face; null where its numbers do not make one. */
export const drawRing =
  ({ inside, outside, across }: RingKeys) =>
  (dims: Dims): Drawing | null => {
    const lengths = lengthsOf(dims, inside, outside, across);
    if (!lengths) return null;
    const [hole, od, wide] = [lengths[inside]!, lengths[outside]!, lengths[across]!];
    if (hole >= od) return null;
    const wall = (od - hole) / 2;
    const cuts = [rectangle(0, 0, wide, wall), rectangle(0, od - wall, wide, wall)];
    return sheet(wide, od, {
      outlines: [...cuts, polyline([0, wall], [0, od - wall]), polyline([wide, wall], [wide, od - wall])],
      hatch: cuts,
      centre: [axis(0, wide, od / 2)],
      dimensions: [
        { key: across, from: [0, 0], to: [wide, 0], offset: -4, text: `${wide}` },
        { key: outside, from: [0, 0], to: [0, od], offset: -11, text: `Ø${od}` },
        { key: inside, from: [0, wall], to: [0, od - wall], offset: -4, text: `Ø${hole}` },
      ],
      face: circles(od, [od / 2, hole / 2]),
    });
  };
