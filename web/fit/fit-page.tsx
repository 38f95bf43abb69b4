import { useMemo, useState } from 'react';
import {
  BadMeasurement,
  type Duty,
  type FitAnswer,
  type FitRequest,
  fit,
  type Instrument,
  type KnownSize,
  playGroups,
  type Seat,
} from '../../indexer/index.ts';
import { DutyOfPart } from '../measure/duty-of-part.tsx';
import { keepInstrument, keptInstrument } from '../measure/instrument-kept.ts';
import { Cautions } from '../measure/measure-next.tsx';
import { readDoubt, readLengths } from '../measure/read-lengths.ts';
import { ReadingField, toNextField } from '../measure/reading-field.tsx';
import { useKnownSizes } from '../measure/use-known.ts';
import { Ways } from '../measure/ways.tsx';
import { Choice } from '../ui/controls.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Empty } from '../ui/states.tsx';
import { FitOne } from './fit-one.tsx';
import '../measure/measure.css';
import './fit.css';

type SeatName = 'shaft' | 'housing' | 'width';

const seats: { name: SeatName; label: string; ways: readonly Instrument[] }[] = [
  { name: 'shaft', label: 'Shaft, where the bearing sits', ways: ['calliper-outside', 'micrometer', 'rule'] },
  { name: 'housing', label: 'Housing bore', ways: ['calliper-inside', 'micrometer', 'rule'] },
  {
    name: 'width',
    label: 'Width of its place',
    ways: ['calliper-depth', 'calliper-inside', 'calliper-outside', 'rule'],
  },
];

/** As many bearings as are shown. */
const most = 12;

/** Which bearing goes on a shaft, in a housing, in a width: loose, by finger or by press. Answered in the page itself. */
export function FitPage() {
  const [typed, setTyped] = useState<Record<SeatName, string>>({ shaft: '', housing: '', width: '' });
  const [by, setBy] = useState(
    () =>
      Object.fromEntries(
        seats.map(({ name, ways }) => [name, keptInstrument(`seat.${name}`, ways)]),
      ) as Record<SeatName, Instrument>,
  );
  const [group, setGroup] = useState('');
  const [duty, setDuty] = useState<Duty>('not-stated');
  const known = useKnownSizes();
  const { answer, bad } = useMemo(
    () => answerTo(typed, by, group, duty, known),
    [typed, by, group, duty, known],
  );
  return (
    <Sheet
      title="Fit: a bearing for a seat"
      cells={[
        { label: 'Bearings', value: 'ISO 492 normal' },
        { label: 'Lengths', value: 'mm' },
      ]}
    >
      <Ways />
      <div className="page-head">
        <h1>Fit: a bearing for a seat</h1>
        <p className="quiet">
          Type what you measured on the shaft, in the housing, or both. Measure away from worn places.
        </p>
      </div>
      <div className="measuring">
        <Section title="The seat" aside="mm or inch">
          <form className="readings" aria-label="The seat" onKeyDown={toNextField}>
            {seats.map(({ name, label, ways }) => (
              <ReadingField
                key={name}
                label={label}
                value={typed[name]}
                onChange={value => setTyped({ ...typed, [name]: value })}
                instrument={by[name]}
                ways={ways}
                doubt={answer?.taken.find(each => each.seat === name)?.uncertainty}
                onInstrument={instrument => {
                  keepInstrument(`seat.${name}`, instrument);
                  setBy({ ...by, [name]: instrument });
                }}
              />
            ))}
            <Choice
              label="Group of play printed on the bearing"
              value={group}
              onChange={event => setGroup(event.target.value)}
            >
              <option value="">none printed</option>
              {playGroups.map(each => (
                <option key={each}>{each}</option>
              ))}
            </Choice>
            <DutyOfPart value={duty} onChange={setDuty} />
          </form>
        </Section>
        <Section title="What goes" aside={answer ? answer.candidates.length : undefined}>
          {bad ? (
            <p role="alert">
              {bad.message} {bad.remedy}
            </p>
          ) : answer ? (
            <>
              <p className="only-heard" role="status">
                {answer.candidates.length} bearings go.
              </p>
              <ol className="rows fits">
                {answer.candidates.slice(0, most).map(candidate => (
                  <FitOne key={candidate.size} candidate={candidate} known={known} />
                ))}
              </ol>
              <Cautions cautions={answer.cautions} />
            </>
          ) : (
            <Empty title="The bearings that go will be here.">
              <p>
                Each with its clearance or interference, the play that is left, and the shims for its place.
              </p>
            </Empty>
          )}
        </Section>
      </div>
    </Sheet>
  );
}

function answerTo(
  typed: Record<SeatName, string>,
  by: Record<SeatName, Instrument>,
  group: string,
  duty: Duty,
  known: readonly KnownSize[],
): { answer: FitAnswer | null; bad: BadMeasurement | null } {
  const seatOf = (name: SeatName): Seat | undefined => {
    const values = readLengths(typed[name]);
    return values && values.length > 0
      ? { values, instrument: by[name], uncertainty: readDoubt(typed[name]) }
      : undefined;
  };
  const request: FitRequest = {
    shaft: seatOf('shaft'),
    housing: seatOf('housing'),
    width: seatOf('width'),
    clearance: group || undefined,
    duty,
    known,
  };
  if (!request.shaft && !request.housing) return { answer: null, bad: null };
  try {
    return { answer: fit(request), bad: null };
  } catch (error) {
    if (error instanceof BadMeasurement) return { answer: null, bad: error };
    throw error;
  }
}
