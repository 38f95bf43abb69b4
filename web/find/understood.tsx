import { type FormEvent, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import type { Understood as Reading } from '../../api/answers/index.ts';
import { type CategoryName, categories } from '../../indexer/index.ts';
import { attributeWords, sizeWords, titleOf } from '../part/size.tsx';
import { Chip } from '../ui/controls.tsx';
import { replaceWords } from './replace-words.ts';

type Field = Reading['fields'][number];

interface UnderstoodProps {
  understood: Reading;
  q: string;
  /** The size that the query was taken for, where numbers alone left several. */
  taken: string | null;
}

/** What the query was read as, one chip a thing: solid was said, dashed we assumed. Each can be changed or taken out. */
export function Understood({ understood, q, taken }: UnderstoodProps) {
  const [, navigate] = useLocation();
  const [editing, setEditing] = useState<string | null>(null);
  const ask = (next: string) => navigate(`/find?q=${encodeURIComponent(next)}`);
  const ways = understood.otherwise.filter(
    (way, place, all) =>
      way.size && way.size !== taken && all.findIndex(other => other.size === way.size) === place,
  );
  const others = <OtherWays ways={ways} onTake={ask} />;
  if (!categories.has(understood.category as CategoryName) || understood.category === 'plain')
    return (
      <div className="understood">
        {taken ? <p>Taken for {sizeWords(taken)}, the only one of these on this bench.</p> : null}
        {others}
      </div>
    );
  // Numbers alone name no kind of part.
  const named = /\p{L}/u.test(q.replace(/\d\s*[x×*]\s*(?=\d)/gi, ''));
  const assumed = !named || understood.fields.some(field => field.how === 'assumed');
  const change = (field: Field, words: string) => {
    setEditing(null);
    if (words !== (field.text ?? '')) ask(replaceWords(q, field, words));
  };
  return (
    <div className="understood">
      <div className="chips">
        <span className="label">Read as</span>
        <Chip label="" value={titleOf(understood.category)} assumed={!named} />
        {understood.fields.map(field => {
          const label = labelOf(understood.category, field.field);
          return editing === field.field ? (
            <Edit
              key={field.field}
              label={label}
              words={field.text ?? String(field.value)}
              onDone={words => change(field, words)}
              onCancel={() => setEditing(null)}
            />
          ) : (
            <Chip
              key={field.field}
              label={label}
              value={
                typeof field.value === 'number'
                  ? String(field.value)
                  : attributeWords(field.field, field.value)
              }
              assumed={field.how === 'assumed'}
              onChange={() => setEditing(field.field)}
              onRemove={field.start === null ? undefined : () => ask(replaceWords(q, field, ''))}
            />
          );
        })}
        {assumed ? <span className="label">Dashed: you did not say, we assumed.</span> : null}
      </div>
      {understood.notes.map(note => (
        <p key={note} className="small quiet">
          {note}
        </p>
      ))}
      {others}
    </div>
  );
}

/** What a dimension or attribute is called in its category. */
function labelOf(category: string, field: string): string {
  const dim = categories.get(category as CategoryName)?.dims.find(({ key }) => key === field);
  return (dim?.label ?? field).toLowerCase();
}

/** Other sizes that the same characters could mean. */
function OtherWays({ ways, onTake }: { ways: Reading['otherwise']; onTake: (q: string) => void }) {
  if (ways.length === 0) return null;
  return (
    <details className="other-ways">
      <summary>
        It could also be {ways.length === 1 ? 'one other thing' : `one of ${ways.length} other things`}
      </summary>
      <ul>
        {ways.map(way => (
          <li key={way.size}>
            <button type="button" className="text-button" onClick={() => onTake(way.size!)}>
              {sizeWords(way.size!)}
            </button>{' '}
            <span className="label">{way.why}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}

interface EditProps {
  label: string;
  words: string;
  onDone: (words: string) => void;
  onCancel: () => void;
}

/** The chip's words as typed: Enter takes them, Escape leaves them. */
function Edit({ label, words, onDone, onCancel }: EditProps) {
  const [typed, setTyped] = useState(words);
  const box = useRef<HTMLInputElement>(null);
  useEffect(() => box.current?.select(), []);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    onDone(typed.trim());
  };
  return (
    <form className="chip editing" onSubmit={submit}>
      <label>
        <span className="label">{label}</span>
        <input
          ref={box}
          value={typed}
          size={Math.max(4, typed.length + 1)}
          onChange={event => setTyped(event.target.value)}
          onKeyDown={event => {
            if (event.key === 'Escape') onCancel();
          }}
          onBlur={() => onDone(typed.trim())}
        />
      </label>
    </form>
  );
}
