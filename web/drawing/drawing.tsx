import { useId } from 'react';
import type { Drawing as Lines, Path } from '../../indexer/index.ts';
import { Dimension } from './dimension.tsx';
import { layOut, type Room } from './lay-out.ts';
import { pathData } from './path.ts';
import './drawing.css';

interface DrawingProps {
  drawing: Lines;
  /** What it shows, in words, for those who do not see it. */
  title: string;
  /** The room it may fill, in pixels; a smaller scale is chosen rather than squeezing. */
  room?: Room;
  /** The dimension in hand: drawn thick and in the accent. */
  focus?: string | undefined;
}

/** Line weights after ISO 128: what is seen is thick, everything else thin. */
const layers = [
  ['outlines', 'outline'],
  ['thin', 'thin'],
  ['hidden', 'thin hidden'],
  ['centre', 'thin second centre'],
] as const;

/** A part drawn to scale from its numbers, with the scale named. */
export function Drawing({ drawing, title, room = { width: 420, height: 330 }, focus }: DrawingProps) {
  const pattern = useId();
  const { scale, k, place, dimensions, width, height } = layOut(drawing, room);
  const data = (path: Path) => pathData(path, place, k);
  return (
    <figure className="drawing">
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
        {drawing.hatch.map(path => (
          <path key={data(path)} d={data(path)} fill={`url(#${pattern})`} />
        ))}
        {layers.map(([layer, classes]) =>
          drawing[layer].map((path, order) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is drawn anew as a whole
            <path key={`${layer} ${order}`} className={classes} d={data(path)} />
          )),
        )}
        {dimensions.map(({ key, laid }) => (
          <Dimension key={`${key} ${laid.text.words}`} laid={laid} focused={key === focus} />
        ))}
      </svg>
      <figcaption className="label">Scale {scale.name}</figcaption>
    </figure>
  );
}
