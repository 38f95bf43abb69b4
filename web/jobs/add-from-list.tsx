import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { LineAnswer } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button, Field } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked } from '../ui/states.tsx';
import type { PutProps } from './put.ts';

/** The lines of the model's list, to be picked one by one. */
export function AddFromList({ model, onPut, busy }: PutProps & { model: string }) {
  const { bench } = useBench();
  const [filter, setFilter] = useState('');
  const query = useQuery({ queryKey: ['model', bench?.id, model], queryFn: () => api.model(model) });
  return (
    <Section
      title="From the model's list"
      aside={query.data ? `${query.data.lines.length} lines` : undefined}
    >
      <Asked query={query} waiting="Fetching the list">
        {({ lines }) => {
          const wanted = filter.trim().toLowerCase();
          const shown = lines.filter(
            line =>
              wanted === '' ||
              [line.ref, line.partNumber, line.description].some(text => text.toLowerCase().includes(wanted)),
          );
          return (
            <>
              <Field
                label="Reference, number or words"
                autoComplete="off"
                value={filter}
                onChange={event => setFilter(event.target.value)}
              />
              <ul className="rows hits from-list" aria-label="Lines of the list">
                {shown.slice(0, 60).map(line => (
                  <ListLine key={line.row} line={line} onPut={onPut} busy={busy} />
                ))}
              </ul>
              {shown.length > 60 ? <p className="label">{shown.length - 60} more: narrow it down.</p> : null}
              {shown.length === 0 ? <p>No line of the list has that.</p> : null}
            </>
          );
        }}
      </Asked>
    </Section>
  );
}

function ListLine({ line, onPut, busy }: PutProps & { line: LineAnswer }) {
  const kinds = new Set(line.facts.map(fact => fact.kind));
  const asRequired = kinds.has('as-required');
  const what = line.partNumber || line.description;
  return (
    <li>
      <span className={line.ref.length > 2 ? 'balloon long fig' : 'balloon fig'}>{line.ref || '–'}</span>
      <span>
        {line.description}
        <span className="label">
          <span className="fig">{line.partNumber}</span>
          {asRequired ? ' · as required' : line.qty ? ` · ${line.qty} in the machine` : ''}
          {kinds.has('not-sold-separately') ? ' · not sold separately' : ''}
        </span>
      </span>
      {line.part ? (
        <Button
          busy={busy}
          aria-label={`Add line ${line.ref} ${what}`}
          onClick={() =>
            onPut({ part: line.part!, row: line.row, qty: asRequired ? null : (line.qty ?? 1) }, what)
          }
        >
          Add
        </Button>
      ) : null}
    </li>
  );
}
