import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import type { JobAnswer, NewJob } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button, Choice, Field } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';
import { amountWords, minorOf } from './written.ts';

const currencies = ['EUR', 'GBP', 'USD', 'CHF', 'JPY', 'SEK', 'NOK', 'DKK'];

interface JobFormProps {
  title: string;
  /** The job as it stands, to be changed; none where one is opened. */
  job?: JobAnswer;
  doIt: string;
  busy: boolean;
  error: unknown;
  onDo: (job: NewJob) => void;
  onLeave: () => void;
}

/** Whose machine, which model and serial, what is wrong, the limit and the promise. */
export function JobForm({ title, job, doIt, busy, error, onDo, onLeave }: JobFormProps) {
  const { bench } = useBench();
  const models = useQuery({ queryKey: ['models', bench?.id], queryFn: api.models });
  const [owner, setOwner] = useState(job?.owner ?? '');
  const [model, setModel] = useState(job?.model?.id ?? '');
  const [serial, setSerial] = useState(job?.serial ?? '');
  const [fault, setFault] = useState(job?.fault ?? '');
  const [limit, setLimit] = useState(job?.limit ? amountWords(job.limit) : '');
  const [currency, setCurrency] = useState(job?.limit?.currency ?? 'EUR');
  const [promised, setPromised] = useState(job?.promised ?? '');
  const minor = minorOf(limit, currency);
  const wrongLimit = limit.trim() !== '' && minor === null ? 'An amount such as 80.00, or nothing.' : null;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (wrongLimit) return;
    onDo({
      owner: owner.trim(),
      fault: fault.trim(),
      model: model || null,
      serial: serial.trim() || null,
      limit: minor === null ? null : { minor, currency },
      promised: promised || null,
    });
  };
  return (
    <form className="job-form" onSubmit={submit} aria-label={title}>
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
        className="fault-field"
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
      <div className="buttons">
        <Button weight="main" type="submit" busy={busy}>
          {doIt}
        </Button>
        <Button onClick={onLeave}>Not now</Button>
      </div>
      {error ? (
        <Refused error={error}>
          <p>What you typed is still here.</p>
        </Refused>
      ) : null}
    </form>
  );
}
