import type { Path, Point } from '../../indexer/index.ts';

/** Where a point of a drawing lies on the page, in pixels. */
export type Place = (point: Point) => Point;

const figure = (n: number) => Math.round(n * 100) / 100;

/** A path of a drawing as SVG path data; `k` is pixels to a millimetre. */
export function pathData(path: Path, place: Place, k: number): string {
  return path
    .map(stroke => {
      if (stroke.to === 'close') return 'Z';
      const [x, y] = place(stroke.at).map(figure) as [number, number];
      if (stroke.to !== 'arc') return `${stroke.to === 'move' ? 'M' : 'L'}${x} ${y}`;
      const radius = figure(stroke.radius * k);
      return `A${radius} ${radius} 0 ${stroke.large ? 1 : 0} ${stroke.clockwise ? 1 : 0} ${x} ${y}`;
    })
    .join('');
}
