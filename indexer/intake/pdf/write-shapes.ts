import { type Box, mapBox } from './matrix.ts';
import { operators as op } from './operators.ts';
import type { Cover, PageContent } from './page-content.ts';
import { faintest, type Painting, white } from './painting.ts';
import { addRing, isRectangle, readSubpaths, type Subpath, widest } from './read-path.ts';

/** A stroke or fill thinner than this is a line, in points. */
const thinnest = 2.2;
/** The share of what lies under it that an opaque thing lets through, at most. */
const opaque = 0.9;
/** Corners of a path that is looked at closely. */
const mostCorners = 200_000;

/** Writes what a page's paths and pictures are to a reader: rules, strokes, rings, and what covers the things under it. */
export class ShapeWriter {
  private readonly content: PageContent;
  private corners = 0;

  constructor(content: PageContent) {
    this.content = content;
  }

  /** An image, which fills the unit square of its map. */
  picture(now: Painting, order: number): void {
    const { map, fillAlpha, masked, blends } = now;
    if (fillAlpha < opaque || masked || blends) return;
    this.cover({ box: mapBox(map, 0, 0, 1, 1), outline: null, colour: null, order, picture: true }, now);
  }

  /** A shading fills all that is not cut away. */
  shading(now: Painting, order: number): void {
    this.cover({ box: now.clip, outline: null, colour: null, order, picture: false }, now);
  }

  /** A path, and the operator that says whether it is filled, stroked or both. */
  path(painted: number, path: Float32Array, now: Painting, order: number): void {
    if (painted === op.endPath) return;
    this.corners += path.length;
    if (this.corners > mostCorners * 2) return;
    const fills = painted === op.fill || painted === op.eoFill || bothWays.has(painted);
    const strokes = !fills || bothWays.has(painted);
    const filled = fills && now.fillAlpha > faintest;
    const stroked = strokes && now.strokeAlpha > faintest && now.stroke !== white;
    if (!filled && !stroked) return;
    for (const subpath of readSubpaths(path, now.map)) {
      if (painted === op.closeStroke) subpath.closed = true;
      if (outside(subpath, now.clip)) continue;
      if (stroked) this.stroked(subpath, now);
      if (filled) this.filled(subpath, stroked, now, order);
    }
  }

  private cover(whole: Cover, { clip }: Painting): void {
    const box = {
      left: Math.max(whole.box.left, clip.left),
      top: Math.max(whole.box.top, clip.top),
      right: Math.min(whole.box.right, clip.right),
      bottom: Math.min(whole.box.bottom, clip.bottom),
    };
    if (box.right - box.left < thinnest || box.bottom - box.top < thinnest) return;
    this.content.covers.push({ ...whole, box });
  }

  private stroked(subpath: Subpath, now: Painting): void {
    addRing(subpath, this.content);
    const { points, closed, curves } = subpath;
    if (curves > 0 && subpath.lines === 0) {
      if (!closed) this.arc(subpath);
      return;
    }
    for (let at = 2; at < points.length; at += 2)
      this.segment(points[at - 2]!, points[at - 1]!, points[at]!, points[at + 1]!, now);
    const end = points.length - 2;
    if (closed && end > 2) this.segment(points[end]!, points[end + 1]!, points[0]!, points[1]!, now);
  }

  /** A part of a circle no larger than a ring may be. */
  private arc({ points, box }: Subpath): void {
    if (box.right - box.left > widest || box.bottom - box.top > widest) return;
    const { arcs } = this.content;
    for (let at = 0; at < points.length; at += 2)
      arcs.push(points[at]!, points[at + 1]!, points[at]!, points[at + 1]!);
  }

  private segment(x1: number, y1: number, x2: number, y2: number, { clip }: Painting): void {
    const across = Math.abs(x2 - x1);
    const down = Math.abs(y2 - y1);
    if (across + down < 1) return;
    this.content.strokes.push(x1, y1, x2, y2);
    if (across < 0.4 && down > 3) this.rule(true, (x1 + x2) / 2, y1, y2, clip);
    else if (down < 0.4 && across > 3) this.rule(false, (y1 + y2) / 2, x1, x2, clip);
  }

  private rule(upright: boolean, at: number, a: number, b: number, clip: Box): void {
    const [low, high] = upright ? [clip.top, clip.bottom] : [clip.left, clip.right];
    const from = Math.max(Math.min(a, b), low);
    const to = Math.min(Math.max(a, b), high);
    const seen = upright
      ? at >= clip.left - 1 && at <= clip.right + 1
      : at >= clip.top - 1 && at <= clip.bottom + 1;
    if (seen && to - from > 3) this.content.rules.push({ upright, at, from, to });
  }

  private filled(subpath: Subpath, stroked: boolean, now: Painting, order: number): void {
    const { box, points } = subpath;
    const { fill, fillAlpha, blends, masked, clip } = now;
    const width = box.right - box.left;
    const height = box.bottom - box.top;
    if (Math.min(width, height) <= thinnest) {
      if (fill === white || stroked) return;
      if (height > width && height > 3)
        this.rule(true, (box.left + box.right) / 2, box.top, box.bottom, clip);
      else if (width > 3) this.rule(false, (box.top + box.bottom) / 2, box.left, box.right, clip);
      if (Math.max(width, height) > 3) this.content.strokes.push(...longest(points));
      return;
    }
    if (!stroked && fill !== white) addRing(subpath, this.content);
    if (fillAlpha < opaque || blends || masked) return;
    const outline = isRectangle(subpath) ? null : points;
    this.cover({ box, outline, colour: fill, order, picture: false }, now);
  }
}

const bothWays = new Set<number>([op.fillStroke, op.eoFillStroke, op.closeFillStroke, op.closeEOFillStroke]);

const outside = ({ box }: Subpath, clip: Box): boolean =>
  box.right < clip.left || box.left > clip.right || box.bottom < clip.top || box.top > clip.bottom;

/** A thin filled shape is the line between those of its corners that are farthest apart. */
function longest(points: readonly number[]): [number, number, number, number] {
  let best: [number, number, number, number] = [0, 0, 0, 0];
  let most = -1;
  const count = Math.min(points.length, 40);
  for (let a = 0; a < count; a += 2)
    for (let b = a + 2; b < count; b += 2) {
      const length = Math.hypot(points[a]! - points[b]!, points[a + 1]! - points[b + 1]!);
      if (length > most) {
        most = length;
        best = [points[a]!, points[a + 1]!, points[b]!, points[b + 1]!];
      }
    }
  return best;
}
