/** An affine map as PDF writes it (ISO 32000-1, 8.3.3): x' = ax + cy + e, y' = bx + dy + f. */
export type Matrix = readonly [number, number, number, number, number, number];

export const identity: Matrix = [1, 0, 0, 1, 0, 0];

/** First `inner`, then `outer`. */
export function times(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  return [
    a * inner[0] + c * inner[1],
    b * inner[0] + d * inner[1],
    a * inner[2] + c * inner[3],
    b * inner[2] + d * inner[3],
    a * inner[4] + c * inner[5] + e,
    b * inner[4] + d * inner[5] + f,
  ];
}

export const mapX = (m: Matrix, x: number, y: number): number => m[0] * x + m[2] * y + m[4];
export const mapY = (m: Matrix, x: number, y: number): number => m[1] * x + m[3] * y + m[5];

/** A rectangle of the shown page: points, from its top left. */
export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** The box around a mapped rectangle. */
export function mapBox(m: Matrix, left: number, top: number, right: number, bottom: number): Box {
  const xs = [mapX(m, left, top), mapX(m, right, top), mapX(m, left, bottom), mapX(m, right, bottom)];
  const ys = [mapY(m, left, top), mapY(m, right, top), mapY(m, left, bottom), mapY(m, right, bottom)];
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

export const meet = (a: Box, b: Box): Box => ({
  left: Math.max(a.left, b.left),
  top: Math.max(a.top, b.top),
  right: Math.min(a.right, b.right),
  bottom: Math.min(a.bottom, b.bottom),
});

export const holds = (box: Box, x: number, y: number): boolean =>
  x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;
