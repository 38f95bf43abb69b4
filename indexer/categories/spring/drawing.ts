import type { Attrs, Dims } from '../../reading/reading.ts';
import { axis, circle, type Drawing, lengthsOf, polyline, sheet } from '../drawing.ts';

/**
 * A compression spring cut through its axis (ISO 2162), with one closed coil at each end. A list does not tell how many
 * coils there are, so they are drawn at a usual spacing. Null without wire, outside diameter and free length, and for
 * springs of another kind.
 */
export function drawing(dims: Dims, { type }: Attrs = {}): Drawing | null {
  const lengths = lengthsOf(dims, 'wire', 'od', 'length');
  if (!lengths || (type !== undefined && type !== 'compression')) return null;
  const { wire, od, length } = lengths;
  if (2 * wire >= od || 4 * wire >= length) return null;
  const coils = Math.max(2, Math.min(16, Math.round((length - 3 * wire) / (wire * 2.4))));
  const pitch = (length - 3 * wire) / coils;
  const tops = [
    wire / 2,
    ...Array.from({ length: coils + 1 }, (_, i) => 1.5 * wire + i * pitch),
    length - wire / 2,
  ];
  const cuts = tops.map(x => circle(x, wire / 2, wire / 2));
  const lower = tops.slice(0, -1).map((x, i) => (x + tops[i + 1]!) / 2);
  const cutsBelow = lower.map(x => circle(x, od - wire / 2, wire / 2));
  const behind = lower.flatMap((x, i) => [
    polyline([tops[i]! - wire / 2, wire / 2], [x - wire / 2, od - wire / 2]),
    polyline([tops[i]! + wire / 2, wire / 2], [x + wire / 2, od - wire / 2]),
  ]);
  return sheet(length, od, {
    outlines: [...cuts, ...cutsBelow],
    thin: behind,
    hatch: [...cuts, ...cutsBelow],
    centre: [axis(0, length, od / 2)],
    dimensions: [
      { key: 'length', from: [0, od], to: [length, od], offset: 7, text: `${length}` },
      { key: 'od', from: [0, 0], to: [0, od], offset: -6, text: `Ø${od}` },
      {
        key: 'wire',
        from: [tops[1]! - wire / 2, 0],
        to: [tops[1]! + wire / 2, 0],
        offset: -5,
        text: `Ø${wire}`,
      },
    ],
  });
}
