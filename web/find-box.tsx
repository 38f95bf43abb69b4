import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { type FormEvent, type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import { api } from './api.ts';
import { useBench } from './bench.tsx';
import { type Answer, answersOf } from './find/quick-answers.ts';

/** How long, in milliseconds, the typing rests before it is answered. */
const restsFor = 250;

/** Understands a part number, a model, a size or a pasted line, and answers as one types: here, or on the page of answers. */
export function FindBox() {
  const [path, navigate] = useLocation();
  const [search] = useSearchParams();
  const asked = path === '/find' ? (search.get('q') ?? '') : '';
  const [words, setWords] = useState(asked);
  const [rested, setRested] = useState('');
  const [chosen, setChosen] = useState(-1);
  const typing = useRef<ReturnType<typeof setTimeout>>(undefined);
  const list = useId();
  const answers = useAnswers(path === '/find' ? '' : rested);
  // What the address asks stands in the box, but never over what is being typed.
  useEffect(() => {
    if (!document.activeElement?.closest('.find')) setWords(asked);
  }, [asked]);
  useEffect(() => () => clearTimeout(typing.current), []);
  const close = () => {
    clearTimeout(typing.current);
    setRested('');
    setChosen(-1);
  };
  const ask = (q: string, replace: boolean) =>
    navigate(q ? `/find?q=${encodeURIComponent(q)}` : '/find', { replace });
  /** On the page of answers they follow the typing, once it rests; a later question leaves an earlier one's answer unread. */
  const type = (next: string) => {
    setWords(next);
    setChosen(-1);
    clearTimeout(typing.current);
    typing.current = setTimeout(
      () => (path === '/find' ? ask(next.trim(), true) : setRested(next.trim())),
      restsFor,
    );
  };
  const take = (answer: Answer) => {
    close();
    setWords('');
    navigate(answer.path);
  };
  const find = (event: FormEvent) => {
    event.preventDefault();
    const answer = answers[chosen];
    if (answer) return take(answer);
    close();
    ask(words.trim(), false);
  };
  const move = (event: KeyboardEvent) => {
    if (event.key === 'Escape') close();
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step === undefined || answers.length === 0) return;
    event.preventDefault();
    // One place past the last and before the first is the box itself.
    const places = answers.length + 1;
    setChosen(((chosen + 1 + step + places) % places) - 1);
  };
  const open = answers.length > 0;
  return (
    <search>
      <form className="find" onSubmit={find}>
        <input
          role="combobox"
          aria-label="Find a part number, a model, a size or a line of a list"
          aria-autocomplete="list"
          aria-expanded={open}
          aria-controls={list}
          aria-activedescendant={chosen < 0 ? undefined : `${list}-${chosen}`}
          placeholder="Part number, model or size"
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          enterKeyHint="search"
          value={words}
          onChange={event => type(event.target.value)}
          onKeyDown={move}
          onBlur={close}
        />
        <button type="submit">Find</button>
        <div id={list} role="listbox" aria-label="Answers" hidden={!open}>
          {answers.map((answer, place) => (
            // The box keeps the focus, so the keys are its own.
            // biome-ignore lint/a11y/useKeyWithClickEvents: arrows and Enter are heard by the box
            <div
              key={answer.path}
              id={`${list}-${place}`}
              role="option"
              aria-selected={place === chosen}
              tabIndex={-1}
              onMouseDown={event => event.preventDefault()}
              onClick={() => take(answer)}
            >
              <b className="fig">{answer.name}</b> <span className="label">{answer.told}</span>
            </div>
          ))}
        </div>
      </form>
    </search>
  );
}

/** What a question finds on the bench shown, as far as a short list tells it. */
function useAnswers(q: string): Answer[] {
  const { bench } = useBench();
  const query = useQuery({
    queryKey: ['find', bench?.id, q],
    queryFn: () => api.find(q),
    enabled: q.length > 1 && bench !== null,
    placeholderData: keepPreviousData,
  });
  return q.length > 1 && query.data ? answersOf(query.data) : [];
}
