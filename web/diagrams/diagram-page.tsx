import { useInfiniteQuery } from '@tanstack/react-query';
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import type { DiagramAnswer, DiagramRow } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { May } from '../people/may.tsx';
import { Button } from '../ui/controls.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Empty, Refused, Waiting } from '../ui/states.tsx';
import { BeforeYouOpen } from './before-you-open.tsx';
import { Columns } from './columns.tsx';
import { ExplodedView } from './exploded/exploded-view.tsx';
import { useChosenBalloon } from './exploded/use-chosen-balloon.ts';
import { useDrawing } from './exploded/use-drawing.ts';
import { LeftOutRows } from './left-out-rows.tsx';
import { ModelDuty } from './model-duty.tsx';
import { NotRead } from './not-read.tsx';
import { PartsList } from './parts-list.tsx';
import { ReadingState } from './reading-state.tsx';
import { TheDocument } from './the-document.tsx';
import './diagrams.css';

/** One diagram: its lines as they were read, doubtful first, to be checked and corrected in place. */
export function DiagramPage({ id }: { id: string }) {
  const { bench } = useBench();
  const query = useInfiniteQuery({
    queryKey: ['rows', bench?.id, id],
    queryFn: ({ pageParam }) => api.rows(id, pageParam),
    initialPageParam: 0,
    getNextPageParam: page => page.next,
  });
  const diagram = query.data?.pages[0]?.diagram;
  return (
    <Sheet
      title={diagram ? `${diagram.model.maker.name} ${diagram.model.name}` : 'Diagram'}
      cells={[
        { label: 'Read', value: diagram?.readAt ? dayOf(diagram.readAt) : 'not yet' },
        { label: 'Lengths', value: diagram?.unit === 'in' ? 'inch as printed, mm' : 'mm' },
      ]}
    >
      {diagram ? (
        <Ready
          diagram={diagram}
          rows={query.data?.pages.flatMap(page => page.rows) ?? []}
          more={
            query.hasNextPage ? (
              <Button busy={query.isFetchingNextPage} onClick={() => query.fetchNextPage()}>
                Show more lines
              </Button>
            ) : null
          }
        />
      ) : (
        <>
          <h1 className="only-heard">Diagram</h1>
          {query.isError ? (
            <Refused error={query.error} onAgain={() => query.refetch()} />
          ) : (
            <Waiting title="Fetching the diagram" />
          )}
        </>
      )}
    </Sheet>
  );
}

interface ReadyProps {
  diagram: DiagramAnswer;
  rows: DiagramRow[];
  more: ReactNode;
}

function Ready({ diagram, rows, more }: ReadyProps) {
  const [open, setOpen] = useState<string | null>(null);
  const drawing = useDrawing(diagram);
  const choose = useChosenBalloon(diagram.id, rows, setOpen);
  const taken = rows.filter(row => row.outcome === 'taken');
  const rest = rows.filter(row => row.outcome !== 'taken');
  const done = diagram.state === 'ready';
  return (
    <>
      <div className="page-head">
        <h1>
          <Link href={`/models/${diagram.model.id}`}>
            {diagram.model.maker.name} {diagram.model.name}
          </Link>
        </h1>
        <p className="quiet">{diagram.name}</p>
        <ReadingState diagram={diagram} />
      </div>
      {done ? <NotRead diagram={diagram} /> : null}
      {done ? (
        <div className={drawing?.pages.length ? 'columns drawn' : 'columns'}>
          {drawing?.pages.length ? (
            <ExplodedView
              diagram={diagram.id}
              drawing={drawing}
              chosen={open}
              doubtful={new Set(taken.filter(row => row.doubtful).map(row => row.id))}
              onChoose={choose}
            />
          ) : null}
          <div className="stack the-list">
            {taken.length > 0 ? (
              <PartsList diagram={diagram} rows={taken} open={open} onOpen={setOpen} more={more} />
            ) : (
              <Section title="Parts list">
                <Empty title="No line of a parts list in it.">
                  <p>See what was left out, and why. Paste the list as text, with its heading line.</p>
                </Empty>
                {more}
              </Section>
            )}
          </div>
          <div className="stack">
            <BeforeYouOpen rows={taken} />
            <ModelDuty model={diagram.model.id} />
            <LeftOutRows rows={rest} />
            <May least="repairer">
              <Columns diagram={diagram.id} />
            </May>
            <TheDocument diagram={diagram} />
          </div>
        </div>
      ) : diagram.state === 'refused' ? (
        <TheDocument diagram={diagram} />
      ) : null}
    </>
  );
}

const dayOf = (instant: string) =>
  new Date(instant).toLocaleDateString('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
