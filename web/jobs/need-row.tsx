import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { Link } from 'wouter';
import type { NeedAnswer } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { Size, sizeWords, takeApart, titleOf, valueWords } from '../part/size.tsx';
import { May, useMay } from '../people/may.tsx';
import { Button, Field, Stepper } from '../ui/controls.tsx';
import { LineMark } from '../ui/marks.tsx';
import { Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';

/** One need: what, how many, and the way out. */
export function NeedRow({ need }: { need: NeedAnswer }) {
  const client = useQueryClient();
  const say = useSay();
  const refresh = () => client.invalidateQueries();
  const what = need.part?.number ?? (need.item ? sizeWords(need.item) : (need.part?.name ?? 'part'));
  const change = useMutation({
    mutationFn: (qty: number | null) => api.changeNeed(need.id, { qty }),
    onSuccess: refresh,
  });
  const remove = useMutation({
    mutationFn: () => api.removeNeed(need.id),
    onSuccess: gone => {
      void refresh();
      say(`${what} is out of the job.`, () => {
        void api
          .addNeed(gone.job, {
            ...(gone.part ? { part: gone.part.id } : { item: gone.item ?? what }),
            ...(gone.part && gone.line ? { row: gone.line.row } : {}),
            qty: gone.qty,
            note: gone.note,
            takenAs: gone.takenAs,
          })
          .then(refresh)
          .catch(() => say(`${what} could not be put back. Add it again.`));
      });
    },
  });
  const mayChange = useMay('counter');
  const shown = change.isPending ? change.variables : need.qty;
  return (
    <li className="need">
      <span className="balloon fig">{need.line?.ref || '–'}</span>
      <div className="need-what">
        {need.part ? (
          <Link href={`/parts/${need.part.id}`} className="sheet-name">
            {need.part.number ? <span className="fig">{need.part.number}</span> : null} {need.part.name}
          </Link>
        ) : null}
        {need.item ? (
          <p>
            <Size size={need.item} /> <span className="label">{articleWords(need.item)}</span>
          </p>
        ) : null}
        {need.note ? <p className="label">{need.note}</p> : null}
        {need.line ? (
          <p className="label">
            line {need.line.ref}, {need.line.diagram.name}
          </p>
        ) : null}
      </div>
      {!mayChange ? (
        <b className="fig">{shown ?? 'as required'}</b>
      ) : shown === null ? (
        <HowMany what={what} busy={change.isPending} onSay={change.mutate} />
      ) : (
        <Stepper label={what} value={shown} busy={change.isPending} onChange={change.mutate} />
      )}
      <May least="counter">
        <Button
          weight="thin"
          className="no-print"
          busy={remove.isPending}
          aria-label={`Remove ${what}`}
          onClick={() => remove.mutate()}
        >
          Remove
        </Button>
      </May>
      {change.isError ? <Refused error={change.error} /> : null}
      {remove.isError ? <Refused error={remove.error} /> : null}
    </li>
  );
}

/** The list says "as required": asks how many this unit takes. */
function HowMany({ what, busy, onSay }: { what: string; busy: boolean; onSay: (qty: number) => void }) {
  const [typed, setTyped] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const qty = Number(typed);
    if (Number.isInteger(qty) && qty > 0) onSay(qty);
  };
  return (
    <form className="how-many" onSubmit={submit} aria-label={`How many of ${what}`}>
      <span className="marked look-here small">
        <LineMark line="break" />
        as required
      </span>
      <Field
        label="How many?"
        inputMode="numeric"
        value={typed}
        onChange={event => setTyped(event.target.value)}
      />
      <Button type="submit" busy={busy}>
        Say
      </Button>
    </form>
  );
}

function articleWords(item: string): string {
  const { category, attributes } = takeApart(item);
  return [titleOf(category), ...attributes.map(valueWords)].join(', ');
}
