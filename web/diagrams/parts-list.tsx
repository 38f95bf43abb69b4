import { type ReactNode, useEffect, useRef } from 'react';
import type { DiagramAnswer, DiagramRow } from '../../api/answers/index.ts';
import { Section } from '../ui/sheet.tsx';
import { PartsLine } from './parts-line.tsx';

interface PartsListProps {
  diagram: DiagramAnswer;
  rows: DiagramRow[];
  /** The line that is open, one at a time. */
  open: string | null;
  onOpen: (row: string | null) => void;
  more: ReactNode;
}

/** The list as read: doubtful lines first, then in printed order. */
export function PartsList({ diagram, rows, open, onOpen, more }: PartsListProps) {
  const next = useRef<string | null>(null);

  // After a line is kept the keyboard goes on to the next doubtful one, or back to the line itself.
  useEffect(() => {
    if (open === null && next.current) {
      document.getElementById(`line-${next.current}`)?.focus();
      next.current = null;
    }
  }, [open]);

  const doubtful = rows.filter(row => row.doubtful);
  const settled = rows.filter(row => !row.doubtful);
  const line = (row: DiagramRow) => (
    <PartsLine
      key={row.id}
      diagram={diagram.id}
      row={row}
      open={row.id === open}
      onToggle={() => onOpen(open === row.id ? null : row.id)}
      onKept={() => {
        next.current = doubtful.find(each => each.id !== row.id)?.id ?? row.id;
        onOpen(null);
      }}
      onAccepted={() => {
        const after = doubtful[doubtful.findIndex(each => each.id === row.id) + 1] ?? doubtful[0];
        if (after && after.id !== row.id) onOpen(after.id);
        else {
          next.current = row.id;
          onOpen(null);
        }
      }}
    />
  );
  return (
    <>
      {doubtful.length > 0 ? (
        <Section title="To check" aside={`${doubtful.length} of ${diagram.counts.taken}`}>
          <ol className="lines">{doubtful.map(line)}</ol>
        </Section>
      ) : null}
      <Section title="Parts list" aside={`${settled.length} of ${diagram.counts.taken} lines`}>
        <ol className="lines">{settled.map(line)}</ol>
        {more ? <div className="buttons">{more}</div> : null}
      </Section>
    </>
  );
}
