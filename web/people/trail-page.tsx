import { useInfiniteQuery } from '@tanstack/react-query';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Empty, Refused, Waiting } from '../ui/states.tsx';
import { deedWords, doerWords } from './deed-words.ts';
import { momentWords } from './moment-words.ts';
import { Settings } from './settings.tsx';

/** Who did what at the bench, the latest first. */
export function TrailPage() {
  const { bench } = useBench();
  const query = useInfiniteQuery({
    queryKey: ['trail', bench?.id],
    queryFn: ({ pageParam }) => api.trail(pageParam),
    initialPageParam: null as string | null,
    getNextPageParam: last => last.next,
  });
  const entries = query.data?.pages.flatMap(page => page.entries) ?? [];
  return (
    <Settings title="Trail" about="Who did what, when. Nothing here can be changed.">
      <Section title="What was done">
        {query.isPending ? <Waiting title="Fetching the trail" /> : null}
        {query.isError ? <Refused error={query.error} onAgain={() => query.refetch()} /> : null}
        {query.data && entries.length === 0 ? <Empty title="Nothing was done yet." /> : null}
        {entries.length > 0 ? (
          <ul className="rows trail">
            {entries.map(entry => (
              <li key={entry.id}>
                <time className="label" dateTime={entry.at}>
                  {momentWords(entry.at)}
                </time>
                <span>
                  <b>{doerWords(entry)}</b> {deedWords(entry)}
                </span>
              </li>
            ))}
          </ul>
        ) : null}
        {query.hasNextPage ? (
          <div className="buttons">
            <Button busy={query.isFetchingNextPage} onClick={() => void query.fetchNextPage()}>
              Show earlier ones
            </Button>
          </div>
        ) : null}
      </Section>
    </Settings>
  );
}
