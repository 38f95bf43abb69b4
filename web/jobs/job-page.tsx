import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { JobPage as Job } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { ToolsNeeded } from '../part/tools-needed.tsx';
import { May } from '../people/may.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Asked, Empty } from '../ui/states.tsx';
import { AddNeeds } from './add-needs.tsx';
import { JobHead } from './job-head.tsx';
import { NeedRow } from './need-row.tsx';
import { dayWords } from './written.ts';
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
      <Asked query={query} waiting="Fetching the job" heading="Job">
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
        <div className="stack">
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
          {job.model ? <ToolsNeeded model={job.model.id} /> : null}
        </div>
        {job.closedAt ? (
          <p className="quiet">The job is closed: open it again to add to it.</p>
        ) : (
          <May least="counter">
            <AddNeeds job={job} />
          </May>
        )}
      </div>
    </>
  );
}
