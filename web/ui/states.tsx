import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Problem } from '../problem.ts';
import { Button } from './controls.tsx';
import { Mark } from './marks.tsx';
import './states.css';

/** What will be here, and the one thing to do. */
export function Empty({
  title,
  children,
  action,
}: {
  title: string;
  children?: ReactNode;
  action?: ReactNode;
}) {
  return (
    <div className="state">
      <p className="say">{title}</p>
      {children ? <div className="state-words">{children}</div> : null}
      {action ? <div className="buttons">{action}</div> : null}
    </div>
  );
}

interface WaitingProps {
  /** What is being done. */
  title: string;
  /** How far, 0 to 1; left out where nobody can tell. */
  done?: number | undefined;
  children?: ReactNode;
}

/** What is being done and how far: a dimension line grows along the work. */
export function Waiting({ title, done, children }: WaitingProps) {
  const end = done === undefined ? 0 : Math.max(0, Math.min(1, done)) * 598;
  return (
    <div className="state" role="status">
      <p className="say">{title}</p>
      {done === undefined ? null : (
        <progress className="only-heard" aria-label={title} max={100} value={Math.round(done * 100)} />
      )}
      <svg className="dimension-line" viewBox="0 0 600 20" preserveAspectRatio="none" aria-hidden="true">
        <path className="left-to-do" d={`M${1 + end} 10H599`} />
        <path className="ends" d={`M1 2V18M599 2V18M${1 + end} 2V18`} />
        {end > 0 ? <path className="done" d={`M1 10H${1 + end}`} /> : null}
      </svg>
      {children ? <div className="state-words">{children}</div> : null}
    </div>
  );
}

interface RefusedProps {
  error: unknown;
  /** What was kept, and so on. */
  children?: ReactNode;
  /** The remedy as a button; left out, it is asked again. */
  action?: ReactNode;
  onAgain?: (() => void) | undefined;
}

/** What was wrong, where, and the remedy. */
export function Refused({ error, children, action, onAgain }: RefusedProps) {
  const problem = Problem.from(error);
  return (
    <div className="state" role="alert">
      <p className="say marked">
        <Mark shape="barred" />
        {problem.message}
      </p>
      <div className="state-words">
        {problem.remedy ? <p>{problem.remedy}</p> : null}
        {children}
        <p className="label">
          {problem.place ? `At ${problem.place}. ` : ''}Code <span className="fig">{problem.code}</span>
        </p>
      </div>
      {action || onAgain ? (
        <div className="buttons">
          {action}
          {onAgain ? <Button onClick={onAgain}>Try again</Button> : null}
        </div>
      ) : null}
    </div>
  );
}

interface AskedProps<T> {
  query: UseQueryResult<T>;
  /** What is being done meanwhile. */
  waiting: string;
  /** What the page is about, for those who hear it, where what comes has the heading. */
  heading?: string;
  children: (data: T) => ReactNode;
}

/** A view of what was asked for, in whichever state it is. */
export function Asked<T>({ query, waiting, heading, children }: AskedProps<T>) {
  if (query.data !== undefined) return <>{children(query.data)}</>;
  return (
    <>
      {heading ? <h1 className="only-heard">{heading}</h1> : null}
      {query.isError ? (
        <Refused error={query.error} onAgain={() => query.refetch()} />
      ) : (
        <Waiting title={waiting} />
      )}
    </>
  );
}
