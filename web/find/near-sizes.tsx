import type { SizeAnswer } from '../../api/answers/index.ts';
import { Difference } from '../drawing/difference.tsx';
import { differenceWords } from '../part/difference.ts';
import { SizeLink } from '../part/size.tsx';

/** Sizes that are nearly this one, what differs named and hatched. */
export function NearSizes({ of, near }: { of: SizeAnswer; near: SizeAnswer['near'] }) {
  if (near.length === 0) return <p className="quiet">No other size on this bench comes near.</p>;
  return (
    <ul className="rows near-sizes">
      {near.map(each => (
        <li key={each.size}>
          <Difference category={of.category} a={of.dims} b={each.dims} />
          <div>
            <p>
              <SizeLink size={each.size} />{' '}
              <b className="look-here">{each.differences.map(differenceWords).join(', ')}</b>
            </p>
            <p className="label">
              {each.parts} {each.parts === 1 ? 'part' : 'parts'} in {each.models}{' '}
              {each.models === 1 ? 'model' : 'models'}
              {each.designations.length > 0 ? `, ${each.designations.join(', ')}` : ''}
            </p>
          </div>
        </li>
      ))}
    </ul>
  );
}
