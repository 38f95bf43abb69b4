import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { WrittenFound } from '../../../api/answers/index.ts';
import { api } from '../../api.ts';
import { useBench } from '../../bench.tsx';
import { Button, Field } from '../../ui/controls.tsx';

/** A place where the words stand. */
export type Place = WrittenFound['places'][number];

interface FindOnDrawingProps {
  diagram: string;
  /** Looked for as the drawing opens, and on which page. */
  first: { words: string; page: number };
  /** The place that is shown, and all others; null where nothing is looked for. */
  onShow: (place: Place | null, all: Place[]) => void;
}

/** Looks for words and numbers on the pages of a diagram, and goes from one place to the next. */
export function FindOnDrawing({ diagram, first, onShow }: FindOnDrawingProps) {
  const { bench } = useBench();
  const [typed, setTyped] = useState(first.words);
  const [at, setAt] = useState(0);
  const words = typed.trim();
  const { data } = useQuery({
    queryKey: ['written', bench?.id, diagram, words],
    queryFn: () => api.written(diagram, words),
    enabled: words !== '',
    placeholderData: keepPreviousData,
  });
  const places = words && data ? data.places : [];
  const count = places.length;

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new answer begins at its first place, on the page asked for
  useEffect(() => {
    const begin = words === first.words ? places.findIndex(({ page }) => page === first.page) : 0;
    setAt(Math.max(0, begin));
    onShow(places[Math.max(0, begin)] ?? null, places);
  }, [data, words === '']);

  const go = (by: number) => {
    if (count === 0) return;
    const next = (at + by + count) % count;
    setAt(next);
    onShow(places[next]!, places);
  };
  return (
    <form
      className="find-on-drawing no-print"
      onSubmit={event => {
        event.preventDefault();
        go(1);
      }}
    >
      <Field
        label="Find on the drawing"
        type="search"
        autoFocus={first.words === ''}
        enterKeyHint="search"
        autoComplete="off"
        maxLength={200}
        value={typed}
        onChange={event => setTyped(event.target.value)}
      />
      {words && data ? (
        <span className="found-count" role="status">
          {count === 0 ? (
            'not written here'
          ) : (
            <>
              <span className="fig">{at + 1}</span> of <span className="fig">{count}</span>
              {data.more ? ' or more' : ''}
            </>
          )}
        </span>
      ) : null}
      {count > 1 ? (
        <span className="buttons">
          <Button weight="thin" onClick={() => go(-1)}>
            Place before
          </Button>
          <Button weight="thin" type="submit">
            Next place
          </Button>
        </span>
      ) : null}
    </form>
  );
}
