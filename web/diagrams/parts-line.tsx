import type { DiagramRow } from '../../api/answers/index.ts';
import { hazardsOf } from '../part/caution.tsx';
import { ReadText } from '../part/read-text.tsx';
import { attributeWords, Size, titleOf } from '../part/size.tsx';
import { LineMark, Triangle } from '../ui/marks.tsx';
import { LineDetail } from './line-detail.tsx';
import { relationWords } from './relation-words.ts';
import { understoodOf } from './understood-of.ts';

interface PartsLineProps {
  diagram: string;
  row: DiagramRow;
  open: boolean;
  onToggle: () => void;
  onKept: () => void;
  onAccepted: () => void;
}

/** One line: as printed, what was read of it, how many, and what the list says besides. */
export function PartsLine({ diagram, row, open, onToggle, onKept, onAccepted }: PartsLineProps) {
  const read = understoodOf(row);
  const hazards = hazardsOf(read.category, read.attrs);
  const attributes = Object.entries(read.attrs)
    .map(([name, value]) => attributeWords(name, value))
    .join(', ');
  return (
    <li className={open ? 'parts-line open' : 'parts-line'}>
      <button
        type="button"
        className="line-head"
        id={`line-${row.id}`}
        aria-expanded={open}
        onClick={onToggle}
      >
        <span className={row.ref.length > 2 ? 'balloon long fig' : 'balloon fig'}>{row.ref || '–'}</span>
        <span className="line-words">
          <ReadText
            text={row.text ?? row.description}
            spans={row.reading?.spans ?? []}
            doubtful={row.doubtful}
          />
          <span className="label">
            <span className="fig">{row.partNumber}</span>
            {relationWords(row).map(words => ` · ${words}`)}
          </span>
        </span>
        <span className="line-read">
          {read.size ? <Size size={read.size} /> : null}
          <span className="label">
            {read.size ? [titleOf(read.category), attributes].filter(Boolean).join(', ') : 'no size'}
          </span>
          {row.doubtful ? (
            <span className="marked look-here small">
              <LineMark line="break" />
              to check
            </span>
          ) : null}
          {row.correction ? (
            <span className="marked small">
              <LineMark line="thick" />
              checked
            </span>
          ) : null}
          {hazards.map(({ title }) => (
            <span key={title} className="hazard small">
              <Triangle />
              {title}
            </span>
          ))}
        </span>
        <span className="line-qty fig">
          <span className="only-heard">quantity </span>
          {read.qty ?? (row.qtyText || '–')}
        </span>
      </button>
      {open ? <LineDetail diagram={diagram} row={row} onKept={onKept} onAccepted={onAccepted} /> : null}
    </li>
  );
}
