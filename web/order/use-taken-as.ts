import { useMutation, useQueryClient } from '@tanstack/react-query';
import { api } from '../api.ts';
import { useSay } from '../ui/toast.tsx';

/** A person's word on what needs are: `takenAs` an item, or null to take the word back; `words` say what was done. */
interface Word {
  needs: string[];
  takenAs: string | null;
  /** What they were taken as before. */
  before: string | null;
  words: string;
}

/** Takes needs as an item, with a way back. */
export function useTakenAs() {
  const client = useQueryClient();
  const say = useSay();
  const put = async (needs: string[], takenAs: string | null) => {
    for (const need of needs) await api.changeNeed(need, { takenAs });
  };
  return useMutation({
    mutationFn: ({ needs, takenAs }: Word) => put(needs, takenAs),
    // Also where it stopped half way: the order then shows which needs are taken.
    onSettled: () => client.invalidateQueries(),
    onSuccess: (_, { needs, before, words }) =>
      say(words, () => {
        void put(needs, before)
          .catch(() => say('This could not be undone. Answer it again on the order.'))
          .finally(() => client.invalidateQueries());
      }),
  });
}
