import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { DiagramAnswer, Progress } from '../../api/answers/index.ts';
import { Problem } from '../problem.ts';
import { Refused, Waiting } from '../ui/states.tsx';
import { progressOf } from './follow.ts';

/** Follows the reading of a diagram that is not done yet; when it is, all that shows it is asked anew. */
function useProgress(diagram: DiagramAnswer): Progress {
  const client = useQueryClient();
  const { id, state } = diagram;
  const [progress, setProgress] = useState<Progress>(diagram);
  const over = state === 'ready' || state === 'refused';
  useEffect(() => {
    if (over) return;
    const stop = new AbortController();
    let again: ReturnType<typeof setTimeout> | undefined;
    const listen = async () => {
      try {
        for await (const each of progressOf(id, stop.signal)) setProgress(each);
        if (!stop.signal.aborted) await client.invalidateQueries();
      } catch {
        // The line was cut: the reading goes on without us, so look again in a while.
        if (!stop.signal.aborted) again = setTimeout(listen, 2_000);
      }
    };
    void listen();
    return () => {
      stop.abort();
      clearTimeout(again);
    };
  }, [id, over, client]);
  return over ? diagram : progress;
}

/** Waiting, refused or ready, for one diagram. */
export function ReadingState({ diagram }: { diagram: DiagramAnswer }) {
  const progress = useProgress(diagram);
  if (progress.state === 'ready') return <ReadyLine diagram={diagram} />;
  if (progress.state === 'refused') {
    const { refusal } = progress;
    return (
      <Refused
        error={
          new Problem(
            refusal?.code ?? 'refused',
            refusal?.message ?? 'This document could not be read.',
            refusal?.place ?? '',
            refusal?.remedy ?? 'Paste its list as text.',
            422,
          )
        }
      >
        <p>The document was kept; none of its lines were.</p>
      </Refused>
    );
  }
  const { rowsDone, rowsTotal } = progress;
  return (
    <Waiting
      title={progress.state === 'reading' ? `Reading ${diagram.name}` : `${diagram.name} waits to be read`}
      done={rowsTotal ? rowsDone / rowsTotal : undefined}
    >
      <p>
        {rowsDone > 0 ? `${rowsDone}${rowsTotal ? ` of ${rowsTotal}` : ''} lines so far. ` : ''}You can leave
        this page; it goes on.
      </p>
    </Waiting>
  );
}

/** The count, and what wants checking. */
function ReadyLine({ diagram: { counts } }: { diagram: DiagramAnswer }) {
  const check = counts.doubtful > 0 ? `, ${counts.doubtful} to check` : ', none to check';
  return (
    <span>
      {counts.taken} {counts.taken === 1 ? 'line' : 'lines'} read
      <b className={counts.doubtful > 0 ? 'look-here' : 'quiet'}>{check}</b>
      {counts.faulted > 0 ? `, ${counts.faulted} not readable` : ''}
    </span>
  );
}
