import { Choice } from '../ui/controls.tsx';
import { ReadingField } from './reading-field.tsx';
import type { PitchWay, Taken } from './taken.ts';

interface PitchFieldProps {
  taken: Taken;
  onChange: (change: Partial<Taken>) => void;
  onFocus: () => void;
  doubt: number | undefined;
}

/** From one to as many pitches as any screw has under a calliper. */
const counts = Array.from({ length: 40 }, (_, at) => at + 1);

/** A pitch: counted over a length, read off a gauge, or as threads to the inch. */
export function PitchField({ taken, onChange, onFocus, doubt }: PitchFieldProps) {
  const { pitchWay, pitches } = taken;
  const label = {
    counted: `Length over ${pitches} ${pitches === 1 ? 'pitch' : 'pitches'}`,
    gauge: 'Pitch by thread gauge',
    'per-inch': 'Threads to the inch',
  }[pitchWay];
  return (
    <div className="pitch">
      <div className="pitch-way">
        <Choice
          label="Thread"
          value={pitchWay}
          onChange={event => onChange({ pitchWay: event.target.value as PitchWay })}
        >
          <option value="counted">pitches counted</option>
          <option value="gauge">thread gauge, mm</option>
          <option value="per-inch">thread gauge, to the inch</option>
        </Choice>
        {pitchWay === 'counted' ? (
          <Choice
            label="Pitches"
            value={pitches}
            onChange={event => onChange({ pitches: Number(event.target.value) })}
          >
            {counts.map(count => (
              <option key={count}>{count}</option>
            ))}
          </Choice>
        ) : null}
      </div>
      <ReadingField
        label={label}
        value={taken.typed.pitch ?? ''}
        onChange={pitch => onChange({ typed: { ...taken.typed, pitch } })}
        onFocus={onFocus}
        counted={pitchWay === 'per-inch'}
        {...(pitchWay === 'counted' && { hint: 'over the crests: pitches are crests less one' })}
        {...(doubt !== undefined && { doubt })}
      />
    </div>
  );
}
