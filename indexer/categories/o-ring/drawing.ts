import type { Dims } from '../../reading/reading.ts';
import { axis, circle, circles, type Drawing, lengthsOf, polyline, sheet } from '../drawing.ts';

/** An O-ring with both cords cut, and its face with the line of the cord; null where its numbers do not make one. */
export function drawing(dims: Dims): Drawing | null {
  const lengths = lengthsOf(dims, 'id', 'cs');
  if (!lengths) return null;
  const { id, cs } = lengths;
  const od = id + 2 * cs;
  const cords = [circle(cs / 2, cs / 2, cs / 2), circle(cs / 2, od - cs / 2, cs / 2)];
  const face = circles(od, [od / 2, id / 2]);
  face.centre.push(circle(od / 2, od / 2, (id + cs) / 2));
  return sheet(cs, od, {
    outlines: cords,
    thin: [polyline([cs / 2, cs], [cs / 2, od - cs])],
    hatch: cords,
    centre: [axis(0, cs, od / 2)],
    dimensions: [
      { key: 'cs', from: [0, cs / 2], to: [cs, cs / 2], offset: -7, text: `Ø${cs}` },
      { key: 'id', from: [0, cs], to: [0, od - cs], offset: -5, text: `Ø${id}` },
    ],
    face,
  });
}
