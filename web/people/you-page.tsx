import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import { api } from '../api.ts';
import { Button } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked, Empty, Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';
import { EraseForGood } from './erase-for-good.tsx';
import { momentWords } from './moment-words.ts';
import { CurrentPassword, NewPassword, wrongPassword } from './new-sign-in.tsx';
import { Settings } from './settings.tsx';
import { useWho } from './who.ts';

/** What is one's own: where one is signed in, the password, and the way out for good. */
export function YouPage() {
  const { person, changed } = useWho();
  const [, navigate] = useLocation();
  const out = useMutation({
    mutationFn: api.signOut,
    onSuccess: async () => {
      navigate('/');
      await changed();
    },
  });
  if (!person)
    return (
      <Settings title="You" about="Nobody signs in here: the bench is this machine's alone.">
        <Empty title="There is nothing to set." />
      </Settings>
    );
  return (
    <Settings title="You" about={`You are signed in as ${person.signIn}.`}>
      <div className="stack">
        <div className="buttons">
          <Button busy={out.isPending} onClick={() => out.mutate()}>
            Sign out
          </Button>
        </div>
        <Sessions />
        <ChangePassword />
        <EraseMe />
      </div>
    </Settings>
  );
}

function Sessions() {
  const client = useQueryClient();
  const say = useSay();
  const query = useQuery({ queryKey: ['sessions'], queryFn: api.sessions });
  const done = (words: string) => () => {
    say(words);
    void client.invalidateQueries({ queryKey: ['sessions'] });
  };
  const end = useMutation({ mutationFn: api.endSession, onSuccess: done('Signed out there.') });
  const endOthers = useMutation({
    mutationFn: api.endOtherSessions,
    onSuccess: done('Signed out everywhere but here.'),
  });
  return (
    <Section title="Where you are signed in">
      <Asked query={query} waiting="Fetching where you are signed in">
        {({ sessions }) => (
          <>
            <ul className="rows">
              {sessions.map(one => (
                <li key={one.id} className="line-with-way">
                  <div>
                    <b>{one.device}</b>
                    <p className="label">
                      {one.current ? 'This one. ' : `Last seen ${momentWords(one.seenAt)}. `}
                      Since {momentWords(one.startedAt)}.
                    </p>
                  </div>
                  {one.current ? null : (
                    <Button
                      weight="thin"
                      busy={end.isPending && end.variables === one.id}
                      onClick={() => end.mutate(one.id)}
                    >
                      Sign out there
                    </Button>
                  )}
                </li>
              ))}
            </ul>
            {sessions.length > 1 ? (
              <div className="buttons">
                <Button busy={endOthers.isPending} onClick={() => endOthers.mutate()}>
                  Sign out everywhere but here
                </Button>
              </div>
            ) : null}
          </>
        )}
      </Asked>
      {end.isError || endOthers.isError ? <Refused error={end.error ?? endOthers.error} /> : null}
    </Section>
  );
}

function ChangePassword() {
  const client = useQueryClient();
  const say = useSay();
  const [password, setPassword] = useState('');
  const [newPassword, setNewPassword] = useState('');
  const change = useMutation({
    mutationFn: () => api.changePassword({ password, newPassword }),
    onSuccess: () => {
      setPassword('');
      setNewPassword('');
      say('The new password holds. Elsewhere you are signed out.');
      void client.invalidateQueries({ queryKey: ['sessions'] });
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!wrongPassword(newPassword)) change.mutate();
  };
  return (
    <Section title="Your password">
      <form className="narrow-form" onSubmit={submit} aria-label="Your password">
        <CurrentPassword label="Password now" value={password} onChange={setPassword} />
        <NewPassword value={newPassword} onChange={setNewPassword} />
        <div className="buttons">
          <Button type="submit" busy={change.isPending}>
            Change the password
          </Button>
        </div>
        {change.isError ? <Refused error={change.error} /> : null}
      </form>
    </Section>
  );
}

function EraseMe() {
  const { changed } = useWho();
  return (
    <EraseForGood
      title="Erase me"
      summary="Take my name out of everything"
      action="Erase me for good"
      erase={api.eraseMe}
      onErased={changed}
    >
      Your name goes from every bench you work or worked at, and you cannot sign in any more. What you did
      stays, as done by somebody whose name was erased. Backups made before still hold it. There is no way
      back.
    </EraseForGood>
  );
}
