import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { ModelAnswer } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { SizeLink } from '../part/size.tsx';
import { ToolsNeeded } from '../part/tools-needed.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Asked } from '../ui/states.tsx';
import { ModelDuty } from './model-duty.tsx';
import { ReadingState } from './reading-state.tsx';
import './diagrams.css';

/** One model: its sheets, what hangs on it, and the bearings a full set takes. */
export function ModelPage({ id }: { id: string }) {
  const { bench } = useBench();
  const query = useQuery({ queryKey: ['model', bench?.id, id], queryFn: () => api.model(id) });
  const model = query.data;
  return (
    <Sheet
      title={model ? `${model.maker.name} ${model.name}` : 'Model'}
      cells={[
        { label: 'Bench', value: bench?.name },
        { label: 'Lines', value: model?.lines.length ?? '–' },
      ]}
    >
      <Asked query={query} waiting="Fetching the model" heading="Model">
        {answer => <Ready model={answer} />}
      </Asked>
    </Sheet>
  );
}

function Ready({ model }: { model: ModelAnswer }) {
  return (
    <>
      <div className="page-head">
        <p className="label">{model.maker.name}</p>
        <h1>{model.name}</h1>
      </div>
      <div className="columns">
        <div className="stack">
          <Section title="Sheets">
            <ul className="rows shelf">
              {model.lists.map(diagram => (
                <li key={diagram.id}>
                  <Link className="sheet-name" href={`/diagrams/${diagram.id}`}>
                    {diagram.name}
                  </Link>
                  <ReadingState diagram={diagram} />
                </li>
              ))}
            </ul>
          </Section>
          <ToolsNeeded model={model.id} />
        </div>
        <div className="stack">
          <ModelDuty model={model.id} />
          <Section title="Its bearings" aside="pieces">
            {model.bearings.length > 0 ? (
              <ul className="rows size-counts">
                {model.bearings.map(each => (
                  <li key={each.size}>
                    <span>
                      <SizeLink size={each.size} />
                      <span className="label">
                        {each.designations.join(', ')}{' '}
                        {each.refs.length > 0 ? `at ${each.refs.join(', ')}` : ''}
                      </span>
                    </span>
                    <b className="fig">{each.qty ?? '–'}</b>
                  </li>
                ))}
              </ul>
            ) : (
              <p>No line of it reads as a bearing.</p>
            )}
          </Section>
        </div>
      </div>
    </>
  );
}
