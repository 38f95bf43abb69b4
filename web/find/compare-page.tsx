import { useQuery } from '@tanstack/react-query';
import { useLayoutEffect, useRef, useState } from 'react';
import { Link, useSearchParams } from 'wouter';
import type { ComparedAnswer, Comparison } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { drawingOf } from '../drawing/of-size.ts';
import { Overlay } from '../drawing/overlay.tsx';
import { MakersPartOnly } from '../part/caution.tsx';
import { headingOf, Size, sizePath, sizeWords } from '../part/size.tsx';
import { Verdict } from '../part/verdict.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Asked, Empty } from '../ui/states.tsx';
import { CompareForm, comparePath } from './compare-form.tsx';
import { SideBySide } from './side-by-side.tsx';
import './find.css';

/** Two parts or sizes side by side: what differs, drawn upon each other, and why the one does or does not do for the other. */
export function ComparePage() {
  const { bench } = useBench();
  const [search] = useSearchParams();
  const [a, b] = [search.get('a') ?? '', search.get('b') ?? ''];
  const query = useQuery({
    queryKey: ['compare', bench?.id, a, b],
    queryFn: () => api.compare(a, b),
    enabled: a !== '' && b !== '',
  });
  return (
    <Sheet
      title="Why not?"
      cells={[
        { label: 'Bench', value: bench?.name },
        { label: 'Lengths', value: 'mm, first angle' },
      ]}
    >
      <h1>Why not?</h1>
      {a && b ? (
        <Asked query={query} waiting="Laying one upon the other">
          {answer => <Ready answer={answer} />}
        </Asked>
      ) : (
        <Empty title="Name two parts or sizes.">
          <p>They are laid upon each other, and what differs is named.</p>
        </Empty>
      )}
      <Section title="Compare others" className="no-print">
        <CompareForm
          key={`${a} ${b} ${query.isSuccess}`}
          a={named(query.data?.a, a)}
          b={named(query.data?.b, b)}
        />
      </Section>
    </Sheet>
  );
}

/** How a thing is named in the box: a part by its number, a size as it is written; else as it was asked for. */
const named = (thing: ComparedAnswer | undefined, asked: string): string =>
  thing?.part?.number ?? thing?.item ?? (/^[0-9a-f-]{36}$/i.test(asked) ? '' : asked);

function Ready({ answer }: { answer: Comparison }) {
  const { a, b, rows, bForA, aForB } = answer;
  const differing = rows.filter(row => row.standing === 'differs').length;
  return (
    <div className="columns compare">
      <div className="stack">
        <OneWay wanted={a} candidate={b} said={bForA} main />
        <Section title="Side by side" aside={differing === 1 ? '1 differs' : `${differing} differ`}>
          {rows.length > 0 ? (
            <SideBySide a={shortName(a)} b={shortName(b)} rows={rows} />
          ) : (
            <p>They are not of one kind: there is no dimension to compare.</p>
          )}
        </Section>
        <OneWay wanted={b} candidate={a} said={aForB} />
        <p>
          <Link href={comparePath(keyOf(b), keyOf(a))}>Turn them about</Link>
        </p>
      </div>
      <Section title="Laid upon each other">
        <Drawn a={a} b={b} />
        <ul className="legend">
          <li>
            <LineSample of="wanted" /> {<Name thing={a} />}
          </li>
          <li>
            <LineSample of="instead" /> {<Name thing={b} />}
          </li>
        </ul>
      </Section>
    </div>
  );
}

const keyOf = (thing: ComparedAnswer) => thing.part?.id ?? thing.item ?? thing.size ?? '';
const shortName = (thing: ComparedAnswer) =>
  thing.part ? (thing.part.number ?? thing.part.name) : sizeWords(thing.item ?? thing.size ?? '');

/** A part with its maker and number, or the size alone. */
function Name({ thing: { part, size, category } }: { thing: ComparedAnswer }) {
  const figures = size ? <Size size={size} /> : null;
  if (!part)
    return (
      <Link href={sizePath(size!)}>
        {headingOf(category)} {figures}
      </Link>
    );
  return (
    <>
      {part.maker.name}{' '}
      <Link className="fig" href={`/parts/${part.id}`}>
        {part.number ?? part.name}
      </Link>{' '}
      {figures ?? part.name}
    </>
  );
}

interface OneWayProps {
  wanted: ComparedAnswer;
  candidate: ComparedAnswer;
  said: Comparison['bForA'];
  main?: boolean;
}

/** One in the place of the other, with every reason, worst first. */
function OneWay({ wanted, candidate, said, main = false }: OneWayProps) {
  return (
    <Section title={main ? 'In its place' : 'The other way about'} aside="judged one way">
      <p className={main ? 'in-place say' : 'in-place'}>
        <Verdict verdict={said.verdict} />
        <span>
          <Name thing={candidate} /> in place of <Name thing={wanted} />
        </span>
      </p>
      {said.caution ? <MakersPartOnly sameSize={candidate.size === wanted.size} /> : null}
      <ul className="reasons">
        {said.reasons.map(reason => (
          <li key={`${reason.gate} ${reason.text}`}>{reason.text}</li>
        ))}
      </ul>
    </Section>
  );
}

/** Both drawings to one scale in the room there is. */
function Drawn({ a, b }: { a: ComparedAnswer; b: ComparedAnswer }) {
  const box = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(360);
  useLayoutEffect(() => {
    const watch = new ResizeObserver(([entry]) => setWidth(entry?.contentRect.width || 360));
    if (box.current) watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  const [first, second] = [drawingOf(a), drawingOf(b)];
  return (
    <div ref={box}>
      {first && second ? (
        <Overlay
          a={first}
          b={second}
          title={`${shortName(b)}, dashed, laid upon ${shortName(a)}`}
          room={{ width, height: 340 }}
        />
      ) : (
        <p>{first || second ? 'Only one of them has the numbers to be drawn.' : 'Neither can be drawn.'}</p>
      )}
    </div>
  );
}

function LineSample({ of }: { of: 'wanted' | 'instead' }) {
  return (
    <svg className="drawing overlay line-sample" viewBox="0 0 40 8" aria-hidden="true">
      <g className={of}>
        <path className="outline" d="M1 4H39" />
      </g>
    </svg>
  );
}
