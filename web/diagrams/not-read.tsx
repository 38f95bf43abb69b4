import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { DiagramAnswer } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { Button } from '../ui/controls.tsx';
import { Mark } from '../ui/marks.tsx';
import { Section } from '../ui/sheet.tsx';
import { Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';

/** What of a document could not be read, with what a person can do; pages left at a limit are read from here. */
export function NotRead({ diagram }: { diagram: DiagramAnswer }) {
  const client = useQueryClient();
  const say = useSay();
  const rest = useMutation({
    mutationFn: () => api.readRest(diagram.id),
    onSuccess: () => {
      void client.invalidateQueries();
      say(`The rest of ${diagram.name} is being read. What is read stays.`);
    },
  });
  const { faults } = diagram;
  if (faults.length === 0) return null;
  return (
    <Section title="Not read" aside={`${faults.length} ${faults.length === 1 ? 'place' : 'places'}`}>
      <ul className="rows left-out">
        {faults.map(({ code, page, place, message, remedy }) => (
          <li key={`${code} ${page} ${place}`}>
            <p className="marked">
              <Mark shape="barred" />
              <b>Not read</b> <span className="label">{place}</span>
            </p>
            <p>
              {message} {remedy}
            </p>
            {code === 'pages-not-read' ? (
              <div className="buttons">
                <Button busy={rest.isPending} onClick={() => rest.mutate()}>
                  Read the rest
                </Button>
              </div>
            ) : null}
          </li>
        ))}
      </ul>
      {rest.isError ? <Refused error={rest.error} /> : null}
    </Section>
  );
}
