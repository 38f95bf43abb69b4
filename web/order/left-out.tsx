import { Link } from 'wouter';
import type { OrderAnswer } from '../../api/answers/index.ts';
import { Section } from '../ui/sheet.tsx';

/** Needs that are not ordered by themselves, and why. */
export function LeftOut({ leftOut }: { leftOut: OrderAnswer['leftOut'] }) {
  if (leftOut.length === 0) return null;
  return (
    <Section title="Left out" aside={leftOut.length}>
      <ul className="rows">
        {leftOut.map(each => (
          <li key={each.need}>
            <b>{each.what}</b> <Link href={`/jobs/${each.job.id}`}>job {each.job.name}</Link>: {each.why}
          </li>
        ))}
      </ul>
    </Section>
  );
}
