import type { Pasted, PastedRow } from '../../api/answers/index.ts';
import { ColumnChoices, type Given } from '../diagrams/column-choices.tsx';
import { hazardsOf } from '../part/caution.tsx';
import { ReadText } from '../part/read-text.tsx';
import { Size, titleOf } from '../part/size.tsx';
import { May } from '../people/may.tsx';
import { LineMark, Triangle } from '../ui/marks.tsx';
import { Section } from '../ui/sheet.tsx';
import { Empty } from '../ui/states.tsx';
import { KeepList } from './keep-list.tsx';

interface PastedAnswerProps {
  pasted: Pasted;
  text: string;
  /** What a person said of its columns. */
  columns: Given;
  onColumns: (columns: Given) => void;
}

/** What a pasted list holds: its sizes first, then its rows; and the ways to put its columns right and to keep it. */
export function PastedAnswer({ pasted, text, columns, onColumns }: PastedAnswerProps) {
  const taken = pasted.rows.filter(row => row.outcome === 'taken');
  const doubtful = taken.filter(row => row.reading?.review);
  if (taken.length === 0)
    return (
      <Empty title="No line of a parts list in it.">
        <p>
          {pasted.faults[0]?.message ?? 'Every line looks like a heading or a note.'}{' '}
          {pasted.faults[0]?.remedy ?? 'Paste the lines with their part numbers and descriptions.'}
        </p>
        <PastedColumns tables={pasted.tables} columns={columns} onColumns={onColumns} />
      </Empty>
    );
  return (
    <div className="pasted stack">
      <p className="say" role="status">
        {count(taken.length, 'line')} read, {count(pasted.sizes.length, 'size')}
        {doubtful.length > 0 ? `, ${doubtful.length} to check` : ', none to check'}
      </p>
      <May least="repairer">
        <KeepList text={text} name={pasted.document.name} columns={columns} />
      </May>
      <PastedColumns tables={pasted.tables} columns={columns} onColumns={onColumns} />
      <div className="columns">
        <Section title="Its lines" aside={`${taken.length} of ${pasted.rows.length} rows`}>
          <PastedRows rows={taken} />
          {pasted.faults.length > 0 ? (
            <ul className="rows">
              {pasted.faults.map(fault => (
                <li key={`${fault.place} ${fault.code}`}>
                  <b>{fault.place}</b>: {fault.message} <span className="quiet">{fault.remedy}</span>
                </li>
              ))}
            </ul>
          ) : null}
        </Section>
        <Section title="Its sizes" aside="pieces">
          {pasted.sizes.length > 0 ? (
            <ul className="rows size-counts">
              {pasted.sizes.map(each => (
                <li key={each.size}>
                  <span>
                    <Size size={each.size} />
                    <span className="label">{titleOf(each.category)}</span>
                  </span>
                  <b className="fig">{each.qty ?? '–'}</b>
                </li>
              ))}
            </ul>
          ) : (
            <p>No line of it states a size.</p>
          )}
        </Section>
      </div>
    </div>
  );
}

type PastedColumnsProps = Pick<PastedAnswerProps, 'columns' | 'onColumns'> & Pick<Pasted, 'tables'>;

function PastedColumns({ tables, columns, onColumns }: PastedColumnsProps) {
  if (tables.length === 0) return null;
  return (
    <details open={columns !== null}>
      <summary>Say what its columns hold</summary>
      <ColumnChoices tables={tables} given={columns} busy={false} onGive={onColumns} />
    </details>
  );
}

function PastedRows({ rows }: { rows: PastedRow[] }) {
  return (
    <table className="folds pasted-rows">
      <thead>
        <tr>
          <th className="n">Ref</th>
          <th>Line</th>
          <th>What we read</th>
          <th className="n">Qty</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(row => {
          const hazards = row.reading ? hazardsOf(row.reading.category, row.reading.attrs) : [];
          return (
            <tr key={row.place}>
              <td className="n ref">{row.ref || '–'}</td>
              <td className="words">
                <ReadText
                  text={row.description}
                  spans={row.reading?.spans ?? []}
                  doubtful={row.reading?.review ?? false}
                />
                <span className="label fig">{row.partNumber}</span>
              </td>
              <td className="what">
                {row.reading?.size ? <Size size={row.reading.size} /> : null}
                <span className="label">{row.reading?.size ? titleOf(row.reading.category) : 'no size'}</span>
                {row.reading?.review ? (
                  <span className="marked label look-here">
                    <LineMark line="break" />
                    to check
                  </span>
                ) : null}
                {hazards.map(hazard => (
                  <span key={hazard.title} className="hazard label">
                    <Triangle />
                    {hazard.title}
                  </span>
                ))}
              </td>
              <td className="n qty">
                <span className="only-narrow">qty </span>
                {row.qty ?? (row.qtyText || '–')}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

const count = (n: number, what: string) => `${n} ${what}${n === 1 ? '' : 's'}`;
