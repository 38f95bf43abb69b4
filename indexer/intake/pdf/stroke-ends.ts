import type { Word } from './words.ts';

/** Side of the squares by which ends of strokes are found, in points. */
const cell = 12;

/** Ends of strokes, found by place. */
export class StrokeEnds {
  private readonly squares = new Map<number, number[]>();
  private readonly strokes: readonly number[];
  private readonly across: number;

  constructor(strokes: readonly number[], width: number) {
    this.strokes = strokes;
    this.across = Math.ceil(width / cell) + 2;
    for (let at = 0; at < strokes.length; at += 2) {
      const key = this.key(strokes[at]!, strokes[at + 1]!);
      const found = this.squares.get(key);
      if (found) found.push(at);
      else this.squares.set(key, [at]);
    }
  }

  /** True where a stroke that is longer than the word is high ends beside it and points at it. */
  reach(x: number, y: number, word: Word): boolean {
    const halfWidth = (word.right - word.left) / 2;
    const reach = Math.max(halfWidth, 0.4 * word.size) + 1.1 * word.size;
    const steps = Math.ceil(reach / cell);
    for (let row = -steps; row <= steps; row += 1)
      for (let column = -steps; column <= steps; column += 1)
        for (const at of this.squares.get(this.key(x + column * cell, y + row * cell)) ?? [])
          if (this.points(at, x, y, reach, word.size)) return true;
    return false;
  }

  private points(at: number, x: number, y: number, reach: number, size: number): boolean {
    const other = at % 4 === 0 ? at + 2 : at - 2;
    const [ex, ey, fx, fy] = [
      this.strokes[at]!,
      this.strokes[at + 1]!,
      this.strokes[other]!,
      this.strokes[other + 1]!,
    ];
    const length = Math.hypot(fx - ex, fy - ey);
    const distance = Math.hypot(ex - x, ey - y);
    if (length < 0.9 * size || distance > reach || Math.hypot(fx - x, fy - y) < distance) return false;
    // The line drawn on passes the middle of the word by less than half its height.
    const off = Math.abs((fx - ex) * (y - ey) - (fy - ey) * (x - ex)) / length;
    return off < 0.75 * size;
  }

  /** True where a stroke lies level or upright through a point, with its ends about so far from it. */
  crosses(x: number, y: number, reach: number, off: number): boolean {
    const ends = this.near(x, y, 1.25 * reach + 1);
    for (let at = 0; at < ends.length; at += 2) {
      const [dx, dy] = [ends[at]! - x, ends[at + 1]! - y];
      if (Math.hypot(dx, dy) < 0.7 * reach || Math.min(Math.abs(dx), Math.abs(dy)) > off) continue;
      for (let to = at + 2; to < ends.length; to += 2)
        if (Math.hypot(ends[to]! - x + dx, ends[to + 1]! - y + dy) < 0.3 * reach + off) return true;
    }
    return false;
  }

  /** The ends within a distance of a point: x and y in turn. */
  near(x: number, y: number, reach: number): number[] {
    const found: number[] = [];
    const steps = Math.ceil(reach / cell);
    for (let row = -steps; row <= steps; row += 1)
      for (let column = -steps; column <= steps; column += 1)
        for (const at of this.squares.get(this.key(x + column * cell, y + row * cell)) ?? []) {
          const [ex, ey] = [this.strokes[at]!, this.strokes[at + 1]!];
          if (Math.hypot(ex - x, ey - y) <= reach) found.push(ex, ey);
        }
    return found;
  }

  private key(x: number, y: number): number {
    return Math.floor(y / cell) * this.across + Math.floor(x / cell);
  }
}
