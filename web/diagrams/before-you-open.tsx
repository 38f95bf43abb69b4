import type { DiagramRow } from '../../api/answers/index.ts';
import { hazardsOf } from '../part/caution.tsx';
import { Triangle } from '../ui/marks.tsx';
import { Section } from '../ui/sheet.tsx';
import { understoodOf } from './understood-of.ts';

/** What the lines of a sheet tell before a machine is opened: what can hurt, what is renumbered, what is not sold alone. */
export function BeforeYouOpen({ rows }: { rows: DiagramRow[] }) {
  const hazards = new Map<string, { what: string; refs: string[] }>();
  for (const row of rows) {
    const { category, attrs } = understoodOf(row);
    for (const { title, what } of hazardsOf(category, attrs)) {
      const known = hazards.get(title) ?? { what, refs: [] };
      known.refs.push(row.ref || row.partNumber || row.place);
      hazards.set(title, known);
    }
  }
  const renumbered = rows.filter(row => row.supersededBy.length > 0);
  const bound = rows.filter(row => row.facts.some(fact => fact.kind === 'not-sold-separately'));
  if (hazards.size + renumbered.length + bound.length === 0) return null;
  return (
    <Section title="Before you open it" aside="from the lines of this sheet">
      <dl className="facts before">
        {[...hazards].map(([title, { what, refs }]) => (
          <div key={title}>
            <dt className="hazard">
              <Triangle />
              {title}
            </dt>
            <dd>
              <span className="fig">{refs.join(', ')}</span>: {what}
            </dd>
          </div>
        ))}
        {renumbered.length > 0 ? (
          <div>
            <dt>New numbers</dt>
            <dd>
              {renumbered.map(row => (
                <span key={row.id} className="pair">
                  {row.ref} <span className="fig">{row.supersededBy.join(' or ')}</span>
                </span>
              ))}
            </dd>
          </div>
        ) : null}
        {bound.length > 0 ? (
          <div>
            <dt>Not sold alone</dt>
            <dd className="fig">{bound.map(row => row.ref || row.partNumber).join(', ')}</dd>
          </div>
        ) : null}
      </dl>
      <p className="label">The list tells some left-hand threads, never all: try gently both ways.</p>
    </Section>
  );
}
