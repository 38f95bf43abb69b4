import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import { type Duty, proposeDuty } from '../../indexer/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import type { Given } from '../diagrams/column-choices.tsx';
import { DutyChoice } from '../part/duty.tsx';
import { Button, Field } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';

/** Keeps a pasted list on the bench shown: asks whose it is, and once whether it lifts, holds, brakes or steers. */
export function KeepList({ text, name, columns }: { text: string; name: string; columns: Given }) {
  const { bench } = useBench();
  const [, navigate] = useLocation();
  const client = useQueryClient();
  const say = useSay();
  const [open, setOpen] = useState(false);
  const [maker, setMaker] = useState('');
  const [model, setModel] = useState('');
  const [duty, setDuty] = useState<Duty>('not-stated');
  const keep = useMutation({
    mutationFn: api.keepText,
    onSuccess: ({ diagram, known }) => {
      void client.invalidateQueries();
      say(
        known
          ? 'This list was here already; nothing was stored twice.'
          : `Kept on ${bench?.name ?? 'the bench'}.`,
      );
      navigate(`/diagrams/${diagram.id}`);
    },
  });
  const word = proposeDuty(`${model}\n${text}`)?.word;
  const proposed = word ? `The list says “${word}”: it counts as critical until you answer.` : undefined;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    keep.mutate({
      maker: maker.trim(),
      model: model.trim(),
      duty,
      name: name || 'pasted list',
      text,
      ...(columns ? { columns } : {}),
    });
  };
  if (!open)
    return (
      <div className="buttons">
        <Button weight="main" onClick={() => setOpen(true)} disabled={!bench}>
          Keep this list
        </Button>
        <span className="quiet">{bench ? `on ${bench.name}` : 'Start a bench first.'}</span>
      </div>
    );
  return (
    <form className="keep" onSubmit={submit} aria-label="Keep this list">
      <Field
        label="Maker"
        value={maker}
        required
        autoFocus
        maxLength={120}
        onChange={event => setMaker(event.target.value)}
      />
      <Field
        label="Model"
        value={model}
        required
        maxLength={120}
        onChange={event => setModel(event.target.value)}
      />
      <DutyChoice value={duty} onChange={setDuty} hint={proposed} />
      <div className="buttons">
        <Button weight="main" type="submit" busy={keep.isPending}>
          Keep it on {bench?.name}
        </Button>
        <Button onClick={() => setOpen(false)}>Not now</Button>
      </div>
      {keep.isError ? (
        <Refused error={keep.error}>
          <p>The text is still in the box.</p>
        </Refused>
      ) : null}
    </form>
  );
}
