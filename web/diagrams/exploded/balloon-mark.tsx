import type { Balloon } from './balloon.ts';
import type { Point } from './view.ts';

interface BalloonMarkProps {
  balloon: Balloon;
  /** In pixels of the pane. */
  at: Point;
  /** `loose`: the list has no line of that number. */
  state: 'chosen' | 'near' | 'doubtful' | 'loose';
}

/** What is told of a balloon on the drawing. No target of its own: a tap means the nearest. */
export function BalloonMark({ balloon, at, state }: BalloonMarkProps) {
  return (
    <i
      className={`balloon-mark ${state}`}
      style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
      aria-hidden="true"
    >
      {state === 'chosen' ? balloon.ref : null}
    </i>
  );
}
