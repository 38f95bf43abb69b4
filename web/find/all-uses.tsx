import { useInfiniteQuery } from '@tanstack/react-query';
import type { SizeAnswer } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';
import { Uses } from './uses.tsx';

/** Where a size is used: the first models, and more of them as they are asked for. */
export function AllUses({ of }: { of: SizeAnswer }) {
  const { bench } = useBench();
  const query = useInfiniteQuery({
    queryKey: ['uses', bench?.id, of.size, of.used, of.uses],
    queryFn: ({ pageParam }) => api.uses(of.size, pageParam),
    initialData: { pages: [{ uses: of.uses, used: of.used }], pageParams: [0] },
    initialPageParam: 0,
    getNextPageParam: (last, pages) => {
      const told = modelsIn(pages.flatMap(page => page.uses));
      return last.uses.length > 0 && told < of.used.models ? told : undefined;
    },
    staleTime: Number.POSITIVE_INFINITY,
  });
  const uses = query.data.pages.flatMap(page => page.uses);
  const told = modelsIn(uses);
  return (
    <>
      <Uses uses={uses} />
      {query.isError ? <Refused error={query.error} onAgain={() => query.fetchNextPage()} /> : null}
      {query.hasNextPage ? (
        <div className="buttons no-print">
          <Button busy={query.isFetchingNextPage} onClick={() => query.fetchNextPage()}>
            Show more
          </Button>
          <span className="label">
            {told} of {of.used.models} models
          </span>
        </div>
      ) : null}
    </>
  );
}

const modelsIn = (uses: SizeAnswer['uses']) => new Set(uses.map(use => use.model.id)).size;
