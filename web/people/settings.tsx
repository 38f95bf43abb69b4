import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';
import { useBench } from '../bench.tsx';
import { Sheet } from '../ui/sheet.tsx';
import './people.css';

const sheets = [
  { path: '/settings', name: 'You', owner: false },
  { path: '/settings/people', name: 'People', owner: true },
  { path: '/settings/tokens', name: 'Tokens', owner: true },
  { path: '/settings/trail', name: 'Trail', owner: true },
  { path: '/settings/backup', name: 'Backup', owner: true },
];

/** One sheet of the settings, with the way to the others; those that are the owner's alone are shown to owners. */
export function Settings({ title, about, children }: { title: string; about: string; children: ReactNode }) {
  const [path] = useLocation();
  const { bench } = useBench();
  return (
    <Sheet title={title} cells={[{ label: 'Bench', value: bench?.name ?? '–' }]}>
      <nav className="sheets no-print" aria-label="Settings">
        {sheets
          .filter(sheet => !sheet.owner || bench?.role === 'owner')
          .map(sheet => (
            <Link key={sheet.path} href={sheet.path} aria-current={path === sheet.path ? 'page' : undefined}>
              {sheet.name}
            </Link>
          ))}
      </nav>
      <div className="page-head">
        <h1>{title}</h1>
        <p className="quiet">{about}</p>
      </div>
      {children}
    </Sheet>
  );
}
