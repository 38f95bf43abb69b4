import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import type { DrawingAnswer } from '../../../api/answers/index.ts';
import { Refused, Waiting } from '../../ui/states.tsx';
import type { Balloon } from './balloon.ts';
import { BalloonMark } from './balloon-mark.tsx';
import type { Place } from './find-on-drawing.tsx';
import { FoundMark, middleOf } from './found-mark.tsx';
import { useExtent } from './use-extent.ts';
import { useGestures } from './use-gestures.ts';
import { usePicture } from './use-picture.ts';
import {
  centredOn,
  type Extent,
  inPane,
  kept,
  nearest,
  onPage,
  type Point,
  type View,
  wholePage,
  zoomed,
} from './view.ts';

export interface PlateProps {
  diagram: string;
  page: DrawingAnswer['pages'][number];
  balloons: Balloon[];
  /** The balloons of the line that is looked at. */
  chosen: Balloon[];
  doubtful: Set<string>;
  onChoose: (balloon: Balloon) => void;
  /** How the page is looked at, as far as it goes, and who hears of a change. */
  looked: View;
  onLook: (view: View) => void;
  /** Touched where no balloon is near, in fractions of the page. */
  onEmpty?: (spot: Point) => void;
  /** What stands on the drawing in place of its marks. */
  marks?: (place: { view: View; whole: Extent }) => ReactNode;
  /** Where words that are looked for stand on this page, and the one to show. */
  found?: Place[];
  shown?: Place | null;
  /** A further button beside those that change its size. */
  children?: ReactNode;
}

/** The whole page. */
export const fromAfar: View = { x: 0, y: 0, zoom: 1 };
/** How large a chosen balloon is shown, at least. */
const closeUp = 2;
/** How far an arrow key moves the drawing, in pixels. */
const stride = 60;

/** One page in its pane: drag, pinch, wheel, keys or buttons move it; a tap means the nearest balloon. */
export function Plate(props: PlateProps) {
  const { diagram, page, balloons, chosen, doubtful, onChoose, looked, onLook, onEmpty, marks, children } =
    props;
  const { found = [], shown = null } = props;
  const paneRef = useRef<HTMLFieldSetElement>(null);
  const pane = useExtent(paneRef);
  const [near, setNear] = useState<Balloon | null>(null);
  const whole = pane ? wholePage(page, pane) : null;
  const view = whole && pane ? kept(looked, whole, pane) : looked;
  const picture = usePicture(diagram, page.number, (whole?.width ?? 0) * view.zoom * pixelRatio());

  const zoomBy = (factor: number, about?: Point) => {
    if (pane) onLook(zoomed(view, factor, about ?? { x: pane.width / 2, y: pane.height / 2 }));
  };
  useGestures(paneRef, {
    onPan: by => onLook({ ...view, x: view.x + by.x, y: view.y + by.y }),
    onZoom: zoomBy,
    onTap: at => {
      if (!whole) return;
      const meant = nearest(balloons, at, view, whole);
      if (meant) onChoose(meant);
      else onEmpty?.(onPage(at, view, whole));
    },
    onHover: at => setNear(at && whole ? nearest(balloons, at, view, whole) : null),
  });

  const [first] = chosen;
  const target = first && first.page === page.number ? `${first.id} ${pane?.width}` : '';
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new choice moves the drawing, not each step of moving it
  useEffect(() => {
    if (target && pane && whole && !isSeen(chosen, view, whole, pane))
      onLook(centredOn(first!, closeUp, view, whole, pane));
  }, [target]);

  const spot = shown ? middleOf(shown) : null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: only another place moves the drawing
  useEffect(() => {
    if (spot && pane && whole) onLook(centredOn(spot, closeUp, view, whole, pane));
  }, [shown, pane?.width]);

  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowLeft: [1, 0], ArrowRight: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (step) onLook({ ...view, x: view.x + step[0]! * stride, y: view.y + step[1]! * stride });
    else if (event.key === '+' || event.key === '=') zoomBy(1.5);
    else if (event.key === '-') zoomBy(1 / 1.5);
    else if (event.key === '0') onLook(fromAfar);
    else return;
    event.preventDefault();
  };

  return (
    <div className="plate">
      <fieldset
        ref={paneRef}
        className={near ? 'pane near' : 'pane'}
        aria-label={`Drawing, page ${page.number}. Arrow keys move it, plus and minus change its size. The list names every balloon.`}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard
        tabIndex={0}
        onKeyDown={onKeyDown}
      >
        {picture.address && whole ? (
          <img
            className="picture"
            src={picture.address}
            alt=""
            draggable={false}
            style={{
              width: whole.width,
              height: whole.height,
              transform: `translate(${view.x}px, ${view.y}px) scale(${view.zoom})`,
            }}
          />
        ) : null}
        {whole && picture.address
          ? (marks?.({ view, whole }) ??
            balloons
              .filter(
                balloon =>
                  balloon === near ||
                  balloon.lines.length === 0 ||
                  chosen.includes(balloon) ||
                  balloon.lines.some(line => doubtful.has(line.row)),
              )
              .map(balloon => (
                <BalloonMark
                  key={balloon.id}
                  balloon={balloon}
                  at={inPane(balloon, view, whole)}
                  state={
                    chosen.includes(balloon)
                      ? 'chosen'
                      : balloon === near
                        ? 'near'
                        : balloon.lines.length === 0
                          ? 'loose'
                          : 'doubtful'
                  }
                />
              )))
          : null}
        {whole && picture.address
          ? found.map(place => (
              <FoundMark
                key={`${place.left} ${place.top} ${place.text}`}
                place={place}
                shown={place === shown}
                view={view}
                whole={whole}
              />
            ))
          : null}
        {picture.isError ? (
          <Refused error={picture.error} onAgain={() => void picture.again()} />
        ) : picture.address ? null : (
          <Waiting title={`Drawing page ${page.number}`}>
            <p>Once drawn it is kept.</p>
          </Waiting>
        )}
      </fieldset>
      <div className="plate-buttons no-print">
        <button type="button" aria-label="Larger" onClick={() => zoomBy(1.6)}>
          +
        </button>
        <button type="button" aria-label="Smaller" onClick={() => zoomBy(1 / 1.6)}>
          −
        </button>
        <button type="button" onClick={() => onLook(fromAfar)}>
          Whole
        </button>
        {children}
      </div>
    </div>
  );
}

/** Finer pictures for finer screens, but no finer than twice: beyond that nobody sees it. */
const pixelRatio = () => Math.min(2, window.devicePixelRatio || 1);

const isSeen = (balloons: Balloon[], view: View, whole: Extent, pane: Extent) =>
  view.zoom >= closeUp &&
  balloons.some(balloon => {
    const at = inPane(balloon, view, whole);
    return at.x > 0 && at.y > 0 && at.x < pane.width && at.y < pane.height;
  });
