import { Link } from 'wouter';
import type { OrderLineAnswer } from '../../api/answers/index.ts';
import { sizeWords } from '../part/size.tsx';
import { LineMark } from '../ui/marks.tsx';
import { Section } from '../ui/sheet.tsx';
import { AnswerOpen } from './answer-open.tsx';

/** What answers a question, where the job itself does. */
const answerWords: Partial<Record<string, string>> = {
  'as-required': 'Say how many in',
  'serial-unknown': 'Give the serial in',
  'not-on-this-model': 'Pick its line in',
};

/** The jobs a question is about: where it asks how many, those that have not said. */
function askedOf({ jobs }: OrderLineAnswer, code: string) {
  return code === 'as-required' ? jobs.filter(job => job.qty === null) : jobs;
}

/** What only a person can answer before a line can be ordered; it stands first. */
export function Asks({ lines }: { lines: OrderLineAnswer[] }) {
  const asks = lines.flatMap(line => line.asks.map(ask => ({ line, ask })));
  if (asks.length === 0) return null;
  return (
    <Section title="To answer first" aside={asks.length} className="to-answer">
      <ul className="rows">
        {asks.map(({ line, ask }) => (
          <li key={`${line.item} ${ask.code} ${ask.needs.join(' ')}`}>
            <p className="marked look-here">
              <LineMark line="break" />
              <b>{line.size ? sizeWords(line.item) : line.name}</b>
            </p>
            <p>{ask.text}</p>
            <AnswerOpen ask={ask} />
            <p className="label">
              {askedOf(line, ask.code).map(job => (
                <Link key={job.job} href={`/jobs/${job.job}`}>
                  {answerWords[ask.code] ?? 'See'} job {job.number}
                </Link>
              ))}
            </p>
          </li>
        ))}
      </ul>
    </Section>
  );
}
