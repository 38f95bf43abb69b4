import { useState } from 'react';
import { Refused } from '../../ui/states.tsx';
import type { Balloon } from './balloon.ts';
import { BalloonHandle } from './balloon-handle.tsx';
import { BalloonNumber } from './balloon-number.tsx';
import { Plate, type PlateProps } from './plate.tsx';
import { useBalloonChanges } from './use-balloon-changes.ts';
import { inPane, type Point } from './view.ts';

/** How far an arrow key moves a balloon, as a fraction of the page. */
const nudge = 0.004;

/** The drawing with every balloon as a handle: dragged to where it belongs, renumbered, taken out, or put in anew. */
export function BalloonEditor(props: PlateProps) {
  const { diagram, page, balloons } = props;
  const [held, setHeld] = useState<string | null>(null);
  const [empty, setEmpty] = useState<Point | null>(null);
  const [dragged, setDragged] = useState<(Point & { id: string }) | null>(null);
  const changes = useBalloonChanges(diagram);
  const chosen = balloons.find(balloon => balloon.id === held);
  const move = (balloon: Balloon, to: Point) =>
    changes.change.mutate(
      { balloon, to: { x: within(to.x), y: within(to.y) } },
      { onSettled: () => setDragged(null) },
    );
  return (
    <>
      <Plate
        {...props}
        onChoose={balloon => {
          setHeld(balloon.id);
          setEmpty(null);
        }}
        onEmpty={spot => {
          setHeld(null);
          setEmpty(isOnPage(spot) ? spot : null);
        }}
        marks={({ view, whole }) => (
          <>
            {balloons.map(balloon => {
              const spot = dragged?.id === balloon.id ? dragged : balloon;
              return (
                <BalloonHandle
                  key={balloon.id}
                  balloon={balloon}
                  at={inPane(spot, view, whole)}
                  held={balloon.id === held}
                  onHold={() => {
                    setHeld(balloon.id);
                    setEmpty(null);
                  }}
                  onDrag={by =>
                    setDragged({
                      id: balloon.id,
                      x: spot.x + by.x / (whole.width * view.zoom),
                      y: spot.y + by.y / (whole.height * view.zoom),
                    })
                  }
                  onDrop={() => dragged && move(balloon, dragged)}
                  onNudge={by => move(balloon, { x: balloon.x + by.x * nudge, y: balloon.y + by.y * nudge })}
                  onRemove={() => changes.remove.mutate(balloon)}
                />
              );
            })}
            {empty ? (
              <i
                className="balloon-mark new"
                style={{
                  transform: `translate(${inPane(empty, view, whole).x}px, ${inPane(empty, view, whole).y}px)`,
                }}
              />
            ) : null}
          </>
        )}
      />
      {chosen ? (
        <BalloonNumber
          key={chosen.id}
          title={`Balloon ${chosen.ref}`}
          standing={chosen.ref}
          busy={changes.busy}
          keep="Keep the number"
          onKeep={ref => changes.change.mutate({ balloon: chosen, to: { ref } })}
          onRemove={() => changes.remove.mutate(chosen, { onSuccess: () => setHeld(null) })}
        />
      ) : empty ? (
        <BalloonNumber
          key={`${empty.x} ${empty.y}`}
          title="A balloon here"
          standing=""
          busy={changes.busy}
          keep="Put it there"
          onKeep={ref =>
            changes.place.mutate({ page: page.number, ref, ...empty }, { onSuccess: () => setEmpty(null) })
          }
        />
      ) : (
        <p className="quiet">
          Drag a balloon to where it belongs, or tap it. Tap an empty place to put one there.
        </p>
      )}
      {changes.error ? <Refused error={changes.error} /> : null}
    </>
  );
}

const within = (fraction: number) => Math.min(1, Math.max(0, fraction));
const isOnPage = ({ x, y }: Point) => x >= 0 && x <= 1 && y >= 0 && y <= 1;
