import { Link } from 'wouter';
import type { OrderAnswer, OrderLineAnswer } from '../../api/answers/index.ts';
import { Size, takeApart, titleOf, valueWords } from '../part/size.tsx';
import { LineMark, Triangle } from '../ui/marks.tsx';
import { Taken } from './taken.tsx';

interface PoolProps {
  lines: OrderLineAnswer[];
  jobs: OrderAnswer['jobs'];
}

/** Lines of an order: what, who needs how many, how many in all, and why it is there. */
export function Pool({ lines, jobs }: PoolProps) {
  return (
    <div className="pool-room">
      <table className="folds pool">
        <thead>
          <tr>
            <th>Item</th>
            {jobs.map(job => (
              <th key={job.id} className="n" title={job.owner}>
                Job {job.number}
              </th>
            ))}
            <th className="n">Order</th>
            <th>Number</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(line => (
            <tr key={`${line.item} ${line.needs.join(' ')}`}>
              <td className="item">
                <Item line={line} />
              </td>
              {jobs.map(job => (
                <td key={job.id} className="n of-job">
                  <span className="only-narrow">job {job.number} </span>
                  <OfJob line={line} job={job.id} />
                </td>
              ))}
              <td className="n total">
                <span className="only-narrow">order </span>
                <b>{line.total}</b>
              </td>
              <td className="numbers">
                {line.numbers.map(({ maker, number, part }) => (
                  <span key={`${maker} ${number}`}>
                    <span className="label">{maker}</span>{' '}
                    {part ? (
                      <Link className="fig" href={`/parts/${part}`}>
                        {number}
                      </Link>
                    ) : (
                      <span className="fig">{number}</span>
                    )}
                  </span>
                ))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Item({ line }: { line: OrderLineAnswer }) {
  // Why it is the maker's part is said by its triangle.
  const because = line.because.filter(why => !(line.makersPartOnly && /maker.s part only/i.test(why)));
  return (
    <>
      {line.size ? <Size size={line.size} /> : <b>{line.name}</b>}
      <span className="label">
        {line.size ? articleWords(line.item, line.size) : 'no size: by its number'}
      </span>
      {because.map(why => (
        <span key={why} className="why">
          {why}
        </span>
      ))}
      <Taken line={line} />
      {line.makersPartOnly ? (
        <span className="hazard small">
          <Triangle />
          Maker's part only
        </span>
      ) : null}
      {line.asks.map(ask => (
        <span key={ask.text} className="marked look-here small asks">
          <LineMark line="break" />
          {ask.text}
        </span>
      ))}
    </>
  );
}

function OfJob({ line, job }: { line: OrderLineAnswer; job: string }) {
  const wanted = line.jobs.find(each => each.job === job);
  if (!wanted) return <span className="quiet">·</span>;
  return <>{wanted.qty ?? '?'}</>;
}

/** What kind of article it is; a maker's own part is known by its number, and only its size says of what kind. */
function articleWords(item: string, size: string): string {
  const { category, attributes } = takeApart(item.startsWith(size) ? item : size);
  return [titleOf(category), ...attributes.map(valueWords)].join(', ');
}
