import type { Place } from './find-on-drawing.tsx';
import { type Extent, inPane, type Point, type View } from './view.ts';

interface FoundMarkProps {
  place: Place;
  /** The one that is gone to, rather than another of them. */
  shown: boolean;
  view: View;
  whole: Extent;
}

/** Frames words that were looked for. */
export function FoundMark({ place, shown, view, whole }: FoundMarkProps) {
  const from = inPane({ x: place.left, y: place.top }, view, whole);
  const to = inPane({ x: place.right, y: place.bottom }, view, whole);
  return (
    <i
      className={shown ? 'found-mark shown' : 'found-mark'}
      aria-hidden="true"
      style={{
        transform: `translate(${from.x - 3}px, ${from.y - 3}px)`,
        width: to.x - from.x + 6,
        height: to.y - from.y + 6,
      }}
    />
  );
}

export const middleOf = ({ left, top, right, bottom }: Place): Point => ({
  x: (left + right) / 2,
  y: (top + bottom) / 2,
});
