import { useId, useLayoutEffect, useRef, useState } from 'react';
import type { Drawing as Lines } from '../../indexer/index.ts';
import { Dimension } from './dimension.tsx';
import { layOut, type PlacedView, type Room } from './lay-out.ts';
import { pathData } from './path.ts';
import './drawing.css';

interface DrawingProps {
  drawing: Lines;
  /** What it shows, in words, for those who do not see it. */
  title: string;
  /** The most room it may fill, in pixels; a smaller scale is chosen rather than squeezing. */
  room?: Room;
  /** The dimension in hand: drawn thick and in the accent. */
  focus?: string | undefined;
}

/** A part drawn to scale from its numbers, with the scale named. */
export function Drawing({ drawing, title, room = { width: 440, height: 330 }, focus }: DrawingProps) {
  const pattern = useId();
  const figure = useRef<HTMLElement>(null);
  const [space, setSpace] = useState(room.width);
  useLayoutEffect(() => {
    const watch = new ResizeObserver(([entry]) => setSpace(entry?.contentRect.width || room.width));
    if (figure.current) watch.observe(figure.current);
    return () => watch.disconnect();
  }, [room.width]);
  const { scale, k, views, dimensions, width, height } = layOut(drawing, {
    width: Math.min(space, room.width),
    height: room.height,
  });
  return (
    <figure className="drawing" ref={figure}>
      <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} role="img" aria-label={title}>
        <defs>
          <pattern
            id={pattern}
            width="5"
            height="5"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <line className="thin second" x1="0" y1="0" x2="0" y2="5" />
          </pattern>
        </defs>
        {views.map((placed, order) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is drawn anew as a whole
          <ViewLines key={order} placed={placed} k={k} hatching={`url(#${pattern})`} />
        ))}
        {dimensions.map(({ key, laid }) => (
          <Dimension key={`${key} ${laid.text.words}`} laid={laid} focused={key === focus} />
        ))}
      </svg>
      <figcaption className="label">Scale {scale.name}</figcaption>
    </figure>
  );
}

/** Line weights after ISO 128: what is seen is thick, everything else thin. */
const layers = [
  ['outlines', 'outline'],
  ['thin', 'thin'],
  ['hidden', 'thin hidden'],
  ['centre', 'thin second centre'],
] as const;

function ViewLines({
  placed: { view, place },
  k,
  hatching,
}: {
  placed: PlacedView;
  k: number;
  hatching: string;
}) {
  return (
    <>
      {view.hatch.map(path => (
        <path key={pathData(path, place, k)} d={pathData(path, place, k)} fill={hatching} />
      ))}
      {layers.map(([layer, classes]) =>
        view[layer].map((path, order) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is drawn anew as a whole
          <path key={`${layer} ${order}`} className={classes} d={pathData(path, place, k)} />
        )),
      )}
    </>
  );
}
