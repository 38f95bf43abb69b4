import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { Candidate, Interchange } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { MakersPartOnly } from '../part/caution.tsx';
import { Size, SizeLink } from '../part/size.tsx';
import { Verdict } from '../part/verdict.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked } from '../ui/states.tsx';
import { WhyNot } from './compare-form.tsx';

/** What may stand in for a part, judged one way, each with its reasons, worst first. */
export function InterchangeView({ part }: { part: string }) {
  const { bench } = useBench();
  const query = useQuery({
    queryKey: ['interchange', bench?.id, part],
    queryFn: () => api.interchange(part),
  });
  return (
    <Section title="What may stand in for it" aside="judged one way">
      <Asked query={query} waiting="Judging what could replace it">
        {answer => <Ready answer={answer} />}
      </Asked>
    </Section>
  );
}

function Ready({ answer }: { answer: Interchange }) {
  const groups: [string, Candidate[]][] = [
    ['Same article', answer.sameItem],
    ['Same size', answer.sameSize],
    ['Near, but not it', answer.near],
  ];
  const none = groups.every(([, candidates]) => candidates.length === 0);
  return (
    <>
      {answer.caution ? <MakersPartOnly /> : null}
      {none ? <p>Nothing on this bench comes near it.</p> : null}
      {groups.map(([title, candidates]) =>
        candidates.length > 0 ? (
          <div key={title} className="candidates">
            <h3>{title}</h3>
            <ul className="rows">
              {candidates.map(candidate => (
                <CandidateRow key={candidate.part.id} wanted={answer.part.id} candidate={candidate} />
              ))}
            </ul>
          </div>
        ) : null,
      )}
      {answer.beyond > 0 && answer.part.size ? (
        <p>
          {answer.beyond} more of this size are not judged here: <SizeLink size={answer.part.size} /> says
          where each is used.
        </p>
      ) : null}
    </>
  );
}

interface CandidateRowProps {
  wanted: string;
  candidate: Candidate;
}

function CandidateRow({ wanted, candidate: { part, verdict, reasons } }: CandidateRowProps) {
  return (
    <li className="candidate">
      <Verdict verdict={verdict} />
      <div>
        <p>
          {part.maker.name}{' '}
          <Link className="fig" href={`/parts/${part.id}`}>
            {part.number ?? part.name}
          </Link>{' '}
          {part.size ? <Size size={part.size} /> : part.name}
        </p>
        <ul className="reasons">
          {reasons.map(reason => (
            <li key={`${reason.gate} ${reason.text}`}>{reason.text}</li>
          ))}
        </ul>
        {part.models.length > 0 ? (
          <p className="label">in {part.models.map(model => model.name).join(', ')}</p>
        ) : null}
        <p>
          <WhyNot a={wanted} b={part.id} of={part.number ?? part.name} />
        </p>
      </div>
    </li>
  );
}
