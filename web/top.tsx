import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Link, useLocation, useSearchParams } from 'wouter';
import { useBench } from './bench.tsx';
import { useWho } from './people/who.tsx';
import './top.css';

const places = [
  { path: '/find', name: 'Find', also: ['/sizes', '/parts', '/compare'] },
  { path: '/measure', name: 'Measure', also: ['/fit', '/gauge'] },
  { path: '/diagrams', name: 'Diagrams', also: ['/models'] },
  { path: '/jobs', name: 'Jobs', also: [] },
  { path: '/order', name: 'Order', also: [] },
];

/** Where people sign in: what is about them. */
const settings = { path: '/settings', name: 'Settings', also: [] };

/** On top of every page: whose bench, the places, and the one find box. */
export function Top() {
  const [path] = useLocation();
  const { person } = useWho();
  const here = (place: (typeof places)[number]) =>
    [place.path, ...place.also].some(start => path === start || path.startsWith(`${start}/`));
  return (
    <header className="top no-print">
      <Link className="name" href="/">
        Fettlebench
      </Link>
      <BenchSwitch />
      <nav className="places" aria-label="Places">
        {[...places, ...(person ? [settings] : [])].map(place => (
          <Link key={place.path} href={place.path} aria-current={here(place) ? 'page' : undefined}>
            {place.name}
          </Link>
        ))}
      </nav>
      <FindBox />
    </header>
  );
}

/** Which bench this is, and the way to another. */
function BenchSwitch() {
  const { bench, benches, goTo } = useBench();
  const [, navigate] = useLocation();
  return (
    <select
      className="bench"
      aria-label="Bench"
      value={bench?.id ?? ''}
      onChange={event => {
        const next = benches.find(each => each.id === event.target.value);
        if (next) goTo(next);
        else navigate('/');
      }}
    >
      {benches.map(each => (
        <option key={each.id} value={each.id}>
          {each.name}
        </option>
      ))}
      <option value="">{benches.length > 0 ? 'Start another bench …' : 'No bench yet'}</option>
    </select>
  );
}

/** How long, in milliseconds, the typing rests before it is answered. */
const restsFor = 250;

/** Understands a part number, a model, a size or a pasted line. */
function FindBox() {
  const [path, navigate] = useLocation();
  const [search] = useSearchParams();
  const asked = path === '/find' ? (search.get('q') ?? '') : '';
  const [words, setWords] = useState(asked);
  const typing = useRef<ReturnType<typeof setTimeout>>(undefined);
  // What the address asks stands in the box, but never over what is being typed.
  useEffect(() => {
    if (!document.activeElement?.closest('.find')) setWords(asked);
  }, [asked]);
  useEffect(() => () => clearTimeout(typing.current), []);
  const ask = (q: string, replace: boolean) =>
    navigate(q ? `/find?q=${encodeURIComponent(q)}` : '/find', { replace });
  /** On the page of answers they follow the typing, once it rests; a later question leaves an earlier one's answer unread. */
  const type = (next: string) => {
    setWords(next);
    clearTimeout(typing.current);
    if (path !== '/find') return;
    typing.current = setTimeout(() => ask(next.trim(), true), restsFor);
  };
  const find = (event: FormEvent) => {
    event.preventDefault();
    clearTimeout(typing.current);
    ask(words.trim(), false);
  };
  return (
    <search>
      <form className="find" onSubmit={find}>
        <input
          aria-label="Find a part number, a model, a size or a line of a list"
          placeholder="Part number, model or size"
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          enterKeyHint="search"
          value={words}
          onChange={event => type(event.target.value)}
        />
        <button type="submit">Find</button>
      </form>
    </search>
  );
}
