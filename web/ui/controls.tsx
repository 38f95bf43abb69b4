import { type ComponentProps, type ReactNode, useId } from 'react';
import { Cross } from './marks.tsx';
import './controls.css';

interface ButtonProps extends ComponentProps<'button'> {
  /** `main` is the one thing to do here; `thin` what is seldom wanted. */
  weight?: 'main' | 'plain' | 'thin';
  /** While its work is under way it cannot be pressed again. */
  busy?: boolean;
}

export function Button({ weight = 'plain', busy = false, className = '', ...rest }: ButtonProps) {
  return (
    <button
      type="button"
      {...rest}
      disabled={rest.disabled || busy}
      aria-busy={busy || undefined}
      className={`button ${weight} ${className}`}
    />
  );
}

interface FieldProps extends ComponentProps<'input'> {
  label: string;
  /** After the box: a unit, an example. */
  hint?: ReactNode;
  /** What is wrong with what stands in the box. */
  wrong?: string | null | undefined;
}

export function Field({ label, hint, wrong, className = '', ...rest }: FieldProps) {
  const id = useId();
  const said = [hint ? `${id}-hint` : '', wrong ? `${id}-wrong` : ''].filter(Boolean).join(' ');
  return (
    <div className={`field ${className}`}>
      <label htmlFor={id}>{label}</label>
      <input {...rest} id={id} aria-invalid={wrong ? true : undefined} aria-describedby={said || undefined} />
      {hint ? (
        <span className="label" id={`${id}-hint`}>
          {hint}
        </span>
      ) : null}
      {wrong ? (
        <span className="wrong" id={`${id}-wrong`}>
          {wrong}
        </span>
      ) : null}
    </div>
  );
}

interface ChoiceProps extends ComponentProps<'select'> {
  label: string;
  hint?: ReactNode;
  children: ReactNode;
}

export function Choice({ label, hint, className = '', children, ...rest }: ChoiceProps) {
  const id = useId();
  return (
    <div className={`field ${className}`}>
      <label htmlFor={id}>{label}</label>
      <select {...rest} id={id} aria-describedby={hint ? `${id}-hint` : undefined}>
        {children}
      </select>
      {hint ? (
        <span className="label" id={`${id}-hint`}>
          {hint}
        </span>
      ) : null}
    </div>
  );
}

interface ChipProps {
  /** Empty for what needs no name beside its value. */
  label: string;
  value: string;
  /** Dashed: we assumed it; solid: it was said. */
  assumed?: boolean;
  onChange?: (() => void) | undefined;
  onRemove?: (() => void) | undefined;
}

/** One thing understood, that can be changed or taken out. */
export function Chip({ label, value, assumed = false, onChange, onRemove }: ChipProps) {
  const words = (
    <>
      {label ? <span className="label">{label}</span> : null} <b>{value}</b>
    </>
  );
  return (
    <span className={`chip ${assumed ? 'assumed' : ''}`}>
      {onChange ? (
        <button type="button" onClick={onChange}>
          {words}
          <span className="only-heard"> (change)</span>
        </button>
      ) : (
        <span className="said">{words}</span>
      )}
      {onRemove ? (
        <button
          type="button"
          className="out"
          onClick={onRemove}
          aria-label={`Take out ${[label, value].filter(Boolean).join(' ')}`}
        >
          <Cross />
        </button>
      ) : null}
    </span>
  );
}

interface StepperProps {
  /** What is counted, for those who hear it. */
  label: string;
  value: number;
  min?: number;
  busy?: boolean;
  onChange: (value: number) => void;
}

/** A quantity with a step down and a step up, each as wide as a thumb. */
export function Stepper({ label, value, min = 1, busy = false, onChange }: StepperProps) {
  return (
    <fieldset className="stepper" aria-label={`${label}: ${value}`}>
      <button
        type="button"
        aria-label={`One less: ${label}`}
        disabled={busy || value <= min}
        onClick={() => onChange(value - 1)}
      >
        −
      </button>
      <output>{value}</output>
      <button
        type="button"
        aria-label={`One more: ${label}`}
        disabled={busy}
        onClick={() => onChange(value + 1)}
      >
        +
      </button>
    </fieldset>
  );
}
