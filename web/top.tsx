import { Link, useLocation } from 'wouter';
import { useBench } from './bench.tsx';

import { FindBox } from './find-box.tsx';
import { useWho } from './people/who.ts';
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
