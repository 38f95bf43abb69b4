import { type KeyboardEvent, useId } from 'react';
import { type Instrument, instrumentLabel } from '../../indexer/index.ts';
import { readLengths } from './read-lengths.ts';

interface ReadingFieldProps {
  label: string;
  value: string;
  onChange: (value: string) => void;
  onFocus?: () => void;
  instrument?: Instrument;
  ways?: readonly Instrument[];
  onInstrument?: (instrument: Instrument) => void;
  /** Half-width that holds 95 in 100, in millimetres, once it is measured. */
  doubt?: number | undefined;
  hint?: string;
  /** A plain number, no length. */
  counted?: boolean;
}

/** A big number field that takes what a calliper sends: comma, point or fraction, several readings one after the other, and a doubt of one's own. */
export function ReadingField(props: ReadingFieldProps) {
  const {
    label,
    value,
    onChange,
    onFocus,
    ways = [],
    instrument,
    onInstrument,
    doubt,
    hint,
    counted,
  } = props;
  const id = useId();
  const wrong =
    value.trim() !== '' && (counted ? !(Number(value.replace(',', '.')) > 0) : readLengths(value) === null);
  const said = readLengths(value);
  return (
    <div className="reading">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="input"
        inputMode="text"
        autoComplete="off"
        spellCheck={false}
        enterKeyHint="next"
        value={value}
        aria-invalid={wrong || undefined}
        aria-describedby={`${id}-said ${id}-doubt`}
        onChange={event => onChange(event.target.value)}
        onFocus={onFocus}
      />
      <span className="label half-width" id={`${id}-doubt`}>
        {doubt === undefined || wrong ? '' : `± ${Math.round(doubt * 1000) / 1000}`}
      </span>
      {ways.length > 1 ? (
        <select
          aria-label={`Instrument for ${label.toLowerCase()}`}
          value={instrument}
          onChange={event => onInstrument?.(event.target.value as Instrument)}
        >
          {ways.map(way => (
            <option key={way} value={way}>
              {instrumentLabel(way)}
            </option>
          ))}
        </select>
      ) : null}
      <span className={wrong ? 'wrong said' : 'label said'} id={`${id}-said`}>
        {wrong
          ? 'That is no length: write 4.98, 4,98 or 3/16.'
          : [counted ? '' : saidWords(value, said), hint ?? ''].filter(Boolean).join(', ')}
      </span>
    </div>
  );
}

/** What an inch or several readings come to. */
function saidWords(typed: string, said: number[] | null): string {
  if (!said || said.length === 0) return '';
  if (said.length > 1) {
    const mean = said.reduce((sum, each) => sum + each, 0) / said.length;
    return `${said.length} readings, mean ${Math.round(mean * 1000) / 1000}`;
  }
  return /["/]|in/i.test(typed) ? `${said[0]} mm` : '';
}

/**
 * Enter, which a calliper sends behind its number, goes on to the next field. The key itself is heard: a form of several
 * fields without a button is never submitted by it.
 */
export function toNextField(event: KeyboardEvent<HTMLFormElement>): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  event.preventDefault();
  const fields = [...event.currentTarget.querySelectorAll<HTMLInputElement>('.reading input')];
  const at = fields.indexOf(event.target);
  const next = fields[at + 1];
  if (next) next.focus();
  else fields[at]?.blur();
}
