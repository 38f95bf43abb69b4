import { useMutation } from '@tanstack/react-query';
import { type FormEvent, type ReactNode, useState } from 'react';
import { Button } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Refused } from '../ui/states.tsx';
import { CurrentPassword } from './new-sign-in.tsx';

interface EraseForGoodProps {
  title: string;
  /** What opens the form. */
  summary: string;
  /** What goes, and what stays. */
  children: ReactNode;
  action: string;
  erase: (password: string) => Promise<unknown>;
  onErased: () => unknown;
}

/** What has no way back: it stands closed, and asks for the password. */
export function EraseForGood({ title, summary, children, action, erase, onErased }: EraseForGoodProps) {
  const [password, setPassword] = useState('');
  const erasing = useMutation({ mutationFn: () => erase(password), onSuccess: onErased });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    erasing.mutate();
  };
  return (
    <Section title={title}>
      <details>
        <summary>{summary}</summary>
        <form className="narrow-form" onSubmit={submit} aria-label={title}>
          <p>{children}</p>
          <CurrentPassword value={password} onChange={setPassword} />
          <div className="buttons">
            <Button type="submit" busy={erasing.isPending}>
              {action}
            </Button>
          </div>
          {erasing.isError ? <Refused error={erasing.error} /> : null}
        </form>
      </details>
    </Section>
  );
}
