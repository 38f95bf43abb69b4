import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { NewNeed } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button, Choice, Stepper } from '../ui/controls.tsx';
import { Refused, Waiting } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';
import { jobName } from './job-name.ts';
import './jobs.css';

/** The job last added to, so that one after another goes to the same tray. */
let lastJob: string | null = null;

interface AddToJobProps {
  /** A part, with the line it is picked from where there is one, or an item by its size. */
  want: Pick<NewNeed, 'part' | 'row' | 'item'>;
  /** How it is called when it has been added. */
  what: string;
  qty?: number | undefined;
  /** True: the list says "as required", so nobody knows yet how many. */
  asRequired?: boolean;
}

/** Adds a part or a size to an open job: which job, how many. */
export function AddToJob({ want, what, qty = 1, asRequired = false }: AddToJobProps) {
  const { bench } = useBench();
  const client = useQueryClient();
  const say = useSay();
  const query = useQuery({ queryKey: ['jobs', bench?.id, 'open'], queryFn: () => api.jobs('open') });
  const [chosen, setChosen] = useState<string | null>(lastJob);
  const [count, setCount] = useState(qty);
  const add = useMutation({ mutationFn: (job: string) => api.addNeed(job, { ...want, qty: count || null }) });

  if (query.isError) return <Refused error={query.error} onAgain={() => query.refetch()} />;
  if (!query.data) return <Waiting title="Fetching the open jobs" />;
  const { jobs } = query.data;
  const job = jobs.find(each => each.id === chosen) ?? jobs[0];
  if (!job)
    return (
      <p>
        No job is open. <Link href="/jobs">Open one</Link>, then add this to it.
      </p>
    );
  const submit = () => {
    lastJob = job.id;
    add.mutate(job.id, {
      onSuccess: need => {
        void client.invalidateQueries();
        say(`${what}: ${count || 'as required, how many is open'}, for job ${job.number}.`, () => {
          void api.removeNeed(need.id).then(() => client.invalidateQueries());
        });
      },
    });
  };
  return (
    <div className="add-to-job">
      <Choice label="Job" value={job.id} onChange={event => setChosen(event.target.value)}>
        {jobs.map(each => (
          <option key={each.id} value={each.id}>
            {jobName(each)}
          </option>
        ))}
      </Choice>
      <Stepper label={`how many of ${what}`} value={count} min={asRequired ? 0 : 1} onChange={setCount} />
      <Button weight="main" busy={add.isPending} onClick={submit}>
        Add to job
      </Button>
      {asRequired ? (
        <p className="label">As required: set how many, or leave 0 and the order will ask.</p>
      ) : null}
      {add.isError ? <Refused error={add.error} /> : null}
    </div>
  );
}
