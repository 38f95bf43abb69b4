import type { CategoryName, Instrument, MeasureAnswer } from '../../indexer/index.ts';
import { measurablesOf } from '../../indexer/index.ts';
import { valueWords } from '../part/size.tsx';
import { Choice } from '../ui/controls.tsx';
import { DutyOfPart } from './duty-of-part.tsx';
import { factsOf } from './facts.ts';
import { keepInstrument, keptInstrument } from './instrument-kept.ts';
import { PitchField } from './pitch-field.tsx';
import { ReadingField, toNextField } from './reading-field.tsx';
import type { Taken } from './taken.ts';

interface ReadingsProps {
  category: CategoryName;
  taken: Taken;
  onChange: (change: Partial<Taken>) => void;
  answer: MeasureAnswer | null;
  onFocus: (dimension: string) => void;
}

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** Every dimension of a part that can be measured, and what is seen on it. Leave blank what cannot be reached. */
export function Readings({ category, taken, onChange, answer, onFocus }: ReadingsProps) {
  const measurables = measurablesOf(category) ?? [];
  const doubtOf = (key: string) => answer?.taken.find(each => each.dimension === key)?.uncertainty;
  const put = (key: string, value: string) => onChange({ typed: { ...taken.typed, [key]: value } });
  return (
    <form className="readings" aria-label="Your readings" onKeyDown={toNextField}>
      {(factsOf[category] ?? []).map(({ attr, label, values }) => (
        <Choice
          key={attr}
          label={label}
          value={String(taken.attrs[attr] ?? '')}
          onChange={event => {
            const { [attr]: _, ...rest } = taken.attrs;
            onChange({ attrs: event.target.value ? { ...rest, [attr]: event.target.value } : rest });
          }}
        >
          <option value="">not looked at</option>
          {values.map(value => (
            <option key={value} value={value}>
              {valueWords(value)}
            </option>
          ))}
        </Choice>
      ))}
      {measurables.map(({ key, label, ways, counted }) => {
        if (key === 'pitch')
          return (
            <PitchField
              key={key}
              taken={taken}
              onChange={onChange}
              onFocus={() => onFocus(key)}
              doubt={doubtOf(key)}
            />
          );
        const reach: Instrument[] = counted
          ? []
          : [...new Set([...ways.filter(way => way !== 'pin'), 'rule' as const])];
        const what = `${category}.${key}`;
        return (
          <ReadingField
            key={key}
            label={capital(label)}
            value={taken.typed[key] ?? ''}
            onChange={value => put(key, value)}
            onFocus={() => onFocus(key)}
            ways={reach}
            {...(reach.length > 0 && {
              instrument: taken.instruments[key] ?? keptInstrument(what, reach),
            })}
            onInstrument={instrument => {
              keepInstrument(what, instrument);
              onChange({ instruments: { ...taken.instruments, [key]: instrument } });
            }}
            doubt={doubtOf(key)}
            counted={counted === true}
          />
        );
      })}
      <More category={category} taken={taken} onChange={onChange} />
    </form>
  );
}

/** What is asked less often: pins tried, wear, plating, what hangs on it. */
function More({ category, taken, onChange }: Pick<ReadingsProps, 'category' | 'taken' | 'onChange'>) {
  const measurables = measurablesOf(category) ?? [];
  const holes = measurables.filter(({ ways }) => ways.includes('pin'));
  return (
    <details>
      <summary>Pins tried, wear and duty</summary>
      {holes.map(({ key, label }) => (
        <div key={key} className="pins">
          <ReadingField
            label={`Largest pin or drill shank that goes into the ${label}`}
            value={taken.goes[key] ?? ''}
            onChange={value => onChange({ goes: { ...taken.goes, [key]: value } })}
          />
          <ReadingField
            label={`Smallest that does not go into the ${label}`}
            value={taken.stops[key] ?? ''}
            onChange={value => onChange({ stops: { ...taken.stops, [key]: value } })}
          />
        </div>
      ))}
      <label className="tick">
        <input
          type="checkbox"
          checked={taken.condition === 'worn'}
          onChange={event => onChange({ condition: event.target.checked ? 'worn' : 'used' })}
        />
        It is visibly worn
      </label>
      <label className="tick">
        <input
          type="checkbox"
          checked={taken.condition === 'new'}
          onChange={event => onChange({ condition: event.target.checked ? 'new' : 'used' })}
        />
        It is new
      </label>
      {measurables.some(({ plates }) => plates) ? (
        <label className="tick">
          <input
            type="checkbox"
            checked={taken.plated}
            onChange={event => onChange({ plated: event.target.checked })}
          />
          It is plated, as bright zinc
        </label>
      ) : null}
      <DutyOfPart value={taken.duty} onChange={duty => onChange({ duty })} />
    </details>
  );
}
