import { type RefObject, useEffect, useRef } from 'react';
import type { Point } from './view.ts';

export interface Gestures {
  /** Dragged by so many pixels. */
  onPan(by: Point): void;
  /** Pinched, or turned the wheel: enlarged by a factor about a point of the pane. */
  onZoom(factor: number, about: Point): void;
  /** Touched without dragging. */
  onTap(at: Point): void;
  /** The pointer rests over a point, or has left. */
  onHover(at: Point | null): void;
}

/** Below this a finger rests; beyond, it drags. In pixels. */
const slack = 6;
/** What a wheel says for one notch, as a factor. */
const wheelFactor = (delta: number) => 2 ** (-delta / 240);

/** Dragging, pinching, the wheel and taps on a pane, by mouse, pen and fingers alike. */
export function useGestures(element: RefObject<HTMLElement | null>, gestures: Gestures): void {
  const handlers = useRef(gestures);
  handlers.current = gestures;
  useEffect(() => {
    const pane = element.current;
    if (!pane) return;
    const fingers = new Map<number, Point>();
    let travelled = 0;

    const at = (event: MouseEvent): Point => {
      const box = pane.getBoundingClientRect();
      return { x: event.clientX - box.left - pane.clientLeft, y: event.clientY - box.top - pane.clientTop };
    };
    const down = (event: PointerEvent) => {
      if (event.button !== 0 || (event.target as Element).closest('[data-own-gestures]')) return;
      if (fingers.size === 0) travelled = 0;
      fingers.set(event.pointerId, at(event));
      pane.setPointerCapture(event.pointerId);
    };
    const move = (event: PointerEvent) => {
      const now = at(event);
      const before = fingers.get(event.pointerId);
      if (!before) return handlers.current.onHover(event.pointerType === 'mouse' ? now : null);
      const by = { x: now.x - before.x, y: now.y - before.y };
      travelled += Math.hypot(by.x, by.y);
      fingers.set(event.pointerId, now);
      if (travelled <= slack) return;
      const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
      if (!other) return handlers.current.onPan(by);
      const apart = (a: Point) => Math.max(1, Math.hypot(a.x - other.x, a.y - other.y));
      handlers.current.onPan({ x: by.x / 2, y: by.y / 2 });
      handlers.current.onZoom(apart(now) / apart(before), {
        x: (now.x + other.x) / 2,
        y: (now.y + other.y) / 2,
      });
    };
    const up = (event: PointerEvent) => {
      const held = fingers.delete(event.pointerId);
      if (held && fingers.size === 0 && travelled <= slack && event.type === 'pointerup')
        handlers.current.onTap(at(event));
    };
    const leave = () => handlers.current.onHover(null);
    const wheel = (event: WheelEvent) => {
      event.preventDefault();
      const delta = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * 16 : event.deltaY;
      handlers.current.onZoom(wheelFactor(delta), at(event));
    };

    const ended = new AbortController();
    const { signal } = ended;
    pane.addEventListener('pointerdown', down, { signal });
    pane.addEventListener('pointermove', move, { signal });
    pane.addEventListener('pointerup', up, { signal });
    pane.addEventListener('pointercancel', up, { signal });
    pane.addEventListener('pointerleave', leave, { signal });
    pane.addEventListener('wheel', wheel, { signal, passive: false });
    return () => ended.abort();
  }, [element]);
}
