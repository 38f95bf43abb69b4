import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Extent } from './view.ts';

/** The inner extent of an element in pixels, kept up to date; null before it is drawn. */
export function useExtent(element: RefObject<HTMLElement | null>): Extent | null {
  const [extent, setExtent] = useState<Extent | null>(null);
  useLayoutEffect(() => {
    const pane = element.current;
    if (!pane) return;
    const measure = () => setExtent({ width: pane.clientWidth, height: pane.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(pane);
    return () => observer.disconnect();
  }, [element]);
  return extent;
}
