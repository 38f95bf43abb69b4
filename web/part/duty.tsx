import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { DutyAnswer } from '../../api/answers/index.ts';
import { type Duty, duties } from '../../indexer/index.ts';
import { api } from '../api.ts';
import { useMay } from '../people/may.tsx';
import { Choice } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';

/** What hangs on a machine or a part, in a repairer's words. */
export const dutyWords: Record<Duty, string> = {
  ordinary: 'No, none of these',
  'load-holding': 'Lifts or holds a load',
  'brake-or-steering': 'Brakes or steers',
  climbing: 'Climbing',
  medical: 'Medical',
  aviation: 'Aviation',
  pressure: 'Under pressure',
  mains: 'Mains electric',
  'not-stated': 'Not answered yet',
};

/** Why a thing counts as it does: who said so, or which printed word proposed it. */
function dutySource({ standing, word, critical }: DutyAnswer): string {
  if (standing === 'confirmed') return 'Answered by a person.';
  if (word)
    return `The list says “${word}”${critical ? ', so it counts as critical until somebody answers' : ''}.`;
  return 'Nobody has answered, and no word of the list proposes it.';
}

interface DutyChoiceProps {
  value: Duty;
  onChange: (duty: Duty) => void;
  label?: string;
  hint?: string | undefined;
  disabled?: boolean;
}

export function DutyChoice({
  value,
  onChange,
  label = 'Does it lift, hold a load, brake or steer?',
  ...rest
}: DutyChoiceProps) {
  return (
    <Choice {...rest} label={label} value={value} onChange={event => onChange(event.target.value as Duty)}>
      {duties.map(each => (
        <option key={each} value={each}>
          {dutyWords[each]}
        </option>
      ))}
    </Choice>
  );
}

/** The question, asked once, of a model or a part; the answer can be changed and undone. */
export function DutyQuestion({ of, id, duty }: { of: 'model' | 'part'; id: string; duty: DutyAnswer }) {
  const client = useQueryClient();
  const say = useSay();
  const mayAnswer = useMay('repairer');
  const answer = useMutation({
    mutationFn: (next: Duty) =>
      of === 'model' ? api.modelDuty(id, { duty: next }) : api.partDuty(id, { duty: next }),
    onSuccess: () => client.invalidateQueries(),
  });
  const change = (next: Duty) =>
    answer.mutate(next, {
      onSuccess: () =>
        say(`Kept: ${dutyWords[next].toLowerCase()}.`, () =>
          answer.mutate(duty.standing === 'confirmed' ? duty.duty : 'not-stated'),
        ),
    });
  return (
    <div>
      <DutyChoice
        value={duty.standing === 'confirmed' ? duty.duty : 'not-stated'}
        onChange={change}
        disabled={answer.isPending || !mayAnswer}
        hint={dutySource(duty)}
      />
      {answer.isError ? <Refused error={answer.error} /> : null}
    </div>
  );
}
