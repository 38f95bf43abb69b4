import { useState } from 'react';
import type { DiagramRow, NewCorrection } from '../../api/answers/index.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { drawingOf } from '../drawing/of-size.ts';
import { AddToJob } from '../jobs/add-to-job.tsx';
import { Caution, hazardsOf } from '../part/caution.tsx';
import { certaintyWords } from '../part/evidence.tsx';
import { sizeWords, titleOf } from '../part/size.tsx';
import { StandIns } from '../part/stand-ins.tsx';
import { May, useMay } from '../people/may.tsx';
import { Button } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';
import { Correct } from './correct.tsx';
import { PieceOfPage } from './exploded/piece-of-page.tsx';
import { type UnderstoodRow, understoodOf } from './understood-of.ts';
import { useCorrection } from './use-correction.ts';

interface LineDetailProps {
  diagram: string;
  row: DiagramRow;
  onKept: () => void;
  /** The reading was taken as it stands: on to the next. */
  onAccepted: () => void;
}

/** An open line: why it is doubtful, its other readings, the way to correct it, and the way into a job. */
export function LineDetail({ diagram, row, onKept, onAccepted }: LineDetailProps) {
  const read = understoodOf(row);
  const mayCorrect = useMay('repairer');
  const [typing, setTyping] = useState(row.doubtful && mayCorrect);
  const { keep, takeBack } = useCorrection(diagram, row, onKept);
  const { keep: accept } = useCorrection(diagram, row, onAccepted);
  const notes = row.reading?.notes ?? [];
  const drawing = read.size && !typing ? drawingOf(read) : null;
  return (
    <div className="line-detail">
      {hazardsOf(read.category, read.attrs).map(hazard => (
        <Caution key={hazard.title} title={hazard.title}>
          {hazard.what}
        </Caution>
      ))}
      {row.area ? <PieceOfPage diagram={diagram} page={row.page} area={row.area} /> : null}
      <div>
        <h3>What we read</h3>
        {row.correction ? (
          <p>
            {row.correction.taughtBy
              ? `Put right like line ${row.correction.taughtBy}: `
              : 'A person checked this line: '}
            {wordsOf(row.correction)}. Their word wins.
          </p>
        ) : row.reading ? (
          <p>
            {wordsOf(row.reading)}, {certaintyWords(row.reading.certainty)}.
          </p>
        ) : null}
        {notes.map(note => (
          <p key={note} className="quiet">
            {note}
          </p>
        ))}
      </div>
      {row.doubtful ? (
        <div className="buttons">
          <Button
            weight="main"
            autoFocus
            busy={accept.isPending}
            onClick={() => accept.mutate(asItStands(read))}
          >
            {read.size ? 'It is as read' : 'It has no size'}
            <span className="only-heard">: line {row.ref || row.place}</span>
          </Button>
        </div>
      ) : null}
      {accept.isError ? <Refused error={accept.error} /> : null}
      {drawing && read.size ? (
        <Drawing drawing={drawing} title={sizeWords(read.size)} room={{ width: 330, height: 230 }} />
      ) : null}
      {mayCorrect && !row.correction && row.reading && row.reading.alternatives.length > 0 ? (
        <div className="buttons">
          {row.reading.alternatives
            .filter(other => other.size)
            .map(other => (
              <Button
                key={other.size}
                weight="thin"
                busy={keep.isPending}
                onClick={() =>
                  keep.mutate({
                    category: other.category,
                    dims: other.dims,
                    attrs: other.attrs,
                    qty: row.qty,
                  })
                }
              >
                It is {sizeWords(other.size!)}
              </Button>
            ))}
        </div>
      ) : null}
      {typing ? (
        <Correct
          row={row}
          busy={keep.isPending}
          takesFocus={!row.doubtful}
          onKeep={keep.mutate}
          onCancel={() => (row.doubtful ? onKept() : setTyping(false))}
        />
      ) : mayCorrect ? (
        <div className="buttons">
          <Button onClick={() => setTyping(true)}>Correct it</Button>
          {row.correction ? (
            <Button weight="thin" busy={takeBack.isPending} onClick={() => takeBack.mutate()}>
              Take the correction back
            </Button>
          ) : null}
        </div>
      ) : null}
      {keep.isError ? <Refused error={keep.error} /> : null}
      {takeBack.isError ? <Refused error={takeBack.error} /> : null}
      {row.part && !row.doubtful ? <StandIns part={row.part} /> : null}
      {row.part && !row.doubtful ? (
        <May least="counter">
          <AddToJob
            want={{ part: row.part, row: row.id }}
            what={row.partNumber || row.description}
            qty={read.qty ?? undefined}
            asRequired={row.facts.some(fact => fact.kind === 'as-required')}
          />
        </May>
      ) : null}
    </div>
  );
}

/** The reading as a person's word; what was left unsure is a part without a size. */
const asItStands = ({ category, dims, attrs, qty }: UnderstoodRow): NewCorrection =>
  category === 'unsure' ? { category: 'plain', dims: {}, attrs: {}, qty } : { category, dims, attrs, qty };

function wordsOf({ category, size }: { category: string; size: string | null }): string {
  return size ? sizeWords(size) : `${titleOf(category)}, no size`;
}
