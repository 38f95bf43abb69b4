import type { Drawing } from '../../indexer/index.ts';
import { type LaidDimension, layDimension } from './lay-dimension.ts';
import type { Place } from './path.ts';
import { pixelsPerMm, type Scale, scales } from './scale.ts';

export interface Room {
  width: number;
  height: number;
}

/** A drawing placed on the page, in pixels. */
export interface Layout {
  scale: Scale;
  /** Pixels to a millimetre of the part. */
  k: number;
  place: Place;
  dimensions: { key: string; laid: LaidDimension }[];
  width: number;
  height: number;
}

/** Round the part, for what overshoots it: centre lines and thick edges. */
const margin = 12;

/** A drawing at the largest scale of ISO 5455 at which it fits the room with all its dimensions; else at the smallest. */
export function layOut(drawing: Drawing, room: Room): Layout {
  let layout: Layout | undefined;
  for (const scale of scales) {
    layout = at(scale, drawing);
    if (layout.width <= room.width && layout.height <= room.height) return layout;
  }
  return layout!;
}

function at(scale: Scale, drawing: Drawing): Layout {
  const k = scale.factor * pixelsPerMm;
  const bare: Place = ([x, y]) => [x * k, y * k];
  const boxes = drawing.dimensions.map(line => layDimension(line, bare).box);
  const left = Math.min(-margin, ...boxes.map(box => box.x1));
  const top = Math.min(-margin, ...boxes.map(box => box.y1));
  const right = Math.max(drawing.width * k + margin, ...boxes.map(box => box.x2));
  const bottom = Math.max(drawing.height * k + margin, ...boxes.map(box => box.y2));
  const place: Place = ([x, y]) => [x * k - left, y * k - top];
  return {
    scale,
    k,
    place,
    dimensions: drawing.dimensions.map(line => ({ key: line.key, laid: layDimension(line, place) })),
    width: Math.ceil(right - left),
    height: Math.ceil(bottom - top),
  };
}
