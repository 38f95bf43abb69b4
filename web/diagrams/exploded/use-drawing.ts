import { useQuery } from '@tanstack/react-query';
import type { DiagramAnswer } from '../../../api/answers/index.ts';
import { api } from '../../api.ts';
import { useBench } from '../../bench.tsx';
import { drawingKey } from './use-balloon-changes.ts';

/** The pages and balloons of a diagram that was read; undefined until they are there. */
export function useDrawing({ id, state }: DiagramAnswer) {
  const { bench } = useBench();
  const query = useQuery({
    queryKey: drawingKey(bench?.id, id),
    queryFn: () => api.drawing(id),
    enabled: state === 'ready',
  });
  return query.data;
}
