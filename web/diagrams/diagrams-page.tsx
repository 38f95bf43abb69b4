import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { DiagramAnswer } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { May } from '../people/may.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Asked, Empty } from '../ui/states.tsx';
import { ReadingState } from './reading-state.tsx';
import { Upload } from './upload.tsx';
import './diagrams.css';

/** Every diagram on the bench by maker and model, and the way to put more in. */
export function DiagramsPage() {
  const { bench } = useBench();
  const query = useQuery({ queryKey: ['diagrams', bench?.id], queryFn: api.diagrams });
  const count = query.data?.diagrams.length;
  return (
    <Sheet
      title="Diagrams"
      cells={[
        { label: 'Bench', value: bench?.name },
        { label: 'Sheets', value: count ?? '–' },
      ]}
    >
      <div className="page-head">
        <h1>Diagrams</h1>
        <p className="quiet">Makers' parts lists, read line by line. What is doubtful waits for you.</p>
      </div>
      <div className="columns">
        <Asked query={query} waiting="Fetching the diagrams">
          {({ diagrams }) =>
            diagrams.length > 0 ? (
              <Shelf diagrams={diagrams} />
            ) : (
              <Section title="On this bench">
                <Empty title="No diagram here yet.">
                  <p>
                    Put in the parts list of one model, as a file or as pasted text, and its sizes show up
                    wherever a part is looked for.
                  </p>
                </Empty>
              </Section>
            )
          }
        </Asked>
        <May least="repairer">
          <Upload />
        </May>
      </div>
    </Sheet>
  );
}

/** Makers in order, under each its models, under each its sheets. */
function Shelf({ diagrams }: { diagrams: DiagramAnswer[] }) {
  const makers = new Map<string, DiagramAnswer[]>();
  for (const diagram of diagrams.toSorted((a, b) => a.model.name.localeCompare(b.model.name))) {
    const { name } = diagram.model.maker;
    makers.set(name, [...(makers.get(name) ?? []), diagram]);
  }
  return (
    <div className="stack">
      {[...makers]
        .toSorted(([a], [b]) => a.localeCompare(b))
        .map(([maker, sheets]) => (
          <Section
            key={maker}
            title={maker}
            aside={`${sheets.length} ${sheets.length === 1 ? 'sheet' : 'sheets'}`}
          >
            <ul className="rows shelf">
              {sheets.map(diagram => (
                <li key={diagram.id}>
                  <div>
                    <Link className="sheet-name" href={`/diagrams/${diagram.id}`}>
                      {diagram.model.name}
                    </Link>
                    <span className="label">{diagram.name}</span>
                  </div>
                  <ReadingState diagram={diagram} />
                </li>
              ))}
            </ul>
          </Section>
        ))}
    </div>
  );
}
