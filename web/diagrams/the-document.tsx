import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useLocation } from 'wouter';
import type { DiagramAnswer } from '../../api/answers/index.ts';
import { api, documentFile } from '../api.ts';
import { May } from '../people/may.tsx';
import { saveFile } from '../save-file.ts';
import { Button } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';

/** The document itself: as it came in, and to be read again. What a person corrected stays. */
export function TheDocument({ diagram }: { diagram: DiagramAnswer }) {
  const client = useQueryClient();
  const say = useSay();
  const [, navigate] = useLocation();
  const save = useMutation({
    mutationFn: () => documentFile(diagram.id),
    onSuccess: file => saveFile(file, diagram.name),
  });
  const again = useMutation({
    mutationFn: () => api.readAgain(diagram.id),
    onSuccess: () => {
      void client.invalidateQueries();
      say(`${diagram.name} is read again. What you corrected stays.`);
    },
  });
  const remove = useMutation({
    mutationFn: () => api.removeDiagram(diagram.id),
    onSuccess: () => {
      // Nothing is asked again here, where it is gone; the shelf asks as it opens.
      void client.invalidateQueries({ refetchType: 'none' });
      navigate('/diagrams');
      say(`${diagram.name} is taken off the bench.`, () => {
        void api
          .restoreDiagram(diagram.id)
          .then(() => client.invalidateQueries())
          .then(() => navigate(`/diagrams/${diagram.id}`))
          .catch(() => say(`${diagram.name} could not be put back. Put the document in again.`));
      });
    },
  });
  return (
    <Section title="The document" aside={sizeOf(diagram.byteCount)}>
      <p className="fig printed">{diagram.name}</p>
      <div className="buttons document-buttons">
        <Button weight="thin" busy={save.isPending} onClick={() => save.mutate()}>
          Save it as it came
        </Button>
        <May least="repairer">
          <Button weight="thin" busy={again.isPending} onClick={() => again.mutate()}>
            Read it again
          </Button>
          <Button weight="thin" busy={remove.isPending} onClick={() => remove.mutate()}>
            Take it off the bench
          </Button>
        </May>
      </div>
      {save.isError ? <Refused error={save.error} /> : null}
      {remove.isError ? <Refused error={remove.error} /> : null}
      {again.isError ? <Refused error={again.error} /> : null}
    </Section>
  );
}

const sizeOf = (bytes: number) => (bytes < 1000 ? `${bytes} bytes` : `${Math.round(bytes / 1000)} kB`);
