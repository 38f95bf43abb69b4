import type { PageContent, Ring } from './page-content.ts';
import { StrokeEnds } from './stroke-ends.ts';
import type { Word } from './words.ts';

/** Sectors of a circle; one that is drawn by strokes or arcs has ends in nearly all of them. */
const sectors = 12;
/** How far ends of a circle's pieces may lie off it, as a share of its radius. */
const off = 0.1;

/** The lines round numbers of a page: closed curves, and circles that are drawn in pieces. */
export class Rings {
  readonly ends: StrokeEnds;
  private readonly pieces: StrokeEnds;
  private readonly whole: readonly Ring[];

  constructor({ rings, strokes, arcs, width }: PageContent) {
    this.whole = rings;
    this.ends = new StrokeEnds(strokes, width);
    this.pieces = arcs.length > 0 ? new StrokeEnds([...strokes, ...arcs], width) : this.ends;
  }

  /** The smallest ring round a word with its middle at a point that is about as large as it needs to be. */
  round(x: number, y: number, { left, right, size }: Pick<Word, 'left' | 'right' | 'size'>): Ring | null {
    const width = right - left;
    let best: Ring | null = null;
    for (const ring of this.whole) {
      const { box } = ring;
      const [across, down] = [box.right - box.left, box.bottom - box.top];
      if (Math.abs(ring.x - x) > 0.22 * across || Math.abs(ring.y - y) > 0.22 * down) continue;
      if (Math.max(across, down) < Math.max(width, size) || Math.min(across, down) < 0.9 * size) continue;
      if (Math.min(across, down) > 4.5 * size) continue;
      if (!best || across < best.box.right - best.box.left) best = ring;
    }
    return best ?? this.drawnInPieces(x, y, Math.max(0.6 * size, 0.5 * width), 2.3 * size);
  }

  /** The ring round two words one over the other, with a line between them: the number above, the quantity under it. */
  split(x: number, y: number, width: number, size: number): Ring | null {
    const ring = this.round(x, y, { left: 0, right: width, size: 1.6 * size });
    const reach = ring ? (ring.box.right - ring.box.left) / 2 : 0;
    return ring && this.ends.crosses(x, y, reach, 0.5 * size) ? ring : null;
  }

  /** A circle about a point, by the ends of the strokes and arcs that it is made of. */
  private drawnInPieces(x: number, y: number, least: number, most: number): Ring | null {
    const ends = this.pieces.near(x, y, Math.max(most, 1.4 * least) * 1.15);
    if (ends.length < 2 * sectors) return null;
    const points: { far: number; sector: number }[] = [];
    for (let at = 0; at < ends.length; at += 2) {
      const [dx, dy] = [ends[at]! - x, ends[at + 1]! - y];
      const turn = Math.atan2(dy, dx) / (2 * Math.PI) + 1;
      points.push({ far: Math.hypot(dx, dy), sector: Math.floor(turn * sectors) % sectors });
    }
    points.sort((a, b) => a.far - b.far);
    for (const { far } of points) {
      if (far < least) continue;
      const on = new Set<number>();
      for (const point of points)
        if (point.far >= far && point.far <= far * (1 + 2 * off)) on.add(point.sector);
      if (on.size < sectors - 1) continue;
      const radius = far * (1 + off);
      return {
        x,
        y,
        box: { left: x - radius, top: y - radius, right: x + radius, bottom: y + radius },
        round: true,
      };
    }
    return null;
  }
}
