import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { roleWords } from '../people/role-words.ts';
import { useWho } from '../people/who.ts';
import { Button, Field } from '../ui/controls.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Refused, Waiting } from '../ui/states.tsx';
import { PasteBox } from './paste-box.tsx';
import './start.css';

/** The first page: look round, start a bench, or see at once what a list holds. */
export function StartPage() {
  const { bench, error, again } = useBench();
  return (
    <Sheet
      title="Begin"
      cells={[
        { label: 'Bench', value: bench?.name ?? '–' },
        { label: 'Lengths', value: 'mm' },
      ]}
    >
      <div className="page-head">
        <h1>True sizes from makers' parts lists</h1>
        <p className="quiet">
          Put in the list of any exploded diagram. Fettlebench reads the size of every part, finds what is
          interchangeable across models, and sums the needs of your open jobs into one order.
        </p>
      </div>
      {error ? <Refused error={error} onAgain={again} /> : null}
      <div className="start-ways">
        <LookRound />
        <StartMine />
      </div>
      <PasteBox />
    </Sheet>
  );
}

function LookRound() {
  const { benches, goTo } = useBench();
  const demo = benches.find(bench => bench.demo);
  if (!demo) return null;
  return (
    <Section title="See it filled">
      <p>Six invented makers, their lists read, and three open jobs. Change what you like.</p>
      <div className="buttons">
        <Button weight="main" onClick={() => goTo(demo)}>
          Look round the demo bench
        </Button>
      </div>
    </Section>
  );
}

function StartMine() {
  const { benches, goTo } = useBench();
  const { person } = useWho();
  const [name, setName] = useState('');
  const start = useMutation({ mutationFn: api.newBench, onSuccess: goTo });
  const mine = benches.filter(bench => !bench.demo);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (name.trim()) start.mutate({ name: name.trim() });
  };
  return (
    <Section title={person ? 'Your benches' : 'Your own'}>
      {mine.length > 0 ? (
        <ul className="buttons start-mine">
          {mine.map(bench => (
            <li key={bench.id}>
              <Button onClick={() => goTo(bench)}>Go to {bench.name}</Button>
              {bench.role ? <span className="label"> {roleWords[bench.role].name}</span> : null}
            </li>
          ))}
        </ul>
      ) : null}
      <form className="start-form" onSubmit={submit}>
        <Field
          label="Name of the bench"
          placeholder="Harbour bench"
          value={name}
          maxLength={80}
          required
          onChange={event => setName(event.target.value)}
        />
        <Button type="submit" busy={start.isPending}>
          Start my bench
        </Button>
      </form>
      {start.isPending ? <Waiting title="Laying out the bench" /> : null}
      {start.isError ? <Refused error={start.error} /> : null}
    </Section>
  );
}
