import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { api } from '../api.ts';
import { Button, Field } from '../ui/controls.tsx';
import { Sheet } from '../ui/sheet.tsx';
import { Refused } from '../ui/states.tsx';
import { CurrentPassword } from './new-sign-in.tsx';
import { useWho } from './who.ts';
import './people.css';

/** The way in. What was wrong is not told apart; where one was about to go is still the address. */
export function SignInPage() {
  const { changed } = useWho();
  const [name, setName] = useState('');
  const [password, setPassword] = useState('');
  const enter = useMutation({
    mutationFn: () => api.signIn({ signIn: name, password }),
    onSuccess: changed,
    onError: () => setPassword(''),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    enter.mutate();
  };
  return (
    <Sheet title="Sign in">
      <div className="page-head">
        <h1>Sign in</h1>
        <p className="quiet">Whoever has no sign-in asks an owner of the bench for a link.</p>
      </div>
      <form className="narrow-form" onSubmit={submit} aria-label="Sign in">
        <Field
          label="Name you sign in by"
          autoComplete="username"
          autoCapitalize="off"
          spellCheck={false}
          required
          value={name}
          onChange={event => setName(event.target.value)}
        />
        <CurrentPassword label="Password" value={password} onChange={setPassword} />
        <div className="buttons">
          <Button weight="main" type="submit" busy={enter.isPending}>
            {enter.isPending ? 'Signing in' : 'Sign in'}
          </Button>
        </div>
        {enter.isError ? <Refused error={enter.error} /> : null}
      </form>
    </Sheet>
  );
}
