import { useRef, useState } from 'react';
import { Button, Field } from '../ui/controls.tsx';

/** Something secret that is shown this once: to be copied and handed over. */
export function ShownOnce({
  label,
  value,
  children,
  onDone,
}: {
  label: string;
  value: string;
  children: React.ReactNode;
  onDone: () => void;
}) {
  const box = useRef<HTMLInputElement>(null);
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    box.current?.select();
    try {
      // Not there on a page in the clear; the words are then selected, to be copied by hand.
      await navigator.clipboard.writeText(value);
      setCopied(true);
    } catch {
      setCopied(false);
    }
  };
  return (
    <div className="shown-once" role="status">
      <Field ref={box} label={label} readOnly value={value} onFocus={event => event.target.select()} />
      <p className="small">{children}</p>
      <div className="buttons">
        <Button weight="main" onClick={() => void copy()}>
          {copied ? 'Copied' : 'Copy'}
        </Button>
        <Button onClick={onDone}>I have it</Button>
      </div>
    </div>
  );
}
