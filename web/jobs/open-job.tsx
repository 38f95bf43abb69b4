import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button, Choice, Field } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Refused } from '../ui/states.tsx';
import { minorOf } from './written.ts';

const currencies = ['EUR', 'GBP', 'USD', 'CHF', 'JPY', 'SEK', 'NOK', 'DKK'];

/** A new job: whose machine, which model and serial, what is wrong, the limit and the promise. */
export function OpenJob({ onDone }: { onDone: () => void }) {
  const { bench } = useBench();
  const client = useQueryClient();
  const [, navigate] = useLocation();
  const models = useQuery({ queryKey: ['models', bench?.id], queryFn: api.models });
  const [owner, setOwner] = useState('');
  const [model, setModel] = useState('');
  const [serial, setSerial] = useState('');
  const [fault, setFault] = useState('');
  const [limit, setLimit] = useState('');
  const [currency, setCurrency] = useState('EUR');
  const [promised, setPromised] = useState('');
  const wrongLimit =
    limit.trim() !== '' && minorOf(limit, currency) === null ? 'An amount such as 80.00, or nothing.' : null;
  const open = useMutation({
    mutationFn: api.newJob,
    onSuccess: job => {
      void client.invalidateQueries();
      navigate(`/jobs/${job.id}`);
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (wrongLimit) return;
    const minor = minorOf(limit, currency);
    open.mutate({
      owner: owner.trim(),
      fault: fault.trim(),
      model: model || null,
      serial: serial.trim() || null,
      limit: minor === null ? null : { minor, currency },
      promised: promised || null,
    });
  };
  return (
    <Section title="Open a job">
      <form className="open-job" onSubmit={submit} aria-label="Open a job">
        <Field
          label="Whose machine"
          required
          autoFocus
          maxLength={200}
          value={owner}
          onChange={event => setOwner(event.target.value)}
        />
        <Choice
          label="Model"
          value={model}
          onChange={event => setModel(event.target.value)}
          hint={models.data?.models.length === 0 ? 'No list is on this bench yet.' : undefined}
        >
          <option value="">Not on this bench</option>
          {models.data?.models.map(each => (
            <option key={each.id} value={each.id}>
              {each.maker.name} {each.name}
            </option>
          ))}
        </Choice>
        <Field
          label="Serial number"
          maxLength={80}
          value={serial}
          onChange={event => setSerial(event.target.value)}
          hint="Some lines go by it."
        />
        <Field
          label="Promised for"
          type="date"
          value={promised}
          onChange={event => setPromised(event.target.value)}
        />
        <Field
          className="wide"
          label="What is wrong, in the owner's words"
          maxLength={2000}
          value={fault}
          onChange={event => setFault(event.target.value)}
        />
        <Field
          label="Spending limit"
          inputMode="decimal"
          value={limit}
          wrong={wrongLimit}
          onChange={event => setLimit(event.target.value)}
        />
        <Choice label="Currency" value={currency} onChange={event => setCurrency(event.target.value)}>
          {currencies.map(each => (
            <option key={each}>{each}</option>
          ))}
        </Choice>
        <div className="buttons wide">
          <Button weight="main" type="submit" busy={open.isPending}>
            Open this job
          </Button>
          <Button onClick={onDone}>Not now</Button>
        </div>
        {open.isError ? (
          <Refused error={open.error}>
            <p>What you typed is still here.</p>
          </Refused>
        ) : null}
      </form>
    </Section>
  );
}
