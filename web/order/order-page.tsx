import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { Link, useSearchParams } from 'wouter';
import type { OrderAnswer } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { May } from '../people/may.tsx';
import { Button } from '../ui/controls.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Asked, Empty } from '../ui/states.tsx';
import { Asks } from './asks.tsx';
import { ChooseJobs } from './choose-jobs.tsx';
import { Download } from './download.tsx';
import { LeftOut } from './left-out.tsx';
import { Pool } from './pool.tsx';
import './order.css';

/** One order for the jobs chosen: pooled by item, with who needs how many. All open jobs at first. */
export function OrderPage() {
  const { bench } = useBench();
  const query = useQuery({ queryKey: ['jobs', bench?.id, 'open'], queryFn: () => api.jobs('open') });
  const [search, setSearch] = useSearchParams();
  const asked = search.get('jobs')?.split(',').filter(Boolean);
  const jobs = byNumber(query.data?.jobs ?? []);
  const chosen = asked ? asked : jobs.map(job => job.id);
  const numbers = jobs.filter(job => chosen.includes(job.id)).map(job => job.number);
  return (
    <Sheet
      title={numbers.length > 0 ? `Order for ${numbers.join(', ')}` : 'Order'}
      cells={[
        { label: 'Bench', value: bench?.name },
        { label: 'Jobs', value: chosen.length },
      ]}
    >
      <Asked query={query} waiting="Fetching the open jobs" heading="Order">
        {({ jobs: all }) =>
          all.length === 0 ? (
            <>
              <h1 className="only-heard">Order</h1>
              <Empty
                title="No job is open, so there is nothing to order."
                action={
                  <Link className="button main" href="/jobs">
                    Open a job
                  </Link>
                }
              >
                <p>What the open jobs need is summed here into one order.</p>
              </Empty>
            </>
          ) : (
            <div className="stack">
              <ChooseJobs
                jobs={jobs}
                chosen={chosen}
                onChoose={next => setSearch({ jobs: next.join(',') || 'none' }, { replace: true })}
              />
              <TheOrder chosen={chosen.filter(id => id !== 'none')} />
            </div>
          )
        }
      </Asked>
    </Sheet>
  );
}

const byNumber = <Job extends { number: number }>(jobs: Job[]): Job[] =>
  jobs.toSorted((a, b) => a.number - b.number);

function TheOrder({ chosen }: { chosen: string[] }) {
  const { bench } = useBench();
  const query = useQuery({
    queryKey: ['order', bench?.id, chosen.join(',')],
    queryFn: () => api.order(chosen),
    enabled: chosen.length > 0,
    // The sheet stays while the next sum comes.
    placeholderData: keepPreviousData,
  });
  if (chosen.length === 0)
    return (
      <>
        <h1 className="only-heard">Order</h1>
        <Empty title="No job is chosen.">Tick the jobs to order for.</Empty>
      </>
    );
  return (
    <Asked query={query} waiting="Summing the needs" heading="Order">
      {order => <Ready order={order} chosen={chosen} />}
    </Asked>
  );
}

function Ready({ order, chosen }: { order: OrderAnswer; chosen: string[] }) {
  const lines = order.groups.flatMap(group => group.lines);
  const pieces = lines.reduce((sum, line) => sum + line.total, 0);
  const asks = lines.reduce((sum, line) => sum + line.asks.length, 0);
  if (lines.length === 0)
    return (
      <>
        <h1 className="only-heard">Order</h1>
        <Empty title="These jobs need nothing yet.">
          <p>Add parts to a job, from its model's list or by their size.</p>
        </Empty>
        <LeftOut leftOut={order.leftOut} />
      </>
    );
  const jobNumbers = order.jobs.map(job => job.number);
  return (
    <>
      <div className="order-head">
        <div>
          <h1>
            One order for {jobNumbers.length === 1 ? 'job' : 'jobs'} {listWords(jobNumbers)}
          </h1>
          <p className="order-total">
            <span className="fig">{pieces}</span> {pieces === 1 ? 'piece' : 'pieces'}
          </p>
          <p>
            {lines.length} {lines.length === 1 ? 'line' : 'lines'}
            {asks > 0 ? <b className="look-here">, {asks} to answer first</b> : ', nothing left to ask'}
          </p>
        </div>
        <div className="buttons no-print">
          <May least="repairer">
            <Download jobs={chosen} />
          </May>
          <Button onClick={() => print()}>Print the order</Button>
        </div>
      </div>
      <Asks lines={lines} />
      {order.groups.map(group => (
        <Section
          key={group.maker ?? ''}
          title={group.maker ?? 'Any maker, by size'}
          aside={piecesWords(group.lines)}
        >
          <Pool lines={group.lines} jobs={order.jobs} />
        </Section>
      ))}
      <LeftOut leftOut={order.leftOut} />
    </>
  );
}

function piecesWords(lines: { total: number }[]): string {
  const pieces = lines.reduce((sum, line) => sum + line.total, 0);
  return `${pieces} ${pieces === 1 ? 'piece' : 'pieces'}`;
}

function listWords(numbers: number[]): string {
  if (numbers.length < 2) return numbers.join('');
  return `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}
