import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { pagePicture } from '../../api.ts';
import { useBench } from '../../bench.tsx';

/** Widths asked for: each about twice the last, so that zooming fetches a few pictures and no more. */
const steps = [600, 1200, 2400, 4800];

/**
 * A page's picture for showing it so many pixels wide: the coarse one first, a finer one as soon as it is needed and
 * there. `address` is null until the first is there.
 */
export function usePicture(diagram: string, page: number, width: number) {
  const { bench } = useBench();
  const wanted = steps.find(step => step >= width * 0.8) ?? steps.at(-1)!;
  const query = useQuery({
    queryKey: ['picture', bench?.id, diagram, page, wanted],
    queryFn: () => pagePicture(diagram, page, wanted),
    enabled: width > 0,
    staleTime: Number.POSITIVE_INFINITY,
    placeholderData: (before, query) => (query?.queryKey[3] === page ? before : undefined),
  });
  const address = useObjectUrl(query.data);
  return { address, isError: query.isError, error: query.error, again: query.refetch };
}

function useObjectUrl(blob: Blob | undefined): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    if (!blob) return setAddress(null);
    const made = URL.createObjectURL(blob);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [blob]);
  return address;
}
