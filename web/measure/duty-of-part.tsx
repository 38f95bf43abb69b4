import { type Duty, duties } from '../../indexer/index.ts';
import { dutyWords } from '../part/duty.tsx';
import { Choice } from '../ui/controls.tsx';

/** What hangs on the part in hand: where someone could be hurt, agreement of sizes is no approval. */
export function DutyOfPart({ value, onChange }: { value: Duty; onChange: (duty: Duty) => void }) {
  return (
    <Choice
      label="Does someone depend on it?"
      value={value}
      onChange={event => onChange(event.target.value as Duty)}
    >
      {duties.map(duty => (
        <option key={duty} value={duty}>
          {dutyWords[duty]}
        </option>
      ))}
    </Choice>
  );
}
