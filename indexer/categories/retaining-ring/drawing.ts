import type { Attrs, Dims } from '../../reading/reading.ts';
import {
  circle,
  type Drawing,
  lengthsOf,
  type Path,
  type Point,
  polyline,
  rectangle,
  sheet,
  view,
} from '../drawing.ts';

/**
 * A retaining ring on its face, round the shaft, in the bore or in the groove that names it; its thickness seen from the
 * side where it is stated. The ring's own section has the usual proportions (common practice). Null without a size, and
 * for rings of another shape.
 */
export function drawing(dims: Dims, { type = 'external' }: Attrs = {}): Drawing | null {
  const lengths = lengthsOf(dims, 'dia');
  if (!lengths || !['external', 'internal', 'e-clip'].includes(String(type))) return null;
  const { dia } = lengths;
  const [inner, outer] = radii(dia, String(type));
  const span = Math.max(outer * 2, dia);
  const middle = span / 2;
  const thickness = typeof dims.thickness === 'number' ? dims.thickness : null;
  const past = span * 0.06;
  return sheet(span, span, {
    outlines: [type === 'e-clip' ? eClip(middle, inner, outer) : openRing(middle, inner, outer)],
    thin: [circle(middle, middle, dia / 2)],
    centre: [
      polyline([-past, middle], [span + past, middle]),
      polyline([middle, -past], [middle, span + past]),
    ],
    dimensions: [
      { key: 'dia', from: [middle - dia / 2, 0], to: [middle + dia / 2, 0], offset: -6, text: `Ø${dia}` },
    ],
    ...(thickness === null
      ? {}
      : {
          face: view(thickness, span, {
            outlines: [rectangle(0, 0, thickness, span)],
            centre: [polyline([-past, middle], [thickness + past, middle])],
          }),
        }),
  });
}

/** Inner and outer radius of the ring as it sits. */
function radii(dia: number, type: string): [number, number] {
  const wide = dia * 0.09 + 0.4;
  if (type === 'internal') return [dia / 2 - wide, dia / 2 + dia * 0.02];
  if (type === 'e-clip') return [dia / 2, dia * 1.05 + 0.3];
  return [dia / 2 - dia * 0.03, dia / 2 - dia * 0.03 + wide];
}

const on = (middle: number, radius: number, degrees: number): Point => [
  middle + radius * Math.cos((degrees * Math.PI) / 180),
  middle + radius * Math.sin((degrees * Math.PI) / 180),
];

/** A ring with its gap below. */
function openRing(middle: number, inner: number, outer: number): Path {
  const gap = 22;
  return [
    { to: 'move', at: on(middle, outer, 90 - gap) },
    { to: 'arc', at: on(middle, outer, 90 + gap), radius: outer, large: true, clockwise: false },
    { to: 'line', at: on(middle, inner, 90 + gap) },
    { to: 'arc', at: on(middle, inner, 90 - gap), radius: inner, large: true, clockwise: true },
    { to: 'close' },
  ];
}

/** Open below by nearly the groove, so that it goes on from the side. */
function eClip(middle: number, inner: number, outer: number): Path {
  const half = inner * 0.9;
  const deep = Math.sqrt(outer ** 2 - half ** 2);
  const rest = Math.sqrt(inner ** 2 - half ** 2);
  return [
    { to: 'move', at: [middle + half, middle + deep] },
    { to: 'arc', at: [middle - half, middle + deep], radius: outer, large: true, clockwise: false },
    { to: 'line', at: [middle - half, middle + rest] },
    { to: 'arc', at: [middle + half, middle + rest], radius: inner, large: true, clockwise: true },
    { to: 'close' },
  ];
}
