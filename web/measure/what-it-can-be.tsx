import { Fragment, useState } from 'react';
import { Link } from 'wouter';
import {
  type CandidateAnswer,
  type CategoryName,
  gaugeOf,
  type KnownSize,
  type Measurable,
  type MeasureAnswer,
  parseSize,
} from '../../indexer/index.ts';
import { Size, SizeLink, takeApart, titleOf } from '../part/size.tsx';
import { Choice } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { chanceWords } from './chance.ts';
import { LimitsBar, readingOf, Scale, spanOf } from './limits-picture.tsx';
import { whyNot } from './why-not.ts';

/** Candidates that are shown at once. */
const rows = 8;

interface WhatItCanBeProps {
  category: CategoryName;
  answer: MeasureAnswer;
  measurables: readonly Measurable[];
  /** The dimension in hand. */
  focus: string | undefined;
  known: readonly KnownSize[];
}

/** The answer: the set that cannot be told apart as a heading, then each candidate by its probability over its limits. */
export function WhatItCanBe({ category, answer, measurables, focus, known }: WhatItCanBeProps) {
  const [chosen, setChosen] = useState<string>();
  const measured = measurables.filter(({ key, counted }) => !counted && readingOf(key, answer.taken));
  const shown = [chosen, focus, measured[0]?.key].find(key => measured.some(each => each.key === key));
  const [all, setAll] = useState(false);
  const many = all ? answer.candidates.length : rows;
  const read = shown ? readingOf(shown, answer.taken) : undefined;
  const span = shown ? spanOf(shown, answer, many) : null;
  const told = new Set(answer.cannotTellApart);
  return (
    <Section title="What it can be" aside="limits of its standard, and how often this bench meets each">
      <Heading category={category} answer={answer} />
      {measured.length > 1 && answer.candidates.length > 0 ? (
        <Choice
          className="which"
          label="Limits shown"
          value={shown ?? ''}
          onChange={event => setChosen(event.target.value)}
        >
          {measured.map(({ key, label }) => (
            <option key={key} value={key}>
              {label}
            </option>
          ))}
        </Choice>
      ) : null}
      <div className="candidates-scale">
        {span && answer.candidates.length > 0 ? <Scale span={span} /> : null}
      </div>
      <ol className="candidates">
        {answer.candidates.slice(0, many).map((candidate, order) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two candidates may share a size, and the list is drawn anew
          <li key={`${candidate.size} ${order}`}>
            <div className="who">
              <TheSize candidate={candidate} />
            </div>
            <div className="where">
              {shown && read && span ? (
                <LimitsBar
                  candidate={candidate}
                  dimension={shown}
                  span={span}
                  read={read}
                  told={isTold(candidate, told)}
                />
              ) : null}
            </div>
            <Chance probability={candidate.probability} not={whyNot(candidate, answer.taken, measurables)} />
            <div className="more">
              <Elsewhere size={candidate.size} known={known} />
              <details>
                <summary>Why</summary>
                <ul>
                  {candidate.reasons.map(reason => (
                    <li key={reason}>{reason}</li>
                  ))}
                </ul>
              </details>
            </div>
          </li>
        ))}
        <li>
          <div className="who">none of these</div>
          <div className="where" />
          <Chance probability={answer.noneOfThese} />
        </li>
      </ol>
      {answer.candidates.length > rows ? (
        <button type="button" className="text-button" onClick={() => setAll(!all)}>
          {all ? 'Show the likeliest only' : `Show all ${answer.candidates.length}`}
        </button>
      ) : null}
      {answer.candidates.length > 0 ? (
        <p className="label key">
          <span className="swatch made" /> limits it is made to
          <span className="swatch doubt" /> your reading and its doubt
        </p>
      ) : null}
    </Section>
  );
}

const isTold = ({ size, attrs }: CandidateAnswer, told: ReadonlySet<string>) =>
  told.has(size) || told.has(`${size} ${attrs.type ?? ''}`);

/** What the measurements settle, or what they cannot. */
function Heading({
  category,
  answer: { cannotTellApart, noneOfThese, candidates },
}: Pick<WhatItCanBeProps, 'category' | 'answer'>) {
  if (candidates.length === 0)
    return <p className="say">No {titleOf(category)} known here is like this one.</p>;
  if (noneOfThese > 0.5)
    return (
      <p className="say">None of the sizes known here agrees: measure again, or take it for a special.</p>
    );
  const [one, ...more] = cannotTellApart;
  if (more.length === 0)
    return (
      <p className="say" role="status">
        <Named name={one!} />, {chanceWords(candidates[0]!.probability)}
      </p>
    );
  const few = cannotTellApart.slice(0, 4);
  return (
    <p className="say" role="status">
      Cannot tell apart:{' '}
      {few.map((name, order) => (
        <Fragment key={name}>
          {order === 0
            ? ''
            : order === few.length - 1 && few.length === cannotTellApart.length
              ? ' or '
              : ', '}
          <Named name={name} />
        </Fragment>
      ))}
      {few.length < cannotTellApart.length ? ` and ${cannotTellApart.length - few.length} more` : ''}
    </p>
  );
}

/** `5 × 11 × 4`, with what else makes it another article. */
function Named({ name }: { name: string }) {
  const { attributes } = takeApart(name);
  return (
    <>
      <Size size={name} />
      {attributes.length > 0 ? ` ${attributes.join(' ')}` : ''}
    </>
  );
}

/** A candidate and what else it is called. */
function TheSize({ candidate: { size, designations, attrs } }: { candidate: CandidateAnswer }) {
  return (
    <>
      {parseSize(size) ? <SizeLink size={size} /> : <Size size={size} />}
      <span className="label">
        {[...designations.slice(0, 3), ...(attrs.type ? [String(attrs.type)] : [])].join(', ')}
      </span>
    </>
  );
}

/** Where this bench has a size, and its outline at true size. */
function Elsewhere({ size, known }: { size: string; known: readonly KnownSize[] }) {
  const whole = parseSize(size) !== null;
  const parts = known
    .filter(each => each.size === size || (!whole && each.size.startsWith(`${size}x`)))
    .reduce((sum, each) => sum + each.count, 0);
  return (
    <>
      {parts > 0 ? (
        <Link className="here" href={`/find?q=${encodeURIComponent(size)}`}>
          {parts} {parts === 1 ? 'part' : 'parts'} here
        </Link>
      ) : null}
      {whole && gaugeOf(size) ? (
        <Link className="here" href={`/gauge?sizes=${encodeURIComponent(size)}`}>
          at true size
        </Link>
      ) : null}
    </>
  );
}

function Chance({ probability, not = null }: { probability: number; not?: string | null }) {
  return (
    <div className="chance">
      <svg width="100%" height="16" aria-hidden="true">
        <line x1="0" x2="100%" y1="15" y2="15" />
        <rect x="0" y="1" width={`${Math.max(1, 100 * probability)}%`} height="14" />
      </svg>
      <span>
        <b className="fig">{not === null ? chanceWords(probability) : 'no'}</b>
        {not === null ? null : <span className="label">{not}</span>}
      </span>
    </div>
  );
}
