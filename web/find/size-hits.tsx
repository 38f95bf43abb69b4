import type { NearSize, SizeHit } from '../../api/answers/index.ts';
import { fitWords } from '../fit/fit-words.ts';
import { chanceWords } from '../measure/chance.ts';
import { differenceWords } from '../part/difference.ts';
import { headingOf, SizeLink, sizeWords } from '../part/size.tsx';
import { Triangle } from '../ui/marks.tsx';
import { Section } from '../ui/sheet.tsx';
import { WhyNot } from './compare-form.tsx';
import { whereWords } from './where-words.ts';

interface SizeHitsProps {
  title: string;
  hits: (SizeHit | NearSize)[];
  /** The size that was asked for, where these are only near it. */
  wanted?: string | null | undefined;
}

/** Sizes that answer, or come near, each with how many parts and models take it. */
export function SizeHits({ title, hits, wanted }: SizeHitsProps) {
  return (
    <Section title={title} aside={hits.length}>
      <ul className="rows size-hits">
        {hits.map(hit => (
          <li key={hit.size}>
            <div>
              <SizeLink size={hit.size} />
              <p className="label">{headingOf(hit.category)}</p>
            </div>
            <p>
              {whereWords(hit)}
              {'differences' in hit ? (
                <span className="look-here"> {hit.differences.map(differenceWords).join(', ')}</span>
              ) : null}
              {'onShaft' in hit && hit.onShaft ? (
                <span className="label on-shaft">
                  On the shaft: {fitWords(hit.onShaft)}; clearance{' '}
                  {chanceWords(hit.onShaft.clearanceProbability)}
                </span>
              ) : null}
              {wanted ? (
                <>
                  {' '}
                  <WhyNot a={wanted} b={hit.size} of={sizeWords(hit.size)} />
                </>
              ) : null}
            </p>
            {hit.caution ? (
              <p className="hazard small">
                <Triangle />
                {hit.caution}
              </p>
            ) : null}
          </li>
        ))}
      </ul>
    </Section>
  );
}
