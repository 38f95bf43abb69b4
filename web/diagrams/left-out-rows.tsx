import type { DiagramRow } from '../../api/answers/index.ts';
import { Mark } from '../ui/marks.tsx';
import { Section } from '../ui/sheet.tsx';

const reasons: Record<string, string> = {
  heading: 'a heading',
  header: 'column names',
  footer: 'a footer',
  total: 'a total',
  empty: 'empty',
};

/** Rows that are no lines of the list, and rows that could not be read, each with why. */
export function LeftOutRows({ rows }: { rows: DiagramRow[] }) {
  if (rows.length === 0) return null;
  const faulted = rows.filter(row => row.outcome === 'faulted');
  const skipped = rows.filter(row => row.outcome === 'skipped');
  return (
    <Section title="Left out" aside={`${rows.length} ${rows.length === 1 ? 'row' : 'rows'}`}>
      <ul className="rows left-out">
        {faulted.map(row => (
          <li key={row.id}>
            <p className="marked">
              <Mark shape="barred" />
              <b>Not readable</b> <span className="label">{row.place}</span>
            </p>
            <p>
              {row.fault?.message} {row.fault?.remedy}
            </p>
            <p className="printed fig">{row.description}</p>
          </li>
        ))}
        {skipped.map(row => (
          <li key={row.id}>
            <p className="printed fig">{row.description || row.partNumber || '(nothing printed)'}</p>
            <p className="label">
              {row.place}: {reasons[row.reason ?? ''] ?? row.reason ?? 'not a part'}
            </p>
          </li>
        ))}
      </ul>
    </Section>
  );
}
