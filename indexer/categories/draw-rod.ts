import type { Dims } from '../reading/reading.ts';
import { axis, circles, type Drawing, lengthsOf, polygon, polyline, sheet } from './drawing.ts';

/** A plain cylinder with broken edges: a pin, a shaft; null where its numbers do not make one. */
export function drawRod(dims: Dims): Drawing | null {
  const lengths = lengthsOf(dims, 'dia', 'length');
  if (!lengths) return null;
  const { dia, length } = lengths;
  const edge = Math.min(dia * 0.1, length * 0.1);
  return sheet(length, dia, {
    outlines: [
      polygon(
        [edge, 0],
        [length - edge, 0],
        [length, edge],
        [length, dia - edge],
        [length - edge, dia],
        [edge, dia],
        [0, dia - edge],
        [0, edge],
      ),
      polyline([edge, 0], [edge, dia]),
      polyline([length - edge, 0], [length - edge, dia]),
    ],
    centre: [axis(0, length, dia / 2)],
    dimensions: [
      { key: 'length', from: [0, dia], to: [length, dia], offset: 8, text: `${length}` },
      { key: 'dia', from: [0, 0], to: [0, dia], offset: -5, text: `Ø${dia}` },
    ],
    face: circles(dia, [dia / 2], [dia / 2 - edge]),
  });
}

/** A ball: one circle with its diameter; null where it has none. */
export function drawBall(dims: Dims): Drawing | null {
  const lengths = lengthsOf(dims, 'dia');
  if (!lengths) return null;
  const { dia } = lengths;
  return sheet(dia, dia, {
    ...circles(dia, [dia / 2]),
    dimensions: [{ key: 'dia', from: [0, 0], to: [dia, 0], offset: -6, text: `Ø${dia}` }],
  });
}
