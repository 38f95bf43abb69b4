import { Field } from '../ui/controls.tsx';

const shortest = 12;

/** What is wrong with a new password so far; null while nothing is. */
export const wrongPassword = (password: string): string | null =>
  password !== '' && password.length < shortest
    ? `${shortest} characters or more: three or four words do well.`
    : null;

/** A box for a new password. */
export function NewPassword({
  label = 'New password',
  value,
  onChange,
}: {
  label?: string;
  value: string;
  onChange: (password: string) => void;
}) {
  return (
    <Field
      label={label}
      type="password"
      autoComplete="new-password"
      required
      minLength={shortest}
      maxLength={200}
      value={value}
      wrong={wrongPassword(value)}
      hint={`${shortest} characters or more.`}
      onChange={event => onChange(event.target.value)}
    />
  );
}

/** A box for the password that holds now. */
export function CurrentPassword({
  label = 'Your password',
  value,
  onChange,
}: {
  label?: string;
  value: string;
  onChange: (password: string) => void;
}) {
  return (
    <Field
      label={label}
      type="password"
      autoComplete="current-password"
      required
      value={value}
      onChange={event => onChange(event.target.value)}
    />
  );
}
