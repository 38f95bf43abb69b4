import { type FormEvent, type KeyboardEvent, useRef, useState } from 'react';
import { Button, Field } from '../../ui/controls.tsx';
import { Refused } from '../../ui/states.tsx';
import type { Balloon } from './exploded-view.tsx';
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
      >
        {({ view, whole }) => (
          <>
            {balloons.map(balloon => {
              const spot = dragged?.id === balloon.id ? dragged : balloon;
              return (
                <Handle
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
      </Plate>
      {chosen ? (
        <NumberForm
          key={chosen.id}
          title={`Balloon ${chosen.ref}`}
          ref_={chosen.ref}
          busy={changes.busy}
          keep="Keep the number"
          onKeep={ref => changes.change.mutate({ balloon: chosen, to: { ref } })}
          onRemove={() => changes.remove.mutate(chosen, { onSuccess: () => setHeld(null) })}
        />
      ) : empty ? (
        <NumberForm
          key={`${empty.x} ${empty.y}`}
          title="A balloon here"
          ref_=""
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

interface HandleProps {
  balloon: Balloon;
  at: Point;
  held: boolean;
  onHold: () => void;
  onDrag: (by: Point) => void;
  onDrop: () => void;
  onNudge: (by: Point) => void;
  onRemove: () => void;
}

/** A balloon to take hold of: by a finger, or by the keyboard with arrows and Delete. */
function Handle({ balloon, at, held, onHold, onDrag, onDrop, onNudge, onRemove }: HandleProps) {
  const last = useRef<Point | null>(null);
  const moved = useRef(false);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (step) onNudge({ x: step[0]!, y: step[1]! });
    else if (event.key === 'Delete') onRemove();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <button
      type="button"
      data-own-gestures
      className={held ? 'balloon-handle held' : 'balloon-handle'}
      aria-label={`Balloon ${balloon.ref}: arrow keys move it, Delete takes it out`}
      aria-pressed={held}
      style={{ transform: `translate(${at.x}px, ${at.y}px)` }}
      onClick={onHold}
      onKeyDown={onKeyDown}
      onPointerDown={event => {
        event.currentTarget.setPointerCapture(event.pointerId);
        last.current = { x: event.clientX, y: event.clientY };
        moved.current = false;
      }}
      onPointerMove={event => {
        if (!last.current) return;
        const by = { x: event.clientX - last.current.x, y: event.clientY - last.current.y };
        if (!moved.current && Math.hypot(by.x, by.y) < 4) return;
        moved.current = true;
        last.current = { x: event.clientX, y: event.clientY };
        onDrag(by);
      }}
      onPointerUp={() => {
        last.current = null;
        if (moved.current) onDrop();
      }}
    >
      {balloon.ref}
    </button>
  );
}

interface NumberFormProps {
  title: string;
  ref_: string;
  busy: boolean;
  keep: string;
  onKeep: (ref: string) => void;
  onRemove?: () => void;
}

function NumberForm({ title, ref_, busy, keep, onKeep, onRemove }: NumberFormProps) {
  const [ref, setRef] = useState(ref_);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (ref.trim()) onKeep(ref.trim());
  };
  return (
    <form className="balloon-form" onSubmit={submit}>
      <Field
        label={`${title}: its number`}
        value={ref}
        maxLength={20}
        autoComplete="off"
        onChange={event => setRef(event.target.value)}
      />
      <Button type="submit" weight="main" busy={busy} disabled={!ref.trim() || ref.trim() === ref_}>
        {keep}
      </Button>
      {onRemove ? (
        <Button weight="thin" busy={busy} onClick={onRemove}>
          It is no balloon
        </Button>
      ) : null}
    </form>
  );
}
