import type { Attrs, Dims } from '../../reading/reading.ts';
import { setScrew } from '../../standards/set-screws.ts';
import { toMm } from '../../units/length.ts';
import { axis, circles, type Drawing, hexagon, polygon, polyline, sheet } from '../drawing.ts';
import { threadToDraw } from '../thread-to-draw.ts';

/**
 * A set screw from its side, length overall, with its point where one is stated; from its end, the socket where a hex key
 * turns it. Null without a thread and a length.
 */
export function drawing(dims: Dims, { point, drive }: Attrs = {}): Drawing | null {
  const thread = threadToDraw(dims);
  const { length } = dims;
  if (!thread || typeof length !== 'number' || !(length > 0)) return null;
  const [out, root] = [thread.outside / 2, thread.root / 2];
  const edge = Math.min(out - root, length * 0.2);
  const tip = point === 'cone' ? Math.min(out, length * 0.4) : edge;
  const tipHalf = point === 'cone' ? 0 : root;
  const socket = drive === 'hex-socket' ? setScrew(String(dims.thread)) : undefined;
  const key = socket ? toMm(socket.key) : null;
  const depth = key === null ? 0 : Math.min(length * 0.5, key * 1.2);
  const corner = key === null ? 0 : key / Math.sqrt(3);
  const cup = point === 'cup' ? root * 0.6 : 0;
  return sheet(length, thread.outside, {
    outlines: [
      polygon(
        [edge, 0],
        [length - tip, 0],
        [length, out - tipHalf],
        [length, out + tipHalf],
        [length - tip, thread.outside],
        [edge, thread.outside],
        [0, out + root],
        [0, out - root],
      ),
      polyline([edge, 0], [edge, thread.outside]),
      polyline([length - tip, 0], [length - tip, thread.outside]),
    ],
    thin: [out - root, out + root].map(y => polyline([0, y], [point === 'cone' ? length - tip : length, y])),
    hidden: [
      ...(key === null
        ? []
        : [
            polyline(
              [0, out - corner],
              [depth, out - corner],
              [depth + corner * 0.5, out],
              [depth, out + corner],
              [0, out + corner],
            ),
          ]),
      ...(cup > 0 ? [polyline([length, out - cup], [length - cup * 0.6, out], [length, out + cup])] : []),
    ],
    centre: [axis(0, length, out)],
    dimensions: [
      {
        key: 'length',
        from: [0, thread.outside],
        to: [length, thread.outside],
        offset: 7,
        text: `${length}`,
      },
      { key: 'thread', from: [length, 0], to: [length, thread.outside], offset: 9, text: thread.text },
    ],
    face: {
      ...circles(thread.outside, [out], [root]),
      outlines: [
        ...circles(thread.outside, [out]).outlines,
        ...(key === null ? [] : [hexagon(out, out, key)]),
      ],
    },
  });
}
