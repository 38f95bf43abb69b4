import type { OrderLineAnswer } from '../../api/answers/index.ts';
import { May } from '../people/may.tsx';
import { Button } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';
import { useTakenAs } from './use-taken-as.ts';

/** What stands on a line because a person said so, each with the way back. */
export function Taken({ line }: { line: OrderLineAnswer }) {
  const word = useTakenAs();
  return (
    <>
      {line.taken.map(({ need, what, as, apart }) => (
        <span key={need} className="why taken">
          {apart ? `${what} kept apart by you` : `${what} taken as this by you`}
          <May least="counter">
            <Button
              weight="thin"
              className="no-print"
              busy={word.isPending}
              aria-label={`Ask again about ${what}`}
              onClick={() =>
                word.mutate({
                  needs: [need],
                  takenAs: null,
                  before: as,
                  words: `${what} is asked again.`,
                })
              }
            >
              Ask again
            </Button>
          </May>
        </span>
      ))}
      {word.isError ? <Refused error={word.error} /> : null}
    </>
  );
}
