import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { PartAnswer } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Drawing } from '../drawing/drawing.tsx';
import { drawingOf } from '../drawing/of-size.ts';
import { AddToJob } from '../jobs/add-to-job.tsx';
import { Caution, hazardsOf, MakersPartOnly } from '../part/caution.tsx';
import { DutyQuestion } from '../part/duty.tsx';
import { certaintyWords, Evidence } from '../part/evidence.tsx';
import { attributeWords, headingOf, Size, sizeWords } from '../part/size.tsx';
import { ToolFacts } from '../part/tools.tsx';
import { May } from '../people/may.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Asked } from '../ui/states.tsx';
import { CompareForm } from './compare-form.tsx';
import { InterchangeView } from './interchange.tsx';
import { Assembly, Succession } from './part-relations.tsx';
import './find.css';

/** One part of one maker: what it is, how we know, where it sits, what may stand in for it. */
export function PartPage({ id }: { id: string }) {
  const { bench } = useBench();
  const query = useQuery({ queryKey: ['part', bench?.id, id], queryFn: () => api.part(id) });
  const part = query.data;
  return (
    <Sheet
      title={part ? `${part.maker.name} ${part.number ?? part.name}` : 'Part'}
      cells={[
        { label: 'Bench', value: bench?.name },
        { label: 'Lengths', value: 'mm' },
      ]}
    >
      <Asked query={query} waiting="Looking up the part" heading="Part">
        {answer => <Ready part={answer} />}
      </Asked>
    </Sheet>
  );
}

function Ready({ part }: { part: PartAnswer }) {
  return (
    <>
      <div className="page-head">
        <p className="label">{part.maker.name}</p>
        <h1>
          {part.number ? <span className="fig">{part.number}</span> : 'No part number'} {part.name}
        </h1>
      </div>
      <div className="columns">
        <div className="stack">
          <WhatItIs part={part} />
          <InterchangeView part={part.id} />
          <Lines part={part} />
        </div>
        <div className="stack">
          <Section title="For a job">
            {part.duty.critical ? <MakersPartOnly sameSize={false} /> : null}
            <May least="counter">
              <AddToJob want={{ part: part.id }} what={part.number ?? part.name} />
            </May>
          </Section>
          <Section title="What hangs on it">
            <DutyQuestion of="part" id={part.id} duty={part.duty} />
          </Section>
          <Section title="Why not another?" className="no-print">
            <CompareForm a={part.number ?? part.name} fixed={part.id} />
          </Section>
          <Succession part={part} />
          <Assembly title="Ships with it" parts={part.includes} />
          <Assembly title="Part of" parts={part.partOf} />
        </div>
      </div>
    </>
  );
}

function WhatItIs({ part }: { part: PartAnswer }) {
  const attributes = Object.entries(part.attrs);
  const drawing = part.size ? drawingOf(part) : null;
  return (
    <Section title="What it is" aside={part.size ? certaintyWords(part.certainty) : undefined}>
      {part.size ? (
        <p className="part-size">
          {headingOf(part.category)}{' '}
          <Link href={`/sizes/${encodeURIComponent(part.size)}`} className="answer">
            <Size size={part.size} />
          </Link>
        </p>
      ) : (
        <p className="say">No size known</p>
      )}
      {part.disagreement ? <Caution title="Evidence disagrees">{part.disagreement}</Caution> : null}
      {hazardsOf(part.category, part.attrs).map(hazard => (
        <Caution key={hazard.title} title={hazard.title}>
          {hazard.what}
        </Caution>
      ))}
      <div className={drawing ? 'drawn' : ''}>
        {drawing && part.size ? <Drawing drawing={drawing} title={sizeWords(part.size)} /> : null}
        <dl className="facts">
          {attributes.map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{attributeWords(name, value)}</dd>
            </div>
          ))}
          {part.open.length > 0 ? (
            <div>
              <dt>Not stated</dt>
              <dd>{part.open.join(', ')}</dd>
            </div>
          ) : null}
          {part.designations.length > 0 ? (
            <div>
              <dt>Designation</dt>
              <dd className="fig">{part.designations.join(', ')}</dd>
            </div>
          ) : null}
          <ToolFacts tools={part.tools} />
          {part.evidence.map(each => (
            <div key={`${each.kind} ${each.detail} ${each.createdAt}`}>
              <dt>How we know</dt>
              <dd>
                <Evidence kind={each.kind} detail={each.detail} />
              </dd>
            </div>
          ))}
        </dl>
      </div>
    </Section>
  );
}

function Lines({ part }: { part: PartAnswer }) {
  return (
    <Section
      title="Where it sits"
      aside={`${part.lines.length} ${part.lines.length === 1 ? 'line' : 'lines'}`}
    >
      <ul className="rows">
        {part.lines.map(line => (
          <li key={line.row} className="sits">
            <span className="balloon fig">{line.ref || '–'}</span>
            <span>
              <Link href={`/diagrams/${line.diagram.id}`}>
                {line.model.maker.name} {line.model.name}
              </Link>
              <span className="label">{line.description}</span>
            </span>
            <span className="fig">{line.qty ?? (line.qtyText || '–')}</span>
          </li>
        ))}
      </ul>
    </Section>
  );
}
