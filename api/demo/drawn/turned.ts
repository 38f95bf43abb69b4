import type { Pen, Point } from './pen.ts';

/** Weights of lines: outlines, and what lies within them (ISO 128-2 draws the second half as wide). */
const thick = 0.9;
const thin = 0.45;
/** How much of a circle's width is seen along the axis. */
const squeeze = 0.36;

/** Draws turned parts along one slanting axis, each seen from its near end. */
export class Axis {
  private readonly pen: Pen;
  private readonly start: Point;
  private readonly angle: number;

  constructor(pen: Pen, start: Point, angle: number) {
    this.pen = pen;
    this.start = start;
    this.angle = angle;
  }

  /** The point so far along the axis and so far off it. */
  at(along: number, off = 0): Point {
    const [cos, sin] = [Math.cos(this.angle), Math.sin(this.angle)];
    return [this.start[0] + along * cos - off * sin, this.start[1] + along * sin + off * cos];
  }

  private ring(along: number, radius: number, weight: number, off = 0, filled = true): void {
    this.pen.ellipse(this.at(along, off), radius * squeeze, radius, this.angle, weight, filled);
  }

  /** A drum, from its far end to its near one. */
  drum(along: number, length: number, radius: number, off = 0): void {
    const far = along + length;
    this.ring(far, radius, thick, off);
    const corners = [
      this.at(along, off + radius),
      this.at(far, off + radius),
      this.at(far, off - radius),
      this.at(along, off - radius),
    ];
    this.pen.fill(corners, 1);
    this.pen.line(corners[0]!, corners[1]!, thick);
    this.pen.line(corners[3]!, corners[2]!, thick);
    this.ring(along, radius, thick, off);
  }

  /** A bore or an edge on a near face. */
  face(along: number, radius: number, off = 0): void {
    this.ring(along, radius, thin, off);
  }

  /** Strokes on a near face from one radius to another: teeth, balls of a bearing, knurling. */
  rays(along: number, inner: number, outer: number, count: number, off = 0): void {
    for (let nth = 0; nth < count; nth += 1) {
      const turn = (2 * Math.PI * nth) / count;
      const spot = (radius: number) =>
        this.at(along + radius * squeeze * Math.cos(turn), off + radius * Math.sin(turn));
      this.pen.line(spot(inner), spot(outer), thin);
    }
  }

  /** Teeth round a drum's near edge. */
  teeth(along: number, radius: number, count: number, off = 0): void {
    const points = Array.from({ length: count * 4 }, (_, nth): Point => {
      const reach = nth % 4 < 2 ? radius + 2.6 : radius;
      const turn = (2 * Math.PI * nth) / (count * 4);
      return this.at(along + reach * squeeze * Math.cos(turn), off + reach * Math.sin(turn));
    });
    this.pen.path(points, thick, { closed: true, filled: true });
  }

  /** A screw: its thread away from the viewer, its head near. */
  screw(along: number, length: number, radius: number, off: number): void {
    this.drum(along + 4, length, radius * 0.55, off);
    for (let at = along + 7; at < along + 3 + length; at += 2.4)
      this.pen.line(this.at(at, off - radius * 0.5), this.at(at + 1.2, off + radius * 0.5), thin);
    this.drum(along, 4, radius, off);
    this.pen.line(this.at(along, off - radius * 0.6), this.at(along, off + radius * 0.6), thin);
  }

  /** A flat bar across the axis, from one place off it to another. */
  bar(along: number, from: number, to: number, half: number): void {
    const side = half * squeeze;
    const corners = [
      this.at(along - side, from),
      this.at(along + side, from),
      this.at(along + side, to),
      this.at(along - side, to),
    ];
    this.pen.fill(corners, 1);
    this.pen.line(corners[0]!, corners[3]!, thick);
    this.pen.line(corners[1]!, corners[2]!, thick);
    const edge = this.at(along + side + 4, to);
    this.pen.line(this.at(along + side + 4, from), edge, thick);
  }

  /** A coil spring. */
  coil(along: number, length: number, radius: number, turns: number): void {
    for (let nth = turns; nth >= 0; nth -= 1)
      this.pen.ellipse(
        this.at(along + (length * nth) / turns),
        radius * squeeze,
        radius,
        this.angle,
        thick,
        false,
      );
  }

  centreLine(from: number, to: number, off = 0): void {
    this.pen.chain(this.at(from, off), this.at(to, off), 0.35);
  }
}
