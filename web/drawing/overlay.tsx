import type { Drawing, View } from '../../indexer/index.ts';
import { type Place, pathData } from './path.ts';
import { pixelsPerMm, scales } from './scale.ts';
import './drawing.css';

/** Round each view, for centre lines and thick edges; between two views. */
const [margin, between] = [14, 30];

/** Where two parts are laid upon each other: on their axis, and where their length is measured from. */
const seatOf = (drawing: Drawing): number =>
  drawing.dimensions.find(line => line.key === 'length')?.from[0] ?? 0;

interface OverlayProps {
  /** Drawn in full lines. */
  a: Drawing;
  /** Drawn upon it in dashes. */
  b: Drawing;
  title: string;
  room: { width: number; height: number };
}

/** Two parts laid upon each other to one scale of ISO 5455, in line with each other's axis and seat; the scale is named. */
export function Overlay({ a, b, title, room }: OverlayProps) {
  const [seatA, seatB] = [seatOf(a), seatOf(b)];
  const before = Math.max(seatA, seatB);
  const wide = before + Math.max(a.width - seatA, b.width - seatB);
  const high = Math.max(a.height, b.height, a.face?.height ?? 0, b.face?.height ?? 0);
  const largest = (across: number) =>
    scales.find(
      ({ factor }) =>
        (wide + across) * factor * pixelsPerMm + margin * 2 + (across > 0 ? between : 0) <= room.width &&
        high * factor * pixelsPerMm + margin * 2 <= room.height,
    ) ?? scales.at(-1)!;
  const both = a.face && b.face ? Math.max(a.face.width, b.face.width) : 0;
  // Seen along the axis too, unless that alone more than halves the scale.
  const faces = largest(both).factor * 2 >= largest(0).factor ? both : 0;
  const scale = largest(faces);
  const fixed = margin * 2 + (faces > 0 ? between : 0);
  const k = scale.factor * pixelsPerMm;
  const middle = margin + (high * k) / 2;
  const at =
    (left: number, height: number): Place =>
    ([x, y]) => [left + x * k, middle + (y - height / 2) * k];
  const side = (drawing: Drawing, seat: number) => at(margin + (before - seat) * k, drawing.height);
  const faceAt = margin + wide * k + between;
  const face = (view: View) => at(faceAt + ((faces - view.width) / 2) * k, view.height);
  const [width, height] = [Math.ceil((wide + faces) * k + fixed), Math.ceil(high * k + margin * 2)];
  return (
    <figure className="drawing overlay">
      <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} role="img" aria-label={title}>
        <Lines view={a} place={side(a, seatA)} k={k} of="wanted" />
        <Lines view={b} place={side(b, seatB)} k={k} of="instead" />
        {a.face && b.face && faces > 0 ? (
          <>
            <Lines view={a.face} place={face(a.face)} k={k} of="wanted" />
            <Lines view={b.face} place={face(b.face)} k={k} of="instead" />
          </>
        ) : null}
      </svg>
      <figcaption className="label">Both at scale {scale.name}</figcaption>
    </figure>
  );
}

function Lines({ view, place, k, of }: { view: View; place: Place; k: number; of: 'wanted' | 'instead' }) {
  return (
    <g className={of}>
      {[...view.outlines, ...view.hidden].map((path, order) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is drawn anew as a whole
        <path key={order} className="outline" d={pathData(path, place, k)} />
      ))}
      {view.centre.map((path, order) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is drawn anew as a whole
        <path key={`centre ${order}`} className="thin second centre" d={pathData(path, place, k)} />
      ))}
    </g>
  );
}
