import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import { api } from '../api.ts';
import { Button } from '../ui/controls.tsx';
import { Sheet } from '../ui/sheet.tsx';
import { Refused } from '../ui/states.tsx';
import { NewPassword, wrongPassword } from './new-sign-in.tsx';
import { useWho } from './who.ts';
import './people.css';

/** Where the link to a new password leads. */
export function NewPasswordPage() {
  const [link] = useState(() => location.hash.slice(1));
  const { changed } = useWho();
  const [, navigate] = useLocation();
  const [newPassword, setNewPassword] = useState('');
  const set = useMutation({
    mutationFn: () => api.passwordByLink({ link, newPassword }),
    onSuccess: async () => {
      await changed();
      navigate('/');
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!wrongPassword(newPassword)) set.mutate();
  };
  return (
    <Sheet title="New password">
      <div className="page-head">
        <h1>Choose a new password</h1>
        <p className="quiet">The one before no longer holds, and wherever you were signed in, you are out.</p>
      </div>
      <form className="narrow-form" onSubmit={submit} aria-label="Choose a new password">
        <NewPassword value={newPassword} onChange={setNewPassword} />
        <div className="buttons">
          <Button weight="main" type="submit" busy={set.isPending}>
            Keep it and sign in
          </Button>
        </div>
        {set.isError ? <Refused error={set.error} /> : null}
      </form>
    </Sheet>
  );
}
