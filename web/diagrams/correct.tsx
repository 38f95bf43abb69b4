import { type FormEvent, useEffect, useRef, useState } from 'react';
import type { DiagramRow, NewCorrection } from '../../api/answers/index.ts';
import { categories, categoryNames, type Dims, type ReadAs } from '../../indexer/index.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { drawingOf } from '../drawing/of-size.ts';
import { headingOf, titleOf } from '../part/size.tsx';
import { Button, Choice, Field } from '../ui/controls.tsx';
import { understoodOf } from './understood-of.ts';

interface CorrectProps {
  row: DiagramRow;
  busy: boolean;
  /** The keyboard goes to its first box. */
  takesFocus: boolean;
  onKeep: (correction: NewCorrection) => void;
  onCancel: () => void;
}

/** A line corrected in place: its kind, its dimensions, its quantity; drawn as it is typed. Escape leaves it. */
export function Correct({ row, busy, takesFocus, onKeep, onCancel }: CorrectProps) {
  const read = understoodOf(row);
  const [category, setCategory] = useState<ReadAs>(read.category === 'unsure' ? 'plain' : read.category);
  const [typed, setTyped] = useState<Record<string, string>>(() => written(read.dims));
  const [qty, setQty] = useState(read.qty === null ? '' : String(read.qty));
  const [focus, setFocus] = useState<string>();
  const first = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (takesFocus) first.current?.querySelector('select')?.focus();
  }, [takesFocus]);

  const measures =
    category === 'not-a-part' || category === 'unsure' ? [] : (categories.get(category)?.dims ?? []);
  const wrong = Object.fromEntries(
    measures.map(({ key }) => [key, key === 'thread' ? null : wrongLength(typed[key])]),
  );
  const dims = readDims(
    typed,
    measures.map(({ key }) => key),
  );
  const drawing = drawingOf({
    category,
    dims,
    implied: {},
    attrs: category === read.category ? read.attrs : {},
  });
  const wrongQty =
    qty.trim() === '' || Number(qty.replace(',', '.')) > 0 ? null : 'A number above 0, or nothing.';

  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (wrongQty || Object.values(wrong).some(Boolean)) return;
    const { material } = read.attrs;
    const attrs = category === read.category ? read.attrs : material === undefined ? {} : { material };
    onKeep({ category, dims, attrs, qty: qty.trim() === '' ? null : Number(qty.replace(',', '.')) });
  };
  return (
    <form
      ref={first}
      className="correct"
      aria-label={`Correct line ${row.ref || row.place}`}
      onSubmit={submit}
      onKeyDown={event => {
        if (event.key === 'Escape') onCancel();
      }}
    >
      <div className="correct-fields">
        <Choice label="It is" value={category} onChange={event => setCategory(event.target.value as ReadAs)}>
          {categoryNames.map(name => (
            <option key={name} value={name}>
              {name === 'plain' ? 'A part without a size' : headingOf(name)}
            </option>
          ))}
          <option value="not-a-part">Not a part</option>
        </Choice>
        {measures.map(({ key, label }) => (
          <Field
            key={key}
            label={label}
            value={typed[key] ?? ''}
            inputMode={key === 'thread' ? 'text' : 'decimal'}
            autoComplete="off"
            wrong={wrong[key]}
            onFocus={() => setFocus(key)}
            onBlur={() => setFocus(undefined)}
            onChange={event => setTyped({ ...typed, [key]: event.target.value })}
          />
        ))}
        <Field
          label="Quantity"
          inputMode="decimal"
          value={qty}
          wrong={wrongQty}
          onChange={event => setQty(event.target.value)}
        />
      </div>
      {drawing ? (
        <Drawing
          drawing={drawing}
          title={titleOf(category)}
          room={{ width: 330, height: 230 }}
          focus={focus}
        />
      ) : null}
      <div className="buttons">
        <Button weight="main" type="submit" busy={busy}>
          Keep this
        </Button>
        <Button onClick={onCancel}>Leave it</Button>
      </div>
    </form>
  );
}

function written(dims: Dims): Record<string, string> {
  return Object.fromEntries(Object.entries(dims).map(([key, value]) => [key, String(value)]));
}

function wrongLength(typed: string | undefined): string | null {
  const text = (typed ?? '').trim();
  if (text === '') return null;
  const value = Number(text.replace(',', '.'));
  return Number.isFinite(value) && value > 0 ? null : 'A length in millimetres.';
}

/** A thread as it is named, from how it may be typed: `m3`, `# 6-32`, `2 ba`. */
function threadName(typed: string): string {
  return typed.replace(/^#/, '').replace(/\s+/g, '').toUpperCase().replaceAll('X', 'x');
}

/** The dimensions typed so far; what is empty or no length is left out. */
function readDims(typed: Record<string, string>, keys: string[]): Dims {
  const dims: Dims = {};
  for (const key of keys) {
    const text = (typed[key] ?? '').trim();
    if (text === '') continue;
    if (key === 'thread') dims[key] = threadName(text);
    else if (!wrongLength(text)) dims[key] = Number(text.replace(',', '.'));
  }
  return dims;
}
