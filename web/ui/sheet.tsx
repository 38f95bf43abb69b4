import { type ReactNode, useEffect, useState } from 'react';
import { theme, turnOver } from '../theme.ts';
import './sheet.css';

export interface TitleCell {
  label: string;
  value: ReactNode;
}

interface SheetProps {
  /** Names the view in the title block and the browser's tab. */
  title: string;
  /** Two more cells of the title block. */
  cells?: TitleCell[];
  children: ReactNode;
}

/** One view: a sheet with its border and, after ISO 7200, its title block. */
export function Sheet({ title, cells = [], children }: SheetProps) {
  useEffect(() => {
    document.title = `${title} · Fettlebench`;
  }, [title]);
  return (
    <div className="sheet">
      <div className="frame">
        <main id="content" tabIndex={-1}>
          {children}
        </main>
        <TitleBlock title={title} cells={cells} />
      </div>
    </div>
  );
}

function TitleBlock({ title, cells }: { title: string; cells: TitleCell[] }) {
  const [shown, setShown] = useState(theme);
  return (
    <section className="title-block" aria-label="Title block">
      <div>
        <span className="label">Title</span>
        {title}
      </div>
      {cells.map(cell => (
        <div key={cell.label}>
          <span className="label">{cell.label}</span>
          {cell.value}
        </div>
      ))}
      <div className="turn-over">
        <span className="label">Sheet</span>
        <button
          type="button"
          className="text-button"
          aria-label={`light / dark: the sheet is ${shown}`}
          onClick={() => {
            turnOver();
            setShown(theme());
          }}
        >
          light / dark
        </button>
      </div>
    </section>
  );
}

interface SectionProps {
  title: ReactNode;
  /** A quiet word at the right of the heading. */
  aside?: ReactNode;
  children: ReactNode;
  className?: string;
  id?: string;
}

/** A thick rule and a heading; its rows part by thin lines. */
export function Section({ title, aside, children, className = '', id }: SectionProps) {
  return (
    <section className={`section ${className}`} id={id}>
      <header>
        <h2>{title}</h2>
        {aside ? <span className="label">{aside}</span> : null}
      </header>
      {children}
    </section>
  );
}
