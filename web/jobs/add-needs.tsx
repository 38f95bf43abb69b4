import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { JobPage, NewNeed } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';
import { AddBySearch } from './add-by-search.tsx';
import { AddFromList } from './add-from-list.tsx';

/** Ways to put needs into a job: from the model's list, or by number, name or size. */
export function AddNeeds({ job }: { job: JobPage }) {
  const client = useQueryClient();
  const say = useSay();
  const add = useMutation({
    mutationFn: ({ need }: { need: NewNeed; what: string }) => api.addNeed(job.id, need),
    onSuccess: (need, { what }) => {
      void client.invalidateQueries();
      say(`${what}: added to job ${job.number}.`, () => {
        void api.removeNeed(need.id).then(() => client.invalidateQueries());
      });
    },
  });
  const put = (need: NewNeed, what: string) => add.mutate({ need, what });
  return (
    <div className="stack no-print">
      <AddBySearch onPut={put} busy={add.isPending} />
      {add.isError ? <Refused error={add.error} /> : null}
      {job.model ? <AddFromList model={job.model.id} onPut={put} busy={add.isPending} /> : null}
    </div>
  );
}
