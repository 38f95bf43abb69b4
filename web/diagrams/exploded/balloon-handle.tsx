import { type KeyboardEvent, useRef } from 'react';
import type { Balloon } from './balloon.ts';
import type { Point } from './view.ts';

interface BalloonHandleProps {
  balloon: Balloon;
  at: Point;
  held: boolean;
  onHold: () => void;
  onDrag: (by: Point) => void;
  onDrop: () => void;
  onNudge: (by: Point) => void;
  onRemove: () => void;
}

/** A balloon to take hold of: by a finger, or by the keyboard with arrows and Delete. */
export function BalloonHandle(props: BalloonHandleProps) {
  const { balloon, at, held, onHold, onDrag, onDrop, onNudge, onRemove } = props;
  const last = useRef<Point | null>(null);
  const moved = useRef(false);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (step) onNudge({ x: step[0]!, y: step[1]! });
    else if (event.key === 'Delete') onRemove();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <button
      type="button"
      data-own-gestures
      className={held ? 'balloon-handle held' : 'balloon-handle'}
      aria-label={`Balloon ${balloon.ref}: arrow keys move it, Delete takes it out`}
      aria-pressed={held}
      style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
      onClick={onHold}
      onKeyDown={onKeyDown}
      onPointerDown={event => {
        event.currentTarget.setPointerCapture(event.pointerId);
        last.current = { x: event.clientX, y: event.clientY };
        moved.current = false;
      }}
      onPointerMove={event => {
        if (!last.current) return;
        const by = { x: event.clientX - last.current.x, y: event.clientY - last.current.y };
        if (!moved.current && Math.hypot(by.x, by.y) < 4) return;
        moved.current = true;
        last.current = { x: event.clientX, y: event.clientY };
        onDrag(by);
      }}
      onPointerUp={() => {
        last.current = null;
        if (moved.current) onDrop();
      }}
    >
      {balloon.ref}
    </button>
  );
}
