import { useMutation, useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import type { Invited, Joining } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { keepBench } from '../bench.tsx';
import { Button, Field } from '../ui/controls.tsx';
import { Section, Sheet } from '../ui/sheet.tsx';
import { Asked, Refused } from '../ui/states.tsx';
import { NewPassword, wrongPassword } from './new-sign-in.tsx';
import { roleWords } from './role-words.ts';
import { useWho } from './who.ts';
import './people.css';
import '../start/start.css';

/** Where an invitation's link leads: what it is to, and the way in. The link's secret stands after the `#`, which is sent to nobody. */
export function JoinPage() {
  const [link] = useState(() => location.hash.slice(1));
  const query = useQuery({
    queryKey: ['invitation', link],
    queryFn: () => api.invitation(link),
    staleTime: Number.POSITIVE_INFINITY,
  });
  return (
    <Sheet title="Come in">
      <Asked query={query} waiting="Looking at the link" heading="Come in">
        {invited => <ComeIn link={link} invited={invited} />}
      </Asked>
    </Sheet>
  );
}

function ComeIn({ link, invited }: { link: string; invited: Invited }) {
  const { person, changed } = useWho();
  const [, navigate] = useLocation();
  const [name, setName] = useState('');
  const [password, setPassword] = useState('');
  const join = useMutation({
    mutationFn: (as: Joining['as']) => api.join({ link, ...(as && { as }) }),
    onSuccess: async ({ bench }) => {
      keepBench(bench);
      await changed();
      navigate('/find');
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!wrongPassword(password)) join.mutate({ signIn: name, password });
  };
  return (
    <>
      <div className="page-head">
        <h1>
          {invited.again ? 'Come in again at' : 'Work at'} {invited.bench}
        </h1>
        <p className="quiet">
          As {invited.name}: {roleWords[invited.role].name}. {roleWords[invited.role].means}
        </p>
      </div>
      <div className="start-ways">
        {person ? (
          <Section title="As who you are">
            <p>You are signed in as {person.signIn}. This bench is added to yours.</p>
            <div className="buttons">
              <Button weight="main" busy={join.isPending} onClick={() => join.mutate(undefined)}>
                Come in as {person.signIn}
              </Button>
            </div>
          </Section>
        ) : null}
        <Section title={person ? 'Or with a new sign-in' : 'Choose how you sign in'}>
          <form className="narrow-form" onSubmit={submit} aria-label="Choose how you sign in">
            <Field
              label="Name to sign in by"
              hint="Letters and digits; it need not be your own name."
              autoComplete="username"
              autoCapitalize="off"
              spellCheck={false}
              required
              minLength={3}
              maxLength={60}
              value={name}
              onChange={event => setName(event.target.value)}
            />
            <NewPassword label="Password" value={password} onChange={setPassword} />
            <div className="buttons">
              <Button weight={person ? 'plain' : 'main'} type="submit" busy={join.isPending}>
                Come in
              </Button>
            </div>
          </form>
        </Section>
      </div>
      {join.isError ? (
        <Refused error={join.error}>
          <p>The link is not used up.</p>
        </Refused>
      ) : null}
    </>
  );
}
