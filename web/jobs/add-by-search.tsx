import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { type CategoryName, writeItem } from '../../indexer/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Size, sizeWords } from '../part/size.tsx';
import { Button, Field } from '../ui/controls.tsx';
import { Triangle } from '../ui/marks.tsx';
import { Section } from '../ui/sheet.tsx';
import { Refused, Waiting } from '../ui/states.tsx';
import type { PutProps } from './put.ts';

/** Adds a part by its number or name, or an item by its size. */
export function AddBySearch({ onPut, busy }: PutProps) {
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
  const understood = query.data?.understood;
  // With its head, drive and what else was said: it is bought as that.
  const size = understood?.size
    ? (writeItem(
        understood.category as CategoryName,
        understood.dims,
        understood.implied,
        understood.attrs,
      ) ?? understood.size)
    : null;
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
                <span className="label">{sizeWords(size)}, by its size</span>
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
