import { type Box, type Matrix, mapX, mapY } from './matrix.ts';
import type { PageContent } from './page-content.ts';

/** How pdf.js 5.6 writes a path: a code, then its numbers. */
const moveTo = 0;
const lineTo = 1;
const curveTo = 2;
const quadraticTo = 3;
const closePath = 4;

/** One stretch of a path, mapped onto the shown page. */
export interface Subpath {
  /** Corners, and for each curve points on the way: x and y in turn. */
  points: number[];
  curves: number;
  lines: number;
  closed: boolean;
  box: Box;
}

/** Cuts a path into its stretches. */
export function readSubpaths(path: Float32Array, map: Matrix): Subpath[] {
  const found: Subpath[] = [];
  let open: Subpath | null = null;
  let x = 0;
  let y = 0;
  const start = () => {
    open = {
      points: [],
      curves: 0,
      lines: 0,
      closed: false,
      box: { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity },
    };
    found.push(open);
    add(x, y);
  };
  const add = (px: number, py: number) => {
    const { points, box } = open!;
    const sx = mapX(map, px, py);
    const sy = mapY(map, px, py);
    points[points.length] = sx;
    points[points.length] = sy;
    if (sx < box.left) box.left = sx;
    if (sx > box.right) box.right = sx;
    if (sy < box.top) box.top = sy;
    if (sy > box.bottom) box.bottom = sy;
  };
  for (let at = 0; at < path.length; ) {
    const code = path[at]!;
    if (code === moveTo) {
      x = path[at + 1]!;
      y = path[at + 2]!;
      open = null;
      at += 3;
      continue;
    }
    if (code === closePath) {
      if (open) (open as Subpath).closed = true;
      at += 1;
      continue;
    }
    if (!open) start();
    if (code === lineTo) {
      x = path[at + 1]!;
      y = path[at + 2]!;
      open!.lines += 1;
      add(x, y);
      at += 3;
    } else if (code === curveTo) {
      const [x1, y1, x2, y2] = [path[at + 1]!, path[at + 2]!, path[at + 3]!, path[at + 4]!];
      const [x3, y3] = [path[at + 5]!, path[at + 6]!];
      for (const t of [0.25, 0.5, 0.75]) add(cubic(x, x1, x2, x3, t), cubic(y, y1, y2, y3, t));
      x = x3;
      y = y3;
      open!.curves += 1;
      add(x, y);
      at += 7;
    } else if (code === quadraticTo) {
      const [x1, y1, x2, y2] = [path[at + 1]!, path[at + 2]!, path[at + 3]!, path[at + 4]!];
      for (const t of [0.25, 0.5, 0.75]) add(square(x, x1, x2, t), square(y, y1, y2, t));
      x = x2;
      y = y2;
      open!.curves += 1;
      add(x, y);
      at += 5;
    } else break;
  }
  for (const subpath of found) {
    const { points } = subpath;
    const end = points.length - 2;
    subpath.closed ||= Math.hypot(points[0]! - points[end]!, points[1]! - points[end + 1]!) < 0.3;
  }
  return found;
}

const cubic = (a: number, b: number, c: number, d: number, t: number): number => {
  const s = 1 - t;
  return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
};
const square = (a: number, b: number, c: number, t: number): number =>
  (1 - t) * (1 - t) * a + 2 * (1 - t) * t * b + t * t * c;

/** True for a rectangle along the page's edges. */
export function isRectangle({ points, curves, box }: Subpath): boolean {
  if (curves > 0 || points.length < 8 || points.length > 10) return false;
  for (let at = 0; at < points.length; at += 2) {
    const x = points[at]!;
    const y = points[at + 1]!;
    const onSide = Math.min(Math.abs(x - box.left), Math.abs(x - box.right)) < 0.1;
    if (!onSide || Math.min(Math.abs(y - box.top), Math.abs(y - box.bottom)) > 0.1) return false;
  }
  return true;
}

/** Smallest and greatest width of a line round a number, in points. */
const narrowest = 5;
export const widest = 90;
/** How far the points of a circle may lie off it, as a share of its radius: a circle of four curves is within 0.0003. */
const offCircle = 0.05;

/** Adds a small closed line to the rings; a box along the page's edges is a cell, not a ring. */
export function addRing(subpath: Subpath, content: PageContent): void {
  const { box, points, curves, closed } = subpath;
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  if (width < narrowest || height < narrowest || width > widest || height > widest) return;
  if (!closed || points.length < 10 || isRectangle(subpath)) return;
  const x = (box.left + box.right) / 2;
  const y = (box.top + box.bottom) / 2;
  const radius = (width + height) / 4;
  let round = Math.abs(width - height) < 0.12 * radius && (curves >= 2 || points.length >= 20);
  for (let at = 0; round && at < points.length; at += 2)
    round = Math.abs(Math.hypot(points[at]! - x, points[at + 1]! - y) / radius - 1) < offCircle;
  if (round || isConvex(points)) content.rings.push({ x, y, box, round });
}

/** True for a line that turns one way only, as an oval, a hexagon or a flag does. */
function isConvex(points: readonly number[]): boolean {
  let turn = 0;
  const count = points.length / 2;
  if (count > 60) return false;
  for (let at = 0; at < count; at += 1) {
    const [ax, ay] = [points[at * 2]!, points[at * 2 + 1]!];
    const b = ((at + 1) % count) * 2;
    const c = ((at + 2) % count) * 2;
    const cross =
      (points[b]! - ax) * (points[c + 1]! - points[b + 1]!) -
      (points[b + 1]! - ay) * (points[c]! - points[b]!);
    if (Math.abs(cross) < 1e-3) continue;
    if (turn !== 0 && cross > 0 !== turn > 0) return false;
    turn = cross;
  }
  return turn !== 0;
}
