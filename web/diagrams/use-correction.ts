import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { DiagramRow, NewCorrection } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { sizeWords } from '../part/size.tsx';
import { useSay } from '../ui/toast.tsx';

/** Keeping a person's word on a row, and taking it back; each says what it did and can be undone. */
export function useCorrection(diagram: string, row: DiagramRow, onKept: () => void) {
  const client = useQueryClient();
  const say = useSay();
  const line = row.ref ? `Line ${row.ref}` : row.place;
  const before = row.correction;
  const refresh = () => client.invalidateQueries();

  const restore = async () => {
    if (before) await api.correct(diagram, row.id, pick(before));
    else await api.takeBack(diagram, row.id);
    await refresh();
    say(`${line} is as it was.`);
  };
  const failed = () => say(`${line} could not be put back. Open it and correct it again.`);

  const keep = useMutation({
    mutationFn: (correction: NewCorrection) => api.correct(diagram, row.id, correction),
    onSuccess: async ({ correction }) => {
      await refresh();
      const taught = correction?.taught ?? 0;
      say(
        (correction?.size
          ? `${line} is ${sizeWords(correction.size)}.`
          : `${line} is kept as you said, without a size.`) +
          (taught > 0 ? ` ${taught} like ${taught === 1 ? 'row' : 'rows'} put right as well.` : ''),
        () => void restore().catch(failed),
      );
      onKept();
    },
  });
  const takeBack = useMutation({
    mutationFn: () => api.takeBack(diagram, row.id),
    onSuccess: async () => {
      await refresh();
      say(`${line} stands as it was read.`, () => void restore().catch(failed));
      onKept();
    },
  });
  return { keep, takeBack };
}

const pick = ({ category, dims, attrs, qty }: NonNullable<DiagramRow['correction']>): NewCorrection => ({
  category,
  dims,
  attrs,
  qty,
});
