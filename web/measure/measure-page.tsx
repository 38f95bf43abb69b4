import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import {
  BadMeasurement,
  type CategoryName,
  type KnownSize,
  type MeasureAnswer,
  measurablesOf,
  measure,
  measuredCategories,
} from '../../indexer/index.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { drawingOf } from '../drawing/of-size.ts';
import { headingOf, titleOf } from '../part/size.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Empty } from '../ui/states.tsx';
import { drawAsMeasured, drawnKey, samples } from './as-measured.ts';
import { keptInstrument } from './instrument-kept.ts';
import { Cautions, Follows, MeasureNext } from './measure-next.tsx';
import { Readings } from './readings.tsx';
import { nothingTaken, requestOf, type Taken } from './taken.ts';
import { useKnownSizes } from './use-known.ts';
import { Ways } from './ways.tsx';
import { WhatItCanBe } from './what-it-can-be.tsx';
import './measure.css';

/** What a loose part is, from what was measured on it. Answered in the page itself. */
export function MeasurePage({ category }: { category: string | undefined }) {
  const known = measuredCategories.find(each => each === category);
  return known ? <MeasureOne key={known} category={known} /> : <ChooseKind />;
}

function ChooseKind() {
  return (
    <Sheet title="Measure" cells={[{ label: 'Lengths', value: 'mm or inch' }]}>
      <Ways />
      <div className="page-head">
        <h1>Measure: what kind of part is it?</h1>
        <p className="quiet">
          Then type what you can reach. The answer comes as you type, also without a network.
        </p>
      </div>
      <ul className="kinds">
        {measuredCategories.map(category => (
          <li key={category}>
            <Link href={`/measure/${category}`}>
              <Picture category={category} />
              {headingOf(category)}
            </Link>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}

function Picture({ category }: { category: CategoryName }) {
  const drawing = drawingOf({
    category,
    dims: samples[category] ?? {},
    implied: {},
    attrs: category === 'screw' ? { head: 'pan', drive: 'phillips' } : {},
  });
  if (!drawing) return null;
  return (
    <span className="kind-picture" aria-hidden="true">
      <Drawing drawing={{ ...drawing, dimensions: [] }} title="" room={{ width: 150, height: 110 }} />
    </span>
  );
}

function MeasureOne({ category }: { category: CategoryName }) {
  const [taken, setTaken] = useState<Taken>(() => ({
    ...nothingTaken,
    instruments: keptInstruments(category),
  }));
  const [focus, setFocus] = useState<string>();
  const known = useKnownSizes();
  const measurables = measurablesOf(category) ?? [];
  const { answer, bad } = useMemo(() => answerTo(category, taken, known), [category, taken, known]);
  const drawing = drawAsMeasured(category, taken, answer?.candidates[0]);
  const title = `Measure: a loose ${titleOf(category)}`;
  return (
    <Sheet
      title={title}
      cells={[
        { label: 'Answered', value: 'in this page' },
        { label: 'Lengths', value: 'mm, first angle' },
      ]}
    >
      <Ways />
      <div className="page-head">
        <h1>{title}</h1>
        <p className="quiet">
          Type what you can, as 4.98, 4,98 or 3/16; several readings of one place behind one another. Leave
          blank what you cannot reach. <Link href="/measure">Another kind of part</Link>
        </p>
      </div>
      <div className="measuring">
        <Section title="Your readings" aside="mm or inch">
          <Readings
            category={category}
            taken={taken}
            onChange={change => setTaken(before => ({ ...before, ...change }))}
            answer={answer}
            onFocus={setFocus}
          />
        </Section>
        <Section title="As you measured it" className="as-measured">
          {drawing ? (
            <Drawing
              drawing={drawing}
              title={`${headingOf(category)} as measured`}
              room={{ width: 620, height: 380 }}
              focus={focus && drawnKey(category, focus)}
            />
          ) : (
            <p>
              {taken.attrs.type === undefined
                ? `These readings do not make one ${titleOf(category)}: look whether two stand in each other’s field.`
                : 'This kind is not drawn.'}
            </p>
          )}
        </Section>
      </div>
      <div className="stack answer">
        {bad ? (
          <Section title="What it can be">
            <p role="alert">
              {bad.message} {bad.remedy}
            </p>
          </Section>
        ) : null}
        {answer ? (
          <>
            <Follows follows={answer.follows} />
            <WhatItCanBe
              category={category}
              answer={answer}
              measurables={measurables}
              focus={focus}
              known={known}
            />
            <div className={answer.next.length > 0 ? 'columns' : 'alone'}>
              <MeasureNext answer={answer} />
              <Cautions cautions={answer.cautions} />
            </div>
          </>
        ) : bad ? null : (
          <Section title="What it can be">
            <Empty title="The sizes that agree will be here.">
              <p>Begin with the {measurables[0]?.label}. One reading is enough to begin with.</p>
            </Empty>
          </Section>
        )}
      </div>
    </Sheet>
  );
}

function keptInstruments(category: CategoryName): Taken['instruments'] {
  return Object.fromEntries(
    (measurablesOf(category) ?? [])
      .filter(({ ways, counted }) => !counted && ways.length > 0)
      .map(({ key, ways }) => [
        key,
        keptInstrument(`${category}.${key}`, [...ways.filter(way => way !== 'pin'), 'rule']),
      ]),
  );
}

interface Answered {
  answer: MeasureAnswer | null;
  bad: BadMeasurement | null;
}

function answerTo(category: CategoryName, taken: Taken, known: readonly KnownSize[]): Answered {
  const request = requestOf(category, taken, known);
  if (!request) return { answer: null, bad: null };
  try {
    return { answer: measure(request), bad: null };
  } catch (error) {
    if (error instanceof BadMeasurement) return { answer: null, bad: error };
    throw error;
  }
}
