import type { Comparison } from '../../api/answers/index.ts';
import { differenceWords } from '../part/difference.ts';
import { attributeWords } from '../part/size.tsx';

type Row = Comparison['rows'][number];

/** Every dimension and attribute of two things in one row each, with what differs in words. */
export function SideBySide({ a, b, rows }: { a: string; b: string; rows: Row[] }) {
  return (
    <table className="side-by-side">
      <thead>
        <tr>
          <th>What</th>
          <th>{a}</th>
          <th>{b}</th>
          <th>Difference</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(row => (
          <tr key={row.key} className={row.standing}>
            <th scope="row">{row.label}</th>
            <td className="fig">{written(row, row.a)}</td>
            <td className="fig">{written(row, row.b)}</td>
            <td>{standingWords(row)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function written({ kind, key }: Row, value: Row['a']) {
  if (value === null) return <span className="quiet">not stated</span>;
  return kind === 'attribute' && typeof value !== 'number' ? attributeWords(key, value) : String(value);
}

function standingWords(row: Row) {
  if (row.standing === 'same') return 'the same';
  if (row.standing === 'open') return 'open: ask or measure';
  const { key, label, a, b, difference } = row;
  const words =
    difference === null
      ? 'another'
      : differenceWords({ dimension: key, label, a: Number(a), b: Number(b), difference });
  return <b className="look-here">{words}</b>;
}
