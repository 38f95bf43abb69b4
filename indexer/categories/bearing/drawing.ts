import type { Dims } from '../../reading/reading.ts';
import { type Drawing, polygon, polyline, rectangle, sheet } from '../drawing.ts';

const number = (value: number | string | undefined, otherwise: number) =>
  typeof value === 'number' && value > 0 ? value : otherwise;

/** A ball bearing cut through its axis, as ISO 8826 simplifies it: two rings above and below, a ball between. */
export function drawing(dims: Dims): Drawing {
  const bore = number(dims['bore'], 5);
  const od = Math.max(number(dims['od'], bore * 2.2), bore * 1.05);
  const width = number(dims['width'], (od - bore) * 0.6);
  const ring = (od - bore) / 2;
  const inner = [od / 2 + bore / 2 - 0, od / 2 - bore / 2] as const;
  const wall = ring * 0.3;
  const ball = Math.min(ring * 0.28, width * 0.4);
  const outlines = [];
  const hatch = [];
  for (const top of [0, inner[0]]) {
    outlines.push(rectangle(0, top, width, ring));
    for (const y of [top, top + ring - wall])
      hatch.push(polygon([0, y], [width, y], [width, y + wall], [0, y + wall]));
    const cy = top + ring / 2;
    outlines.push([
      { to: 'move', at: [width / 2 - ball, cy] },
      { to: 'arc', at: [width / 2 + ball, cy], radius: ball, large: false, clockwise: true },
      { to: 'arc', at: [width / 2 - ball, cy], radius: ball, large: false, clockwise: true },
      { to: 'close' },
    ] as Drawing['outlines'][number]);
  }
  return sheet(width, od, {
    outlines,
    hatch,
    centre: [polyline([-width * 0.2, od / 2], [width * 1.2, od / 2])],
    dimensions: [
      { key: 'bore', from: [width, inner[1]], to: [width, inner[0]], offset: 8, text: `Ø${bore}` },
      { key: 'od', from: [0, 0], to: [0, od], offset: -8, text: `Ø${od}` },
      { key: 'width', from: [0, od], to: [width, od], offset: 8, text: `${width}` },
    ],
  });
}
