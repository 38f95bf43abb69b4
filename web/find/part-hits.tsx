import { Link } from 'wouter';
import type { PartHit } from '../../api/answers/index.ts';
import { Size, titleOf } from '../part/size.tsx';
import { LineMark, Triangle } from '../ui/marks.tsx';
import { Section } from '../ui/sheet.tsx';
import { WhyNot } from './compare-form.tsx';

const because: Record<PartHit['matched'], string> = {
  number: 'its number',
  'part-of-number': 'part of its number',
  words: 'its words',
  size: 'its size',
};

interface PartHitsProps {
  parts: PartHit[];
  /** The size that was asked for: a part of another size has a way to why it is not that. */
  wanted?: string | null | undefined;
}

/** Parts that answer, with their sizes and the models that take them. */
export function PartHits({ parts, wanted }: PartHitsProps) {
  return (
    <Section title="Parts" aside={parts.length}>
      <table className="folds part-hits">
        <thead>
          <tr>
            <th>Maker</th>
            <th>Part number</th>
            <th>Part</th>
            <th>Size</th>
            <th>In</th>
            <th>Found by</th>
          </tr>
        </thead>
        <tbody>
          {parts.map(part => (
            <tr key={part.id}>
              <td className="maker">{part.maker.name}</td>
              <td className="number fig">
                <Link href={`/parts/${part.id}`}>{part.number ?? 'no number'}</Link>
              </td>
              <td className="name">
                {part.name}
                {part.caution ? (
                  <span className="hazard small">
                    <Triangle />
                    {part.caution}
                  </span>
                ) : null}
              </td>
              <td className="its-size">
                {part.size ? (
                  <>
                    <Size size={part.size} /> <span className="label">{titleOf(part.category)}</span>
                  </>
                ) : (
                  <span className="quiet">no size</span>
                )}
                {part.review ? (
                  <span className="marked label look-here">
                    <LineMark line="break" />
                    to check
                  </span>
                ) : null}
              </td>
              <td className="models">{part.models.map(model => model.name).join(', ')}</td>
              <td className="by quiet">
                {because[part.matched]}{' '}
                {wanted && part.size && part.size !== wanted ? (
                  <WhyNot a={wanted} b={part.id} of={part.number ?? part.name} />
                ) : null}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Section>
  );
}
