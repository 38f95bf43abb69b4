import { Link } from 'wouter';
import type { SizeAnswer } from '../../api/answers/index.ts';
import { Evidence } from '../part/evidence.tsx';
import { Triangle } from '../ui/marks.tsx';

/** Every line that takes a size: whose, where, how many, and how we know. */
export function Uses({ uses }: { uses: SizeAnswer['uses'] }) {
  return (
    <table className="folds uses">
      <thead>
        <tr>
          <th>Maker</th>
          <th>Model</th>
          <th className="n">Ref</th>
          <th>Part number</th>
          <th className="n">Qty</th>
          <th>How we know its size</th>
        </tr>
      </thead>
      <tbody>
        {uses.map(use => (
          <tr key={use.row}>
            <td className="maker">{use.model.maker.name}</td>
            <td className="model">
              <Link href={`/diagrams/${use.diagram}`}>{use.model.name}</Link>
            </td>
            <td className="n ref">
              <span className="only-narrow">ref </span>
              {use.ref || '–'}
            </td>
            <td className="number fig">
              <Link href={`/parts/${use.part.id}`}>{use.part.number ?? 'no number'}</Link>
            </td>
            <td className="n qty">
              <span className="only-narrow">qty </span>
              {use.qty ?? (use.qtyText || '–')}
            </td>
            <td className="how">
              {use.evidence ? <Evidence kind={use.evidence.kind} detail={use.evidence.detail} /> : null}
              {use.duty.critical ? (
                <span className="hazard small">
                  <Triangle />
                  Maker's part only
                </span>
              ) : null}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
