import { useQuery } from '@tanstack/react-query';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { MakersPartOnly } from '../part/caution.tsx';
import { DutyQuestion } from '../part/duty.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked } from '../ui/states.tsx';

/** The one question about a model, and what follows from its answer. */
export function ModelDuty({ model }: { model: string }) {
  const { bench } = useBench();
  const query = useQuery({ queryKey: ['model', bench?.id, model], queryFn: () => api.model(model) });
  return (
    <Section title="What hangs on it" aside="asked once">
      <Asked query={query} waiting="Fetching the model">
        {({ duty }) => (
          <div className="duty">
            {duty.critical ? <MakersPartOnly sameSize={false} /> : null}
            <DutyQuestion of="model" id={model} duty={duty} />
          </div>
        )}
      </Asked>
    </Section>
  );
}
