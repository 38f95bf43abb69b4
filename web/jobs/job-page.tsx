import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { JobPage as Job } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button } from '../ui/controls.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Asked, Empty, Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';
import { AddNeeds } from './add-needs.tsx';
import { NeedRow } from './need-row.tsx';
import { dayWords, moneyWords } from './written.ts';
import './jobs.css';

/** One job: the machine, what was said of it, and what it needs. */
export function JobPage({ id }: { id: string }) {
  const { bench } = useBench();
  const query = useQuery({ queryKey: ['job', bench?.id, id], queryFn: () => api.job(id) });
  const job = query.data;
  return (
    <Sheet
      title={job ? `Job ${job.number}` : 'Job'}
      cells={[
        { label: 'Unit', value: job?.serial ? `serial ${job.serial}` : 'no serial' },
        { label: 'Opened', value: job ? dayWords(job.createdAt.slice(0, 10)) : '–' },
      ]}
    >
      <Asked query={query} waiting="Fetching the job">
        {answer => <Ready job={answer} />}
      </Asked>
    </Sheet>
  );
}

function Ready({ job }: { job: Job }) {
  const asks = job.wants.filter(need => need.qty === null);
  return (
    <>
      <JobHead job={job} />
      <div className="columns">
        <Section
          title="What it needs"
          aside={`${job.wants.length} ${job.wants.length === 1 ? 'line' : 'lines'}${asks.length > 0 ? `, ${asks.length} to say how many` : ''}`}
        >
          {job.wants.length > 0 ? (
            <ul className="rows needs">
              {job.wants.map(need => (
                <NeedRow key={need.id} need={need} />
              ))}
            </ul>
          ) : (
            <Empty title="Nothing yet.">
              <p>Add parts by their number or size, or from the model's list.</p>
            </Empty>
          )}
          {job.wants.length > 0 ? (
            <div className="buttons no-print">
              <Link className="button" href={`/order?jobs=${job.id}`}>
                Order for this job
              </Link>
            </div>
          ) : null}
        </Section>
        {job.closedAt ? (
          <p className="quiet">The job is closed: open it again to add to it.</p>
        ) : (
          <AddNeeds job={job} />
        )}
      </div>
    </>
  );
}

function JobHead({ job }: { job: Job }) {
  const client = useQueryClient();
  const say = useSay();
  const change = useMutation({
    mutationFn: (closed: boolean) => api.changeJob(job.id, { closed }),
    onSuccess: (_, closed) => {
      void client.invalidateQueries();
      say(`Job ${job.number} is ${closed ? 'closed' : 'open again'}.`, () => change.mutate(!closed));
    },
  });
  return (
    <div className="page-head with-action">
      <div>
        <p className="label">
          Job {job.number}
          {job.promised ? `, promised ${dayWords(job.promised)}` : ''}
          {job.closedAt ? ', closed' : ''}
        </p>
        <h1>
          {job.model ? (
            <Link href={`/models/${job.model.id}`}>
              {job.model.maker.name} {job.model.name}
            </Link>
          ) : (
            `Machine of ${job.owner}`
          )}
        </h1>
        <p className="small quiet">
          {job.owner}
          {job.serial ? (
            <>
              , serial <span className="fig">{job.serial}</span>
            </>
          ) : (
            ', serial not known'
          )}
          {job.limit ? (
            <>
              , limit <span className="fig">{moneyWords(job.limit)}</span>
            </>
          ) : null}
        </p>
        {change.isError ? <Refused error={change.error} /> : null}
      </div>
      {job.fault ? <blockquote>“{job.fault}”</blockquote> : null}
      <Button weight="thin" busy={change.isPending} onClick={() => change.mutate(!job.closedAt)}>
        {job.closedAt ? 'Open it again' : 'Close the job'}
      </Button>
    </div>
  );
}
