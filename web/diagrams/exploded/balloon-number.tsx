import { type FormEvent, useState } from 'react';
import { Button, Field } from '../../ui/controls.tsx';

interface BalloonNumberProps {
  title: string;
  /** As it stands; empty for a new one. */
  standing: string;
  busy: boolean;
  keep: string;
  onKeep: (ref: string) => void;
  onRemove?: () => void;
}

/** What number a balloon shows, and the way to say that it is none. */
export function BalloonNumber({ title, standing, busy, keep, onKeep, onRemove }: BalloonNumberProps) {
  const [ref, setRef] = useState(standing);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (ref.trim()) onKeep(ref.trim());
  };
  return (
    <form className="balloon-form" onSubmit={submit}>
      <Field
        label={`${title}: its number`}
        value={ref}
        maxLength={20}
        autoComplete="off"
        onChange={event => setRef(event.target.value)}
      />
      <Button type="submit" weight="main" busy={busy} disabled={!ref.trim() || ref.trim() === standing}>
        {keep}
      </Button>
      {onRemove ? (
        <Button weight="thin" busy={busy} onClick={onRemove}>
          It is no balloon
        </Button>
      ) : null}
    </form>
  );
}
