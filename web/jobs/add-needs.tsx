import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import type { JobPage, LineAnswer, NewNeed } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Size, sizeWords, titleOf } from '../part/size.tsx';
import { Button, Field } from '../ui/controls.tsx';
import { Triangle } from '../ui/marks.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked, Refused, Waiting } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';

/** Ways to put needs into a job: from the model's list, or by number, name or size. */
export function AddNeeds({ job }: { job: JobPage }) {
  const client = useQueryClient();
  const say = useSay();
  const add = useMutation({
    mutationFn: ({ need }: { need: NewNeed; what: string }) => api.addNeed(job.id, need),
    onSuccess: (need, { what }) => {
      void client.invalidateQueries();
      say(`${what}: added to job ${job.number}.`, () => {
        void api.removeNeed(need.id).then(() => client.invalidateQueries());
      });
    },
  });
  const put = (need: NewNeed, what: string) => add.mutate({ need, what });
  return (
    <div className="stack no-print">
      <BySearch onPut={put} busy={add.isPending} />
      {add.isError ? <Refused error={add.error} /> : null}
      {job.model ? <FromList model={job.model.id} onPut={put} busy={add.isPending} /> : null}
    </div>
  );
}

interface PutProps {
  onPut: (need: NewNeed, what: string) => void;
  busy: boolean;
}

function BySearch({ onPut, busy }: PutProps) {
  const { bench } = useBench();
  const [typed, setTyped] = useState('');
  const [asked, setAsked] = useState('');
  const query = useQuery({
    queryKey: ['find', bench?.id, asked],
    queryFn: () => api.find(asked),
    enabled: asked !== '',
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setAsked(typed.trim());
  };
  const size = query.data?.understood?.size;
  return (
    <Section title="Add by number or size">
      <form className="by-search" onSubmit={submit} aria-label="Add by number or size">
        <Field
          label="Part number, name or size"
          autoComplete="off"
          spellCheck={false}
          value={typed}
          onChange={event => setTyped(event.target.value)}
        />
        <Button type="submit">Look up</Button>
      </form>
      {asked === '' ? null : query.isError ? (
        <Refused error={query.error} onAgain={() => query.refetch()} />
      ) : !query.data ? (
        <Waiting title={`Looking for ${asked}`} />
      ) : (
        <ul className="rows hits" aria-label="Found">
          {size ? (
            <li>
              <span>
                <Size size={size} />
                <span className="label">{titleOf(query.data.understood!.category)}, by its size</span>
              </span>
              <Button
                busy={busy}
                aria-label={`Add ${sizeWords(size)}`}
                onClick={() => onPut({ item: size, qty: 1 }, sizeWords(size))}
              >
                Add
              </Button>
            </li>
          ) : null}
          {query.data.parts.slice(0, 12).map(part => (
            <li key={part.id}>
              <span>
                <span className="fig">{part.number ?? part.name}</span>{' '}
                {part.size ? <Size size={part.size} /> : null}
                <span className="label">
                  {part.maker.name}, {part.name}
                </span>
                {part.caution ? (
                  <span className="hazard small">
                    <Triangle />
                    {part.caution}
                  </span>
                ) : null}
              </span>
              <Button
                busy={busy}
                aria-label={`Add ${part.maker.name} ${part.number ?? part.name}`}
                onClick={() => onPut({ part: part.id, qty: 1 }, part.number ?? part.name)}
              >
                Add
              </Button>
            </li>
          ))}
          {!size && query.data.parts.length === 0 ? (
            <li>
              <span>Nothing on this bench by that. Try its size, or fewer words.</span>
            </li>
          ) : null}
        </ul>
      )}
    </Section>
  );
}

/** The lines of the model's list, to be picked one by one. */
function FromList({ model, onPut, busy }: PutProps & { model: string }) {
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
