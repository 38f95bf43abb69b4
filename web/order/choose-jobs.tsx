import type { JobAnswer } from '../../api/answers/index.ts';
import { jobName } from '../jobs/job-name.ts';
import { dayWords } from '../jobs/written.ts';

interface ChooseJobsProps {
  jobs: JobAnswer[];
  chosen: string[];
  onChoose: (chosen: string[]) => void;
}

/** The open jobs, each to be ticked for the order. */
export function ChooseJobs({ jobs, chosen, onChoose }: ChooseJobsProps) {
  return (
    <fieldset className="choose-jobs no-print">
      <legend className="label">Order for these jobs</legend>
      {jobs.map(job => (
        <label key={job.id} className="tick">
          <input
            type="checkbox"
            checked={chosen.includes(job.id)}
            onChange={event =>
              onChoose(
                event.target.checked
                  ? [...chosen.filter(id => id !== 'none'), job.id]
                  : chosen.filter(id => id !== job.id),
              )
            }
          />
          <span>
            <b>Job {jobName(job)}</b>
            <span className="label">
              {job.owner}
              {job.promised ? `, promised ${dayWords(job.promised)}` : ''}
            </span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
