import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { JobChange, JobPage } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { May } from '../people/may.tsx';
import { Button } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';
import { JobForm } from './job-form.tsx';
import { dayWords, moneyWords } from './written.ts';

/** Whose machine it is, what was said of it, and the ways to change or close the job; both can be undone. */
export function JobHead({ job }: { job: JobPage }) {
  const client = useQueryClient();
  const say = useSay();
  const [changing, setChanging] = useState(false);
  const change = useMutation({
    mutationFn: (next: JobChange) => api.changeJob(job.id, next),
    onSuccess: () => client.invalidateQueries(),
  });
  const before = { ...asTold(job), closed: job.closedAt !== null };
  const put = (next: JobChange, words: string) =>
    change.mutate(next, {
      onSuccess: () => {
        setChanging(false);
        say(words, () => change.mutate(before));
      },
    });
  return (
    <>
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
        </div>
        {job.fault ? <blockquote>“{job.fault}”</blockquote> : null}
        <May least="counter">
          <div className="buttons">
            <Button weight="thin" aria-expanded={changing} onClick={() => setChanging(!changing)}>
              Change the job
            </Button>
            <Button
              weight="thin"
              busy={change.isPending}
              onClick={() =>
                put(
                  { closed: !job.closedAt },
                  `Job ${job.number} is ${job.closedAt ? 'open again' : 'closed'}.`,
                )
              }
            >
              {job.closedAt ? 'Open it again' : 'Close the job'}
            </Button>
          </div>
        </May>
      </div>
      {changing ? (
        <Section title="Change the job" className="changing">
          <JobForm
            title="Change the job"
            job={job}
            doIt="Keep the change"
            busy={change.isPending}
            error={change.error}
            onDo={next => put(next, `Job ${job.number} is changed.`)}
            onLeave={() => setChanging(false)}
          />
        </Section>
      ) : change.isError ? (
        <Refused error={change.error} />
      ) : null}
    </>
  );
}

const asTold = ({ owner, fault, model, serial, limit, promised }: JobPage): JobChange => ({
  owner,
  fault,
  model: model?.id ?? null,
  serial,
  limit,
  promised,
});
