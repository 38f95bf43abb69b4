/** How a page is looked at: its top left corner in the pane, in pixels, and how much larger than whole it is shown. */
export interface View {
  x: number;
  y: number;
  /** 1: the whole page just fits the pane. */
  zoom: number;
}

export interface Extent {
  width: number;
  height: number;
}

export interface Point {
  x: number;
  y: number;
}

const mostZoom = 12;

/** The page's extent in pixels at zoom 1: as large as the pane holds whole. */
export function wholePage(page: Extent, pane: Extent): Extent {
  const scale = Math.min(pane.width / page.width, pane.height / page.height);
  return { width: page.width * scale, height: page.height * scale };
}

/** Keeps the page in the pane: centred where it is smaller, without a gap beside it where it is larger. */
export function kept(view: View, whole: Extent, pane: Extent): View {
  const zoom = Math.min(mostZoom, Math.max(1, view.zoom));
  const along = (at: number, length: number, room: number) =>
    length <= room ? (room - length) / 2 : Math.min(0, Math.max(room - length, at));
  return {
    zoom,
    x: along(view.x, whole.width * zoom, pane.width),
    y: along(view.y, whole.height * zoom, pane.height),
  };
}

/** Enlarges about a point of the pane, which stays where it is on the page. */
export function zoomed(view: View, factor: number, about: Point): View {
  const zoom = Math.min(mostZoom, Math.max(1, view.zoom * factor));
  const by = zoom / view.zoom;
  return { zoom, x: about.x - (about.x - view.x) * by, y: about.y - (about.y - view.y) * by };
}

/** Where a place on the page, in fractions of it, stands in the pane. */
export function inPane(spot: Point, view: View, whole: Extent): Point {
  return { x: view.x + spot.x * whole.width * view.zoom, y: view.y + spot.y * whole.height * view.zoom };
}

/** Which place on the page, in fractions of it, a point of the pane is. */
export function onPage(point: Point, view: View, whole: Extent): Point {
  return {
    x: (point.x - view.x) / (whole.width * view.zoom),
    y: (point.y - view.y) / (whole.height * view.zoom),
  };
}

/** Brings a place on the page into the middle of the pane, enlarged to at least `zoom`. */
export function centredOn(spot: Point, zoom: number, view: View, whole: Extent, pane: Extent): View {
  const larger = { ...view, zoom: Math.max(view.zoom, zoom) };
  const at = inPane(spot, larger, whole);
  return kept(
    { ...larger, x: larger.x + pane.width / 2 - at.x, y: larger.y + pane.height / 2 - at.y },
    whole,
    pane,
  );
}

/** How near a tap must be to a balloon to mean it, in pixels: half a fingertip. */
const fingertip = 22;

/** The spot nearest to a point of the pane, within a fingertip; null where there is none. */
export function nearest<Spot extends Point>(
  spots: Spot[],
  point: Point,
  view: View,
  whole: Extent,
): Spot | null {
  let best: Spot | null = null;
  let least = fingertip;
  for (const spot of spots) {
    const at = inPane(spot, view, whole);
    const distance = Math.hypot(at.x - point.x, at.y - point.y);
    if (distance > least) continue;
    best = spot;
    least = distance;
  }
  return best;
}
