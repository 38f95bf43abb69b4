import { type FormEvent, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { Button, Field } from '../ui/controls.tsx';

/** The page that lays `b` upon `a`; each a part's id or number, or a size or article in any writing. */
export const comparePath = (a: string, b: string): string =>
  `/compare?a=${encodeURIComponent(a)}&b=${encodeURIComponent(b)}`;

/** The way to why one thing does or does not do for another. */
export function WhyNot({ a, b, of }: { a: string; b: string; of: string }) {
  return (
    <Link className="why-not" href={comparePath(a, b)} aria-label={`Why not ${of}?`}>
      Why not?
    </Link>
  );
}

interface CompareFormProps {
  /** What is wanted: fixed where it is given with `fixed`, else what stands in the box at first. */
  a: string;
  b?: string;
  /** How the fixed one is asked for. */
  fixed?: string;
}

/** Names two things to be compared, or another for one that is there. */
export function CompareForm({ a, b = '', fixed }: CompareFormProps) {
  const [, navigate] = useLocation();
  const [wanted, setWanted] = useState(a);
  const [instead, setInstead] = useState(b);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (instead.trim()) navigate(comparePath(fixed ?? wanted.trim(), instead.trim()));
  };
  return (
    <form className="compare-form" onSubmit={submit} aria-label="Compare">
      {fixed ? null : (
        <Field
          label="Wanted"
          required
          autoComplete="off"
          spellCheck={false}
          value={wanted}
          onChange={event => setWanted(event.target.value)}
        />
      )}
      <Field
        label={fixed ? 'Part number or size' : 'In its place'}
        required
        autoComplete="off"
        spellCheck={false}
        value={instead}
        onChange={event => setInstead(event.target.value)}
      />
      <Button type="submit">Compare</Button>
    </form>
  );
}
