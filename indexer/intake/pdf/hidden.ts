import { holds } from './matrix.ts';
import type { Cover, PageContent, Piece } from './page-content.ts';
import { apart, indistinct, white } from './painting.ts';

/** Side of the squares by which covers are found, in points. */
const square = 48;

/** The pieces of a page that a person sees: neither drawn unseen, cut away, painted over nor in the colour of the ground. */
export function shownPieces({ pieces, covers, width, height }: PageContent): Piece[] {
  const index = new CoverIndex(covers, width, height);
  return pieces.filter(piece => piece.shown && isSeen(piece, index));
}

function isSeen(piece: Piece, index: CoverIndex): boolean {
  const { order, colour } = piece;
  const points = pointsOf(piece);
  let under = 0;
  let blended = 0;
  for (let at = 0; at < points.length; at += 2) {
    const x = points[at]!;
    const y = points[at + 1]!;
    const above = index.last(x, y, Number.POSITIVE_INFINITY);
    if (above && above.order > order) under += 1;
    else if (colour !== null) {
      const below = index.last(x, y, order);
      const ground = below ? below.colour : white;
      if (ground !== null && apart(ground, colour) < indistinct) blended += 1;
    }
  }
  return (under + blended) * 4 < points.length;
}

/** Points along the middle of a piece's letters. */
function pointsOf({ x, y, endX, endY, size }: Piece): number[] {
  const length = Math.hypot(endX - x, endY - y) || 1;
  const up = (0.3 * size) / length;
  const count = Math.min(9, Math.max(3, Math.round(length / (0.6 * size))));
  const points: number[] = [];
  for (let nth = 0; nth < count; nth += 1) {
    const part = (nth + 0.5) / count;
    points.push(x + (endX - x) * part + (endY - y) * up, y + (endY - y) * part - (endX - x) * up);
  }
  return points;
}

/** Finds what is painted last over a point. */
class CoverIndex {
  private readonly squares: Cover[][] = [];
  private readonly across: number;

  constructor(covers: readonly Cover[], width: number, height: number) {
    this.across = Math.ceil(width / square) + 1;
    const down = Math.ceil(height / square) + 1;
    for (const cover of covers) {
      const { left, top, right, bottom } = cover.box;
      const lastRow = Math.min(down - 1, Math.floor(bottom / square));
      const lastColumn = Math.min(this.across - 1, Math.floor(right / square));
      for (let row = Math.max(0, Math.floor(top / square)); row <= lastRow; row += 1)
        for (let column = Math.max(0, Math.floor(left / square)); column <= lastColumn; column += 1)
          this.put(row * this.across + column, cover);
    }
  }

  private put(square: number, cover: Cover): void {
    const found = this.squares[square];
    if (found) found.push(cover);
    else this.squares[square] = [cover];
  }

  /** The last cover before `order` that holds the point. */
  last(x: number, y: number, order: number): Cover | null {
    const near = this.squares[Math.floor(y / square) * this.across + Math.floor(x / square)];
    if (!near) return null;
    for (let at = near.length - 1; at >= 0; at -= 1) {
      const cover = near[at]!;
      if (cover.order >= order || !holds(cover.box, x, y)) continue;
      if (!cover.outline || isInside(cover.outline, x, y)) return cover;
    }
    return null;
  }
}

/** True for a point inside a closed line, by how often a ray to the right crosses it. */
function isInside(outline: readonly number[], x: number, y: number): boolean {
  let inside = false;
  const count = outline.length;
  for (let at = 0, before = count - 2; at < count; before = at, at += 2) {
    const [ay, by] = [outline[at + 1]!, outline[before + 1]!];
    if (ay > y === by > y) continue;
    const crossing = outline[at]! + ((y - ay) / (by - ay)) * (outline[before]! - outline[at]!);
    if (x < crossing) inside = !inside;
  }
  return inside;
}
