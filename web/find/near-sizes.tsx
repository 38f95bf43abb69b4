import type { SizeAnswer } from '../../api/answers/index.ts';
import { canShowDifference, Difference } from '../drawing/difference.tsx';
import { differenceWords } from '../part/difference.ts';
import { SizeLink, sizeWords } from '../part/size.tsx';
import { WhyNot } from './compare-form.tsx';
import { whereWords } from './where-words.ts';

/** Sizes that could be taken for this one, what differs named and, where its section can show it, hatched; then the rest. */
export function NearSizes({ of, near }: { of: SizeAnswer; near: SizeAnswer['near'] }) {
  if (near.length === 0) return <p className="quiet">No other size on this bench comes near.</p>;
  const nearest = near.filter(each => each.confusable);
  const further = near.filter(each => !each.confusable);
  return (
    <>
      {nearest.length > 0 ? (
        <Rows of={of} near={nearest} />
      ) : (
        <p className="quiet">No size on this bench is easily taken for it.</p>
      )}
      {further.length > 0 ? (
        <details>
          <summary>{further.length} further off</summary>
          <Rows of={of} near={further} />
        </details>
      ) : null}
    </>
  );
}

function Rows({ of, near }: { of: SizeAnswer; near: SizeAnswer['near'] }) {
  return (
    <ul className="rows near-sizes">
      {near.map(each => (
        <li key={each.size} className={canShowDifference(of.category) ? 'shown' : ''}>
          {canShowDifference(of.category) ? (
            <Difference category={of.category} a={of.dims} b={each.dims} />
          ) : null}
          <div>
            <p>
              <SizeLink size={each.size} />{' '}
              <b className="look-here">{each.differences.map(differenceWords).join(', ')}</b>
            </p>
            <p className="label">
              {whereWords(each)} <WhyNot a={of.size} b={each.size} of={sizeWords(each.size)} />
            </p>
          </div>
        </li>
      ))}
    </ul>
  );
}
