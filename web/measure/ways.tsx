import { Link, useLocation } from 'wouter';

const ways = [
  { path: '/measure', name: 'A loose part' },
  { path: '/fit', name: 'A bearing for a seat' },
  { path: '/gauge', name: 'Gauge sheet' },
];

/** The three things to do with a calliper in hand. */
export function Ways() {
  const [path] = useLocation();
  return (
    <nav className="ways no-print" aria-label="Measure">
      {ways.map(way => (
        <Link
          key={way.path}
          href={way.path}
          aria-current={path === way.path || path.startsWith(`${way.path}/`) ? 'page' : undefined}
        >
          {way.name}
        </Link>
      ))}
    </nav>
  );
}
