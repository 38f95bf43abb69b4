import { useQuery } from '@tanstack/react-query';
import type { KnownSize } from '../../indexer/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';

const none: readonly KnownSize[] = [];

/** The sizes that the bench's own parts have, fetched once; none while there is no service to ask. */
export function useKnownSizes(): readonly KnownSize[] {
  const { bench } = useBench();
  const query = useQuery({
    queryKey: ['known-sizes', bench?.id],
    queryFn: api.knownSizes,
    enabled: bench !== null,
    staleTime: 60_000,
  });
  return query.data?.sizes ?? none;
}
