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

export interface Drawing {
  /** The extent of the part alone, in millimetres; dimension lines stand outside it. */
  width: number;
  height: number;
  /** Visible edges, thick. */
  outlines: Path[];
  /** Thread roots, tangent edges: thin. */
  thin: Path[];
  /** Edges behind: dashed. */
  hidden: Path[];
  /** Centre lines: chain. */
  centre: Path[];
  /** Cut faces, closed paths to be filled with hatching. */
  hatch: Path[];
  dimensions: DimensionLine[];
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

/** A drawing with nothing on it yet, to be filled in. */
export const sheet = (width: number, height: number, parts: Partial<Drawing>): Drawing => ({
  width,
  height,
  outlines: [],
  thin: [],
  hidden: [],
  centre: [],
  hatch: [],
  dimensions: [],
  ...parts,
});
