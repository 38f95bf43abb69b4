import type { Drawing, View } from '../../indexer/index.ts';
import { type LaidDimension, layDimension } from './lay-dimension.ts';
import type { Place } from './path.ts';
import { pixelsPerMm, type Scale, scales } from './scale.ts';

export interface Room {
  width: number;
  height: number;
}

/** One view, and where its points lie on the page. */
export interface PlacedView {
  view: View;
  place: Place;
}

/** A drawing placed on the page, in pixels. */
export interface Layout {
  scale: Scale;
  /** Pixels to a millimetre of the part. */
  k: number;
  views: PlacedView[];
  dimensions: { key: string; laid: LaidDimension }[];
  width: number;
  height: number;
}

/** Round the part, for what overshoots it: centre lines and thick edges. */
const margin = 12;
/** Between two views. */
const between = 34;

/**
 * A drawing at the largest scale of ISO 5455 at which it fits the room with all its dimensions, else at the smallest. The
 * view along the axis is left out where it alone would more than halve the scale.
 */
export function layOut(drawing: Drawing, room: Room): Layout {
  const alone = largest(drawing, undefined, room);
  if (!drawing.face) return alone;
  const both = largest(drawing, drawing.face, room);
  return both.width <= room.width && both.scale.factor * 2 >= alone.scale.factor ? both : alone;
}

function largest(drawing: Drawing, face: View | undefined, room: Room): Layout {
  let layout: Layout | undefined;
  for (const scale of scales) {
    layout = at(scale, drawing, face);
    if (layout.width <= room.width && layout.height <= room.height) break;
  }
  return layout!;
}

function at(scale: Scale, drawing: Drawing, face: View | undefined): Layout {
  const k = scale.factor * pixelsPerMm;
  const bare: Place = ([x, y]) => [x * k, y * k];
  const boxes = drawing.dimensions.map(line => layDimension(line, bare).box);
  // The face stands on the same centre line; its top may be above the part's.
  const down = face ? ((drawing.height - face.height) / 2) * k : 0;
  const left = Math.min(-margin, ...boxes.map(box => box.x1));
  const top = Math.min(-margin, down - margin, ...boxes.map(box => box.y1));
  const end = Math.max(drawing.width * k, ...boxes.map(box => box.x2));
  const faceAt = end + between;
  const right = face ? faceAt + face.width * k + margin : Math.max(end, drawing.width * k + margin);
  const bottom = Math.max(
    drawing.height * k + margin,
    face ? down + face.height * k + margin : 0,
    ...boxes.map(box => box.y2),
  );
  const place: Place = ([x, y]) => [x * k - left, y * k - top];
  const views: PlacedView[] = [{ view: drawing, place }];
  if (face) views.push({ view: face, place: ([x, y]) => [faceAt + x * k - left, down + y * k - top] });
  return {
    scale,
    k,
    views,
    dimensions: drawing.dimensions.map(line => ({ key: line.key, laid: layDimension(line, place) })),
    width: Math.ceil(right - left),
    height: Math.ceil(bottom - top),
  };
}
