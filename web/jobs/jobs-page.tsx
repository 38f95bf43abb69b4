import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { JobAnswer } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { useMay } from '../people/may.tsx';
import { Button } from '../ui/controls.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Asked, Empty } from '../ui/states.tsx';
import { OpenJob } from './open-job.tsx';
import { dayWords } from './written.ts';
import './jobs.css';

/** The jobs on the bench, and the way to open another. */
export function JobsPage() {
  const { bench } = useBench();
  const [state, setState] = useState<'open' | 'closed'>('open');
  const [opening, setOpening] = useState(false);
  const mayOpen = useMay('counter');
  const query = useQuery({ queryKey: ['jobs', bench?.id, state], queryFn: () => api.jobs(state) });
  return (
    <Sheet
      title="Jobs"
      cells={[
        { label: 'Bench', value: bench?.name },
        { label: state === 'open' ? 'Open' : 'Closed', value: query.data?.jobs.length ?? '–' },
      ]}
    >
      <div className="page-head with-action">
        <div>
          <h1>Jobs</h1>
          <p className="quiet">One customer's machine each, and what it needs.</p>
        </div>
        {opening || !mayOpen ? null : (
          <Button weight="main" onClick={() => setOpening(true)}>
            Open a job
          </Button>
        )}
      </div>
      <div className="stack">
        {opening ? <OpenJob onLeave={() => setOpening(false)} /> : null}
        <Section
          title={state === 'open' ? 'On the bench' : 'Closed'}
          aside={
            <button
              type="button"
              className="text-button"
              onClick={() => setState(state === 'open' ? 'closed' : 'open')}
            >
              {state === 'open' ? 'Show closed jobs' : 'Show open jobs'}
            </button>
          }
        >
          <Asked query={query} waiting="Fetching the jobs">
            {({ jobs }) =>
              jobs.length > 0 ? (
                <ul className="rows job-list">
                  {jobs.map(job => (
                    <JobRow key={job.id} job={job} />
                  ))}
                </ul>
              ) : state === 'open' ? (
                <Empty
                  title="No job is open."
                  action={
                    opening || !mayOpen ? null : (
                      <Button weight="main" onClick={() => setOpening(true)}>
                        Open the first
                      </Button>
                    )
                  }
                >
                  <p>A machine on the bench is a job: whose it is, what is wrong, and the parts it needs.</p>
                </Empty>
              ) : (
                <Empty title="No job was closed yet." />
              )
            }
          </Asked>
        </Section>
      </div>
    </Sheet>
  );
}

function JobRow({ job }: { job: JobAnswer }) {
  return (
    <li>
      <b className="fig tray">{job.number}</b>
      <div>
        <Link className="sheet-name" href={`/jobs/${job.id}`}>
          {job.model ? `${job.model.maker.name} ${job.model.name}` : `Machine of ${job.owner}`}
        </Link>
        <p className="label">
          {job.owner}
          {job.serial ? `, serial ${job.serial}` : ''}
        </p>
      </div>
      <p className="fault">{job.fault ? `“${job.fault}”` : null}</p>
      <p className="job-facts">
        {job.promised ? (
          <span>promised {dayWords(job.promised)}</span>
        ) : (
          <span className="quiet">no date</span>
        )}
        <span className="label">
          {job.needs} {job.needs === 1 ? 'need' : 'needs'}
        </span>
      </p>
    </li>
  );
}
