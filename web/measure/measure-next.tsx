import type { MeasureAnswer } from '../../indexer/index.ts';
import { Caution } from '../part/caution.tsx';
import { headingOf, SizeLink, takeApart } from '../part/size.tsx';
import { Section } from '../ui/sheet.tsx';

/** What would settle it, the most telling first, with the figures to expect. */
export function MeasureNext({ answer }: { answer: MeasureAnswer }) {
  if (answer.next.length === 0) return null;
  return (
    <Section title="Measure next">
      <ol className="rows next">
        {answer.next.map(({ dimension, instrument, pitches, value, why, own }, order) => (
          <li key={`${dimension} ${instrument} ${pitches ?? value ?? ''}`}>
            <span className={order === 0 ? 'balloon first' : 'balloon'} aria-hidden="true">
              {order + 1}
            </span>
            <div>
              <p>{why}</p>
              {own.length > 0 ? (
                <p className="label">
                  Here, as a pin:{' '}
                  {own.map(size => (
                    <span key={size}>
                      {headingOf(takeApart(size).category)} <SizeLink size={size} />{' '}
                    </span>
                  ))}
                </p>
              ) : null}
            </div>
          </li>
        ))}
      </ol>
    </Section>
  );
}

/** What follows from the readings alone: a spring's rate. */
export function Follows({ follows }: Pick<MeasureAnswer, 'follows'>) {
  if (follows.length === 0) return null;
  return (
    <Section title="What follows">
      <ul className="rows">
        {follows.map(({ what, value, least, most, unit, why }) => (
          <li key={what}>
            <p>
              {what.charAt(0).toUpperCase() + what.slice(1)}:{' '}
              <b className="fig">
                {value} {unit}
              </b>
              , between {least} and {most}
            </p>
            <p className="label">{why}</p>
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** What to mind: the first in the frame, the rest below it. */
export function Cautions({ cautions }: { cautions: readonly string[] }) {
  const [first, ...rest] = cautions;
  if (!first) return null;
  return (
    <Caution title={first}>
      {rest.map(each => (
        <p key={each}>{each}</p>
      ))}
    </Caution>
  );
}
