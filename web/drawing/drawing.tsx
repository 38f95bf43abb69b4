import { useId } from 'react';
import type { Drawing as Lines, Path } from '../../indexer/index.ts';
import { Dimension } from './dimension.tsx';
import { type Place, pathData } from './path.ts';
import { chooseScale, pixelsPerMm } from './scale.ts';
import './drawing.css';

interface DrawingProps {
  drawing: Lines;
  /** What it shows, in words, for those who do not see it. */
  title: string;
  /** The room it may fill, in pixels; a smaller scale is chosen rather than squeezing. */
  room?: { width: number; height: number };
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
export function Drawing({ drawing, title, room = { width: 400, height: 320 }, focus }: DrawingProps) {
  const pattern = useId();
  const margin = margins(drawing);
  const { k, name } = chooseScale(
    drawing.width,
    drawing.height,
    room.width - margin.left - margin.right,
    room.height - margin.top - margin.bottom,
  );
  const place: Place = ([x, y]) => [margin.left + x * k, margin.top + y * k];
  const width = margin.left + drawing.width * k + margin.right;
  const height = margin.top + drawing.height * k + margin.bottom;
  const path = (each: Path) => pathData(each, place, k);
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
        {drawing.hatch.map(each => (
          <path key={path(each)} d={path(each)} fill={`url(#${pattern})`} />
        ))}
        {layers.map(([layer, classes]) =>
          drawing[layer].map((each, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is drawn anew as a whole
            <path key={`${layer} ${place}`} className={classes} d={path(each)} />
          )),
        )}
        {drawing.dimensions.map(line => (
          <Dimension
            key={`${line.key} ${line.text} ${line.offset}`}
            line={line}
            place={place}
            focused={line.key === focus}
          />
        ))}
      </svg>
      <figcaption className="label">Scale {name}</figcaption>
    </figure>
  );
}

/** Room that the dimension lines and their figures need around the part, in pixels. */
function margins(drawing: Lines) {
  const margin = { left: 14, right: 14, top: 14, bottom: 14 };
  for (const { from, to, offset, text } of drawing.dimensions) {
    const along = Math.abs(to[0] - from[0]) >= Math.abs(to[1] - from[1]);
    const off = Math.abs(offset) * pixelsPerMm;
    if (along) {
      if (offset < 0) margin.top = Math.max(margin.top, off + 24);
      else margin.bottom = Math.max(margin.bottom, off + 10);
      margin.right = Math.max(margin.right, 24 + text.length * 4);
    } else if (offset < 0) margin.left = Math.max(margin.left, off + 24);
    else margin.right = Math.max(margin.right, off + 10);
  }
  return margin;
}
