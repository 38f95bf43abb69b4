import type { Dims } from '../reading/reading.ts';

/** A dimensioned line drawing as plain data, in millimetres, x to the right and y downwards; a page turns it into lines. */

export type Point = readonly [x: number, y: number];

/** One stroke of a path, as in SVG: move, line, circular arc to a point, close. */
export type Stroke =
  | { to: 'move' | 'line'; at: Point }
  | { to: 'arc'; at: Point; radius: number; large: boolean; clockwise: boolean }
  | { to: 'close' };

export type Path = readonly Stroke[];

/** A figure between two points of the drawing, set off from it. */
export interface DimensionLine {
  /** The dimension of the category, e.g. `bore`. */
  key: string;
  from: Point;
  to: Point;
  /** How far the dimension line stands off its points, in millimetres on the sheet; negative is the other side. */
  offset: number;
  /** Written above the line, e.g. `Ø5`, `M3`. */
  text: string;
}

/** One view of a part, in lines alone. */
export interface View {
  /** The extent of the part, in millimetres; dimension lines stand outside it. */
  width: number;
  height: number;
  /** Visible edges, thick. */
  outlines: Path[];
  /** Thread roots, tangent edges: thin. */
  thin: Path[];
  /** Edges behind, or not stated: dashed. */
  hidden: Path[];
  /** Centre lines: chain. */
  centre: Path[];
  /** Cut faces, closed paths to be filled with hatching. */
  hatch: Path[];
}

export interface Drawing extends View {
  dimensions: DimensionLine[];
  /** The part seen along its axis, first angle: to the right, on the same centre line. Left out where room is short. */
  face?: View;
}

/** A closed polygon. */
export const polygon = (...points: Point[]): Path => [...polyline(...points), { to: 'close' }];

/** An open run of straight lines. */
export const polyline = (...points: Point[]): Path =>
  points.map((at, i) => ({ to: i === 0 ? 'move' : 'line', at }));

/** A rectangle by its top left corner. */
export const rectangle = (x: number, y: number, width: number, height: number): Path =>
  polygon([x, y], [x + width, y], [x + width, y + height], [x, y + height]);

/** A full circle, as two arcs. */
export const circle = (cx: number, cy: number, radius: number): Path => [
  { to: 'move', at: [cx - radius, cy] },
  { to: 'arc', at: [cx + radius, cy], radius, large: false, clockwise: true },
  { to: 'arc', at: [cx - radius, cy], radius, large: false, clockwise: true },
  { to: 'close' },
];

/** A view with nothing on it yet, to be filled in. */
export const view = (width: number, height: number, lines: Partial<View>): View => ({
  width,
  height,
  outlines: [],
  thin: [],
  hidden: [],
  centre: [],
  hatch: [],
  ...lines,
});

/** A drawing with nothing on it yet, to be filled in. */
export const sheet = (width: number, height: number, parts: Partial<Drawing>): Drawing => ({
  ...view(width, height, parts),
  dimensions: [],
  ...parts,
});

/** The axis of a turned part, along the sheet at height `y`, past both its ends. */
export const axis = (from: number, to: number, y: number): Path => {
  const past = (to - from) * 0.03 + y * 0.06;
  return polyline([from - past, y], [to + past, y]);
};

/** Concentric circles seen along their axis, with their centre lines. */
export function circles(outside: number, radii: readonly number[], thin: readonly number[] = []): View {
  const middle = outside / 2;
  const past = outside * 0.06;
  return view(outside, outside, {
    outlines: radii.map(radius => circle(middle, middle, radius)),
    thin: thin.map(radius => circle(middle, middle, radius)),
    centre: [
      polyline([-past, middle], [outside + past, middle]),
      polyline([middle, -past], [middle, outside + past]),
    ],
  });
}

/** A regular hexagon by its width across flats, a corner to the right. */
export function hexagon(cx: number, cy: number, acrossFlats: number): Path {
  const radius = acrossFlats / Math.sqrt(3);
  return polygon(
    ...[0, 60, 120, 180, 240, 300].map((degrees): Point => {
      const angle = (degrees * Math.PI) / 180;
      return [cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)];
    }),
  );
}

/** The lengths under some keys, in millimetres; null where one is not there or not above 0. */
export function lengthsOf<Key extends string>(dims: Dims, ...keys: Key[]): Record<Key, number> | null {
  const found: Partial<Record<Key, number>> = {};
  for (const key of keys) {
    const value = dims[key];
    if (typeof value !== 'number' || !(value > 0)) return null;
    found[key] = value;
  }
  return found as Record<Key, number>;
}
