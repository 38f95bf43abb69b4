import type { Dims } from '../reading/reading.ts';
import { axis, circle, circles, type Drawing, lengthsOf, polygon, rectangle, sheet } from './drawing.ts';

/** A drawn cup with its rollers, cut through its axis and seen on its face; the rollers run on the shaft itself. */
export function drawRollerClutch(dims: Dims): Drawing | null {
  const lengths = lengthsOf(dims, 'bore', 'od', 'width');
  if (!lengths || lengths.bore >= lengths.od) return null;
  const { bore, od, width } = lengths;
  const wall = (od - bore) / 2;
  const cup = wall * 0.3;
  const roller = wall - cup;
  const lip = Math.min(cup, width * 0.08);
  const cups = [
    polygon(
      [0, 0],
      [width, 0],
      [width, wall],
      [width - lip, wall],
      [width - lip, cup],
      [lip, cup],
      [lip, wall],
      [0, wall],
    ),
    polygon(
      [0, od],
      [width, od],
      [width, od - wall],
      [width - lip, od - wall],
      [width - lip, od - cup],
      [lip, od - cup],
      [lip, od - wall],
      [0, od - wall],
    ),
  ];
  const inset = width * 0.16;
  const rollers = [cup, od - wall].map(y => rectangle(inset, y, width - 2 * inset, roller));
  const face = circles(od, [od / 2, od / 2 - cup]);
  const count = Math.max(6, Math.min(12, Math.floor((Math.PI * (bore + roller)) / (roller * 1.8))));
  for (let i = 0; i < count; i++) {
    const angle = (2 * Math.PI * (i + 0.5)) / count;
    const radius = (bore + roller) / 2;
    face.outlines.push(
      circle(od / 2 + radius * Math.cos(angle), od / 2 + radius * Math.sin(angle), roller / 2),
    );
  }
  return sheet(width, od, {
    outlines: [...cups, ...rollers],
    hatch: cups,
    centre: [axis(0, width, od / 2)],
    dimensions: [
      { key: 'width', from: [0, 0], to: [width, 0], offset: -4, text: `${width}` },
      { key: 'od', from: [0, 0], to: [0, od], offset: -11, text: `Ø${od}` },
      { key: 'bore', from: [0, wall], to: [0, od - wall], offset: -4, text: `Ø${bore}` },
    ],
    face,
  });
}
