import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Verdict } from './verdict.tsx';

/** How many are told; the rest stands on the part's own page. */
const most = 3;

/** The first few parts that may stand in for one, each with its verdict and the worst reason. */
export function StandIns({ part }: { part: string }) {
  const { bench } = useBench();
  const query = useQuery({
    queryKey: ['interchange', bench?.id, part],
    queryFn: () => api.interchange(part),
  });
  const answer = query.data;
  const candidates = answer ? [...answer.sameItem, ...answer.sameSize, ...answer.near] : [];
  return (
    <div>
      <h3>What may stand in for it</h3>
      {answer?.caution ? <p className="look-here">{answer.caution}</p> : null}
      <ul className="rows stand-ins">
        {candidates.slice(0, most).map(({ part: other, verdict, reasons }) => (
          <li key={other.id}>
            <Verdict verdict={verdict} />
            <span>
              {other.maker.name} <span className="fig">{other.number}</span> {other.name}
              {reasons[0] ? <span className="label">{reasons[0].text}</span> : null}
            </span>
          </li>
        ))}
      </ul>
      {answer && candidates.length === 0 ? <p className="quiet">No other part here is like it.</p> : null}
      <Link href={`/parts/${part}`}>
        {candidates.length > most ? `All ${candidates.length}, and where it is used` : 'Where it is used'}
      </Link>
    </div>
  );
}
