import { useQuery, useQueryClient } from '@tanstack/react-query';
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import type { Bench, Benches } from '../api/answers/index.ts';
import { api, showBench } from './api.ts';

const kept = 'fettle.bench';

/** Shows this bench the next time that benches are fetched. */
export const keepBench = (id: string): void => localStorage.setItem(kept, id);

interface AtBench {
  /** The bench shown; null until the list of benches has come, or where there is none. */
  bench: Bench | null;
  benches: Bench[];
  /** The list of benches has come, be it empty. */
  known: boolean;
  /** Goes to another bench: what is on the page belongs to it from then on. */
  goTo: (bench: Bench) => void;
  error: unknown;
  again: () => void;
}

const BenchContext = createContext<AtBench | null>(null);

export function useBench(): AtBench {
  const at = useContext(BenchContext);
  if (!at) throw new Error('useBench outside of AtBench');
  return at;
}

/** The bench last shown here if it still is one, else the one the service answers for. */
function choose({ benches, current }: Benches, wanted: string | null): Bench | null {
  return (
    benches.find(bench => bench.id === wanted) ??
    benches.find(bench => bench.id === current) ??
    benches[0] ??
    null
  );
}

export function BenchProvider({ children }: { children: ReactNode }) {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  const [wanted, setWanted] = useState(() => localStorage.getItem(kept));
  const query = useQuery({ queryKey: ['benches'], queryFn: api.benches, staleTime: 60_000 });
  const bench = query.data ? choose(query.data, wanted) : null;
  showBench(bench?.id ?? null);

  useEffect(() => {
    const follow = (event: StorageEvent) => {
      if (event.key === kept) setWanted(event.newValue);
    };
    addEventListener('storage', follow);
    return () => removeEventListener('storage', follow);
  }, []);

  const at = useMemo<AtBench>(
    () => ({
      bench,
      benches: query.data?.benches ?? [],
      known: query.data !== undefined,
      goTo: next => {
        localStorage.setItem(kept, next.id);
        setWanted(next.id);
        client.setQueryData<Benches>(['benches'], old =>
          old && !old.benches.some(each => each.id === next.id)
            ? { ...old, benches: [next, ...old.benches] }
            : old,
        );
        // A list of benches that was asked for before this one was there must not win.
        const list = { queryKey: ['benches'] };
        void client.cancelQueries(list).then(() => client.invalidateQueries(list));
        void api.openBench(next.id).catch(() => undefined);
        navigate('/find');
      },
      error: query.error,
      again: () => void query.refetch(),
    }),
    [bench, query, client, navigate],
  );
  return <BenchContext value={at}>{children}</BenchContext>;
}
