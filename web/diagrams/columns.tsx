import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { DiagramColumns } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked, Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';
import { ColumnChoices, type Given } from './column-choices.tsx';

/** What the columns of a document are taken for, to be put right; its rows are then read anew. */
export function Columns({ diagram }: { diagram: string }) {
  const [open, setOpen] = useState(false);
  return (
    <Section title="Its columns">
      {open ? (
        <Tables diagram={diagram} />
      ) : (
        <>
          <p>A quantity read as a part number, a column left out? Say what each column holds.</p>
          <div className="buttons">
            <Button weight="thin" onClick={() => setOpen(true)}>
              Look at the columns
            </Button>
          </div>
        </>
      )}
    </Section>
  );
}

function Tables({ diagram }: { diagram: string }) {
  const { bench } = useBench();
  const query = useQuery({
    queryKey: ['columns', bench?.id, diagram],
    queryFn: () => api.columns(diagram),
  });
  return (
    <Asked query={query} waiting="Fetching the columns">
      {answer => <Ready answer={answer} />}
    </Asked>
  );
}

function Ready({ answer }: { answer: DiagramColumns }) {
  const { id, name } = answer.diagram;
  const client = useQueryClient();
  const say = useSay();
  const put = useMutation({
    mutationFn: (given: Given) => api.setColumns(id, given),
    onSuccess: () => client.invalidateQueries(),
  });
  const change = (given: Given) =>
    put.mutate(given, {
      onSuccess: () =>
        say(`${name} is read again with its columns so.`, () =>
          put.mutate(answer.given, { onSuccess: () => say('Its columns are as they were.') }),
        ),
    });
  return (
    <>
      <ColumnChoices tables={answer.tables} given={answer.given} busy={put.isPending} onGive={change} />
      {put.isError ? <Refused error={put.error} /> : null}
    </>
  );
}
