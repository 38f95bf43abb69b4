import { useQuery } from '@tanstack/react-query';
import type { SizeAnswer } from '../../api/answers/index.ts';
import { type Attrs, type CategoryName, categories, toolsOf, writeItem } from '../../indexer/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Drawing } from '../drawing/drawing.tsx';
import { drawingOf } from '../drawing/of-size.ts';
import { AddToJob } from '../jobs/add-to-job.tsx';
import { MakersPartOnly } from '../part/caution.tsx';
import { inchFraction } from '../part/inch.ts';
import { headingOf, Size, sizeWords } from '../part/size.tsx';
import { ToolFacts } from '../part/tools.tsx';
import { May } from '../people/may.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked, Empty } from '../ui/states.tsx';
import { AllUses } from './all-uses.tsx';
import { CompareForm } from './compare-form.tsx';
import { NearSizes } from './near-sizes.tsx';

interface SizeViewProps {
  size: string;
  /** What else is wanted of it, for the drawing: the head of a screw. */
  attrs?: Attrs | undefined;
}

export function SizeView({ size, attrs = {} }: SizeViewProps) {
  const { bench } = useBench();
  const query = useQuery({ queryKey: ['size', bench?.id, size], queryFn: () => api.size(size) });
  return (
    <Asked query={query} waiting={`Looking up ${sizeWords(size)}`} heading={sizeWords(size)}>
      {answer => <Ready answer={answer} attrs={attrs} />}
    </Asked>
  );
}

function Ready({ answer, attrs }: { answer: SizeAnswer; attrs: Attrs }) {
  // What was said besides the size is part of what is wanted: a pan head stays a pan head.
  const item = writeItem(answer.category as CategoryName, answer.dims, answer.implied, attrs) ?? answer.size;
  const { models, makers } = answer.used;
  return (
    <div className="size-sheet">
      <div>
        <TheSize answer={answer} attrs={attrs} />
        <Section
          title="Where it is used"
          aside={`${models} ${models === 1 ? 'model' : 'models'} of ${makers} ${makers === 1 ? 'maker' : 'makers'}`}
          className="used"
        >
          {answer.uses.length > 0 ? (
            <AllUses of={answer} />
          ) : (
            <Empty title="No list on this bench names it.">
              <p>It is a size all the same: add it to a job, or look at what is near it.</p>
            </Empty>
          )}
        </Section>
      </div>
      <div>
        <Section title="For a job" className="want">
          {answer.caution ? (
            <MakersPartOnly>
              <p className="small">Some of these hold a load, brake or the like: look at where it is used.</p>
            </MakersPartOnly>
          ) : null}
          <May least="counter">
            <AddToJob want={{ item }} what={sizeWords(item)} />
          </May>
          <Articles answer={answer} />
        </Section>
        <Section title="Near, but not it" aside="what differs is named" className="nearby">
          <NearSizes of={answer} near={answer.near} />
          <CompareForm a={answer.size} fixed={answer.size} />
        </Section>
      </div>
    </div>
  );
}

function TheSize({ answer, attrs }: { answer: SizeAnswer; attrs: Attrs }) {
  const { category, dims, implied } = answer;
  const drawing = drawingOf({ category, dims, implied, attrs });
  const measures = categories.get(category)?.dims ?? [];
  return (
    <section className="section the">
      <h1 className="size-heading">
        {headingOf(category)} <Size size={answer.size} hero />
      </h1>
      <div className="drawn">
        {drawing ? <Drawing drawing={drawing} title={sizeWords(answer.size)} /> : null}
        <dl className="facts">
          {measures
            .filter(({ key }) => (dims[key] ?? implied[key]) !== undefined)
            .map(({ key, label }) => (
              <div key={key}>
                <dt>{label}</dt>
                <dd>
                  <b className="fig">{dims[key] ?? implied[key]}</b>
                  <Inch value={dims[key] ?? implied[key]} />
                  {dims[key] === undefined ? <span className="label"> by its standard</span> : null}
                </dd>
              </div>
            ))}
          {answer.designations.length > 0 ? (
            <div>
              <dt>Designation</dt>
              <dd className="fig">{answer.designations.join(', ')}</dd>
            </div>
          ) : null}
          <ToolFacts tools={toolsOf(category, dims, attrs)} />
          <div>
            <dt>Lengths</dt>
            <dd>mm, nominal</dd>
          </div>
        </dl>
      </div>
    </section>
  );
}

/** The inch that a length is, beside it. */
function Inch({ value }: { value: number | string | undefined }) {
  const fraction = typeof value === 'number' ? inchFraction(value) : null;
  return fraction ? <span className="inch"> {fraction} in</span> : null;
}

/** The articles of this size: what makes another article, and what their lists leave open. */
function Articles({ answer }: { answer: SizeAnswer }) {
  if (answer.items.length === 0) return null;
  return (
    <>
      <h3 className="articles-head">As articles</h3>
      <ul className="rows articles">
        {answer.items.map(({ item, open, parts }) => (
          <li key={item}>
            <span>{sizeWords(item).split(', ').slice(1).join(', ') || 'nothing more stated'}</span>
            <span className="fig">{parts}</span>
            {open.length > 0 ? <span className="label">not stated: {open.join(', ')}</span> : null}
          </li>
        ))}
      </ul>
    </>
  );
}
