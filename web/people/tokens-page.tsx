import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import type { TokenAnswer, TokenMade } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button, Choice, Field } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked, Empty, Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';
import { dayOf } from './moment-words.ts';
import { Settings } from './settings.tsx';
import { ShownOnce } from './shown-once.tsx';

/** What lets other programs in: to this bench alone. */
export function TokensPage() {
  const { bench } = useBench();
  const client = useQueryClient();
  const query = useQuery({ queryKey: ['tokens', bench?.id], queryFn: api.tokens });
  const [made, setMade] = useState<TokenMade | null>(null);
  return (
    <Settings title="Tokens" about="A token lets another program in, to this bench alone, until a day.">
      <div className="stack">
        {made ? (
          <ShownOnce label={`Token "${made.token.name}"`} value={made.secret} onDone={() => setMade(null)}>
            Give it to the program, which sends it as <span className="fig">Authorization: Bearer …</span>. It
            is not shown again.
          </ShownOnce>
        ) : null}
        <Section title="Tokens of this bench">
          <Asked query={query} waiting="Fetching the tokens">
            {({ tokens }) =>
              tokens.length > 0 ? (
                <ul className="rows">
                  {tokens.map(token => (
                    <TokenRow key={token.id} token={token} />
                  ))}
                </ul>
              ) : (
                <Empty title="No program has a token.">
                  <p>Make one for a till, a script or a spreadsheet that should read or write here.</p>
                </Empty>
              )
            }
          </Asked>
        </Section>
        <NewToken
          onMade={token => {
            setMade(token);
            void client.invalidateQueries({ queryKey: ['tokens'] });
            scrollTo(0, 0);
          }}
        />
      </div>
    </Settings>
  );
}

function TokenRow({ token }: { token: TokenAnswer }) {
  const client = useQueryClient();
  const say = useSay();
  const revoke = useMutation({
    mutationFn: () => api.revokeToken(token.id),
    onSuccess: () => {
      void client.invalidateQueries({ queryKey: ['tokens'] });
      say(`"${token.name}" lets nobody in any more.`);
    },
  });
  const states = {
    good: `Good until ${dayOf(token.until)}.`,
    over: `Ended on ${dayOf(token.until)}.`,
    revoked: 'Revoked.',
  };
  return (
    <li className="line-with-way">
      <div>
        <b>{token.name}</b>
        <p className="label">
          {token.scope === 'read' ? 'Reads. ' : 'Reads and writes, as a repairer does. '}
          {states[token.state]} {token.usedAt ? `Last used ${dayOf(token.usedAt)}.` : 'Never used.'}
        </p>
      </div>
      {token.state === 'good' ? (
        <Button weight="thin" busy={revoke.isPending} onClick={() => revoke.mutate()}>
          Revoke<span className="only-heard"> {token.name}</span>
        </Button>
      ) : null}
      {revoke.isError ? <Refused error={revoke.error} /> : null}
    </li>
  );
}

function NewToken({ onMade }: { onMade: (made: TokenMade) => void }) {
  const [name, setName] = useState('');
  const [scope, setScope] = useState<'read' | 'write'>('read');
  const [days, setDays] = useState('90');
  const make = useMutation({
    mutationFn: () => api.newToken({ name: name.trim(), scope, days: Number(days) }),
    onSuccess: made => {
      setName('');
      onMade(made);
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (name.trim()) make.mutate();
  };
  return (
    <Section title="Make a token">
      <form className="keep" onSubmit={submit} aria-label="Make a token">
        <Field
          label="What it is for"
          required
          maxLength={80}
          placeholder="Till at the counter"
          value={name}
          onChange={event => setName(event.target.value)}
        />
        <Choice
          label="What it may do"
          value={scope}
          onChange={event => setScope(event.target.value as 'read' | 'write')}
        >
          <option value="read">Read</option>
          <option value="write">Read and write, as a repairer does</option>
        </Choice>
        <Choice label="How long" value={days} onChange={event => setDays(event.target.value)}>
          <option value="30">30 days</option>
          <option value="90">90 days</option>
          <option value="366">A year</option>
        </Choice>
        <div className="buttons">
          <Button weight="main" type="submit" busy={make.isPending}>
            Make the token
          </Button>
        </div>
        {make.isError ? (
          <Refused error={make.error}>
            <p>What you typed is still here.</p>
          </Refused>
        ) : null}
      </form>
    </Section>
  );
}
