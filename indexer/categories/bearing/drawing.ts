import type { Attrs, Dims } from '../../reading/reading.ts';
import { axis, circle, circles, type Drawing, lengthsOf, type Path, polyline, sheet } from '../drawing.ts';

/**
 * A ball bearing cut through its axis, and seen on its face; shields and seals where they are stated. Rings and balls have
 * their usual share of the section (common practice), for only the three dimensions are the part's own.
 */
export function drawing(dims: Dims, attrs: Attrs = {}): Drawing | null {
  const lengths = lengthsOf(dims, 'bore', 'od', 'width');
  if (!lengths || lengths.bore >= lengths.od) return null;
  const { bore, od, width } = lengths;
  const wall = (od - bore) / 2;
  const ball = Math.min(wall * 0.3, width * 0.42);
  const pitch = (bore + od) / 4;
  const land = { inner: pitch - ball * 0.66, outer: pitch + ball * 0.66 };
  const groove = ball * 0.75;
  const rings: Path[] = [];
  const rest: Path[] = [];
  for (const side of [-1, 1]) {
    const y = (radius: number) => od / 2 + side * radius;
    const ring = (edge: number, shoulder: number, clockwise: boolean): Path => [
      { to: 'move', at: [0, y(shoulder)] },
      { to: 'line', at: [0, y(edge)] },
      { to: 'line', at: [width, y(edge)] },
      { to: 'line', at: [width, y(shoulder)] },
      { to: 'line', at: [width / 2 + groove, y(shoulder)] },
      { to: 'arc', at: [width / 2 - groove, y(shoulder)], radius: ball, large: false, clockwise },
      { to: 'close' },
    ];
    rings.push(ring(od / 2, land.outer, side > 0), ring(bore / 2, land.inner, side < 0));
    rest.push(circle(width / 2, y(pitch), ball));
    for (const x of shieldsAt(width, ball, attrs))
      rest.push(polyline([x, y(land.outer)], [x, y(land.inner + wall * 0.04)]));
  }
  const beyond = [0, width].map(x => polyline([x, (od - bore) / 2], [x, (od + bore) / 2]));
  return sheet(width, od, {
    outlines: [...rings, ...rest, ...beyond],
    hatch: rings,
    centre: [axis(0, width, od / 2)],
    dimensions: [
      { key: 'width', from: [0, 0], to: [width, 0], offset: -4, text: `${width}` },
      { key: 'od', from: [0, 0], to: [0, od], offset: -11, text: `Ø${od}` },
      { key: 'bore', from: [0, wall], to: [0, od - wall], offset: -4, text: `Ø${bore}` },
    ],
    face: circles(od, [od / 2, land.outer, land.inner, bore / 2]),
  });
}

/** Where shields or seals stand: one, two, or none stated. */
function shieldsAt(width: number, ball: number, { seal }: Attrs): number[] {
  const inset = Math.min(width * 0.11, (width / 2 - ball) * 0.6);
  if (typeof seal !== 'string') return [];
  if (seal.startsWith('two-')) return [inset, width - inset];
  return seal.startsWith('one-') ? [inset] : [];
}
