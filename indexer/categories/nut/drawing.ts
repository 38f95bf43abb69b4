import type { Attrs, Dims } from '../../reading/reading.ts';
import { nutsOf } from '../../standards/nuts.ts';
import { toMm } from '../../units/length.ts';
import { axis, circles, type Drawing, hexagon, polygon, polyline, sheet } from '../drawing.ts';
import { threadToDraw } from '../thread-to-draw.ts';

/**
 * A hexagon nut from its side and on its face, by its stated height or its standard's; only what is known is dimensioned.
 * Null without a thread, and for nuts of another shape.
 */
export function drawing(dims: Dims, { type }: Attrs = {}): Drawing | null {
  const thread = threadToDraw(dims);
  if (!thread || (type !== undefined && !['hex', 'jam', 'lock'].includes(String(type)))) return null;
  const listed = nutsOf(String(dims.thread)).find(nut => nut.type === (type ?? 'hex'));
  // The usual proportions where no table has it (common practice).
  const usual = listed ? toMm(listed.acrossFlats) : Math.round(thread.outside * 1.75 * 10) / 10;
  // No nut is as narrow as its thread: a slip in the typing must not draw one.
  const measured = typeof dims.acrossFlats === 'number' && dims.acrossFlats > thread.outside * 1.1;
  const acrossFlats = measured ? Number(dims.acrossFlats) : usual;
  const stated = typeof dims.thickness === 'number' ? dims.thickness : null;
  const height = stated ?? (listed ? toMm(listed.height) : Math.round(thread.outside * 0.8 * 10) / 10);
  const corners = (acrossFlats * 2) / Math.sqrt(3);
  const middle = corners / 2;
  const edge = height * 0.12;
  const face = circles(corners, [thread.root / 2], [thread.outside / 2]);
  return sheet(height, corners, {
    outlines: [
      polygon(
        [edge, 0],
        [height - edge, 0],
        [height, edge * 1.7],
        [height, corners - edge * 1.7],
        [height - edge, corners],
        [edge, corners],
        [0, corners - edge * 1.7],
        [0, edge * 1.7],
      ),
      ...[middle / 2, middle * 1.5].map(y => polyline([0, y], [height, y])),
    ],
    hidden: [-1, 1].flatMap(side => [
      polyline([0, middle + (side * thread.root) / 2], [height, middle + (side * thread.root) / 2]),
    ]),
    centre: [axis(0, height, middle)],
    dimensions: [
      ...(stated === null
        ? []
        : [
            {
              key: 'thickness',
              from: [0, 0] as const,
              to: [height, 0] as const,
              offset: -5,
              text: `${stated}`,
            },
          ]),
      {
        key: 'thread',
        from: [0, middle - thread.outside / 2],
        to: [0, middle + thread.outside / 2],
        offset: -6,
        text: thread.text,
      },
    ],
    face: { ...face, outlines: [...face.outlines, hexagonUp(middle, acrossFlats)] },
  });
}

/** A corner up and down, as the side view shows it. */
const hexagonUp = (middle: number, acrossFlats: number) =>
  hexagon(middle, middle, acrossFlats).map(stroke =>
    'at' in stroke ? { ...stroke, at: [stroke.at[1], stroke.at[0]] as const } : stroke,
  );
