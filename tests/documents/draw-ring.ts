import type { Sheet } from './pdf-page.ts';

/** How a program draws a circle: as one closed curve, as parts of one, or as straight strokes. */
export type Ring = 'curves' | 'halves' | 'quarters' | 'polygon' | 'strokes' | 'hexagon';

export function drawRing(sheet: Sheet, x: number, y: number, radius: number, ring: Ring): void {
  if (ring === 'curves') sheet.circle(x, y, radius);
  else if (ring === 'halves' || ring === 'quarters') {
    const parts = ring === 'halves' ? 2 : 4;
    for (let nth = 0; nth < parts; nth += 1)
      sheet.arc(x, y, radius, (nth * 2 * Math.PI) / parts, ((nth + 1) * 2 * Math.PI) / parts);
  } else {
    const corners = ring === 'hexagon' ? 6 : 24;
    const reach = ring === 'hexagon' ? radius * 1.12 : radius;
    const points = Array.from({ length: corners }, (_, nth): [number, number] => {
      const angle = (nth * 2 * Math.PI) / corners;
      return [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
    });
    if (ring === 'strokes')
      points.forEach((point, nth) => {
        sheet.path([point, points[(nth + 1) % corners]!]);
      });
    else sheet.path(points, true);
  }
}

/** The line from a number to its part. */
export type Leader = 'straight' | 'bent' | 'arrow' | 'dot' | 'none';

interface Spot {
  x: number;
  y: number;
}

export function drawLeader(sheet: Sheet, from: Spot, to: Spot, radius: number, leader: Leader): void {
  if (leader === 'none') return;
  const bend = leader === 'bent' ? { x: from.x + radius + 6, y: from.y } : to;
  const far = Math.hypot(bend.x - from.x, bend.y - from.y);
  const [dx, dy] = [(bend.x - from.x) / far, (bend.y - from.y) / far];
  const start: [number, number] = [from.x + dx * radius, from.y + dy * radius];
  if (leader === 'bent') sheet.path([start, [bend.x, bend.y], [to.x, to.y]], false, 0.5);
  else sheet.line(...start, to.x, to.y, 0.5);
  if (leader === 'dot') sheet.circle(to.x, to.y, 1.2);
  if (leader === 'arrow')
    for (const side of [0.3, -0.3]) {
      const angle = Math.atan2(-dy, -dx) + side;
      sheet.line(to.x, to.y, to.x + 5 * Math.cos(angle), to.y + 5 * Math.sin(angle), 0.5);
    }
}
