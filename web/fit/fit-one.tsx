import { Link } from 'wouter';
import { type FitCandidate, gaugeOf, type KnownSize } from '../../indexer/index.ts';
import { SizeLink } from '../part/size.tsx';
import { FitPicture } from './fit-picture.tsx';
import { thousandths } from './fit-words.ts';

/** How one bearing sits: in a picture, and in words with their numbers. */
export function FitOne({ candidate, known }: { candidate: FitCandidate; known: readonly KnownSize[] }) {
  const {
    size,
    designations,
    onShaft,
    inHousing,
    shaftClass,
    shaftCouldBe,
    housingClass,
    play,
    widthGap,
    shims,
  } = candidate;
  const here = known.find(each => each.size === size)?.count ?? 0;
  return (
    <li className="fit">
      <p className="fit-head">
        <SizeLink size={size} /> <span className="label">{designations.slice(0, 3).join(', ')}</span>
        <span className="label here">{here > 0 ? `${here} ${here === 1 ? 'part' : 'parts'} here` : ''}</span>
        {gaugeOf(size) ? (
          <Link className="label here" href={`/gauge?sizes=${encodeURIComponent(size)}`}>
            at true size
          </Link>
        ) : null}
      </p>
      {onShaft ? <FitPicture where="On the shaft" of={onShaft} /> : null}
      {inHousing ? <FitPicture where="In the housing" of={inHousing} /> : null}
      <dl className="facts">
        {shaftClass || shaftCouldBe.length > 0 ? (
          <Fact what="Shaft as" is={classWords(shaftClass, shaftCouldBe)} />
        ) : null}
        {housingClass ? (
          <Fact what="Housing as" is={classWords(housingClass, candidate.housingCouldBe)} />
        ) : null}
        {play ? (
          <Fact
            what="Play left"
            is={`${thousandths(play.min)} to ${thousandths(play.max)} mm radial, from group ${play.group}: ${play.state}; axial ${thousandths(play.axial.min)} to ${thousandths(play.axial.max)}`}
          />
        ) : null}
        {widthGap ? (
          <Fact what="Width gap" is={`${thousandths(widthGap.min)} to ${thousandths(widthGap.max)} mm`} />
        ) : null}
        {shims.map(({ ring, id, od, thicknesses, leaves, why }) => (
          <Fact
            key={ring}
            what={`Shim on the ${ring} ring`}
            is={`${id} × ${od}, ${thicknesses.join(' + ')} mm; leaves ${thousandths(leaves.min)} to ${thousandths(leaves.max)}. ${why}`}
          />
        ))}
      </dl>
      <ul className="small reasons">
        {candidate.reasons.map(reason => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
    </li>
  );
}

const classWords = (best: string | null, also: readonly string[]) =>
  [best ?? 'no usual class', also.length > 0 ? `or ${also.join(', ')} within its doubt` : '']
    .filter(Boolean)
    .join(', ');

const Fact = ({ what, is }: { what: string; is: string }) => (
  <div>
    <dt>{what}</dt>
    <dd>{is}</dd>
  </div>
);
