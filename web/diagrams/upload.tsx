import { useQueryClient } from '@tanstack/react-query';
import { type DragEvent, type FormEvent, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import type { Uploaded } from '../../api/answers/index.ts';
import type { Duty } from '../../indexer/index.ts';
import { api } from '../api.ts';
import { DutyChoice } from '../part/duty.tsx';
import { randomId } from '../random.ts';
import { Button, Field } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';

/** One document about to be put in, and whose it is. */
interface Waiting {
  key: string;
  name: string;
  content: File | string;
  maker: string;
  model: string;
  duty: Duty;
  error?: unknown;
}

/** Takes documents by drop, by picker or as pasted text, many at once; asks of each whose it is. */
export function Upload() {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  const say = useSay();
  const picker = useRef<HTMLInputElement>(null);
  const [waiting, setWaiting] = useState<Waiting[]>([]);
  const [over, setOver] = useState(false);
  const [busy, setBusy] = useState(false);
  const [text, setText] = useState('');

  const add = (contents: (File | string)[]) =>
    setWaiting(before => [
      ...before,
      ...contents.map(content => ({
        key: randomId(),
        name: typeof content === 'string' ? 'pasted list' : content.name,
        content,
        maker: before.at(-1)?.maker ?? '',
        model: '',
        duty: 'not-stated' as Duty,
      })),
    ]);
  const change = (key: string, part: Partial<Waiting>) =>
    setWaiting(before => before.map(each => (each.key === key ? { ...each, ...part } : each)));

  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    if (event.dataTransfer.files.length > 0) add([...event.dataTransfer.files]);
  };

  const send = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    const kept: Uploaded[] = [];
    for (const each of waiting) {
      try {
        kept.push(await keep(each));
        setWaiting(before => before.filter(other => other.key !== each.key));
      } catch (error) {
        change(each.key, { error });
      }
    }
    setBusy(false);
    await client.invalidateQueries();
    if (kept.length === 0) return;
    const known = kept.filter(each => each.known).length;
    say(
      `${kept.length} ${kept.length === 1 ? 'list' : 'lists'} put in${known > 0 ? `, ${known} of them here already` : ''}.`,
    );
    if (kept.length === 1 && waiting.length === 1) navigate(`/diagrams/${kept[0]!.diagram.id}`);
  };

  return (
    <Section title="Put one in" className="upload">
      <section
        className={over ? 'drop over' : 'drop'}
        aria-label="Drop files here"
        onDragOver={event => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={drop}
      >
        <p>Drop diagrams or parts lists here, several at once.</p>
        <div className="buttons">
          <Button onClick={() => picker.current?.click()}>Choose files</Button>
        </div>
        <p className="label">PDF with text, XLSX, ODS, HTML, CSV, TSV or plain text.</p>
        <input
          ref={picker}
          type="file"
          multiple
          hidden
          tabIndex={-1}
          aria-label="Files"
          accept=".pdf,.xlsx,.ods,.html,.htm,.csv,.tsv,.txt,.md,application/pdf,text/html,text/plain,text/csv"
          onChange={event => {
            add([...(event.target.files ?? [])]);
            event.target.value = '';
          }}
        />
      </section>
      <div className="field">
        <label htmlFor="paste-list">Or paste a list</label>
        <textarea
          id="paste-list"
          rows={4}
          value={text}
          spellCheck={false}
          onChange={e => setText(e.target.value)}
        />
      </div>
      <div className="buttons">
        <Button
          disabled={text.trim() === ''}
          onClick={() => {
            add([text]);
            setText('');
          }}
        >
          Take this text
        </Button>
      </div>
      {waiting.length > 0 ? (
        <form onSubmit={send} aria-label="Lists to put in">
          <ul className="rows">
            {waiting.map(each => (
              <li key={each.key} className="waiting-list">
                <p>
                  <b className="fig">{each.name}</b>
                </p>
                <Field
                  label="Maker"
                  required
                  maxLength={120}
                  value={each.maker}
                  onChange={event => change(each.key, { maker: event.target.value })}
                />
                <Field
                  label="Model"
                  required
                  maxLength={120}
                  value={each.model}
                  onChange={event => change(each.key, { model: event.target.value })}
                />
                <DutyChoice value={each.duty} onChange={duty => change(each.key, { duty })} />
                {each.error ? (
                  <Refused error={each.error}>
                    <p>Nothing of it was kept; the others go on.</p>
                  </Refused>
                ) : null}
                <div className="buttons">
                  <Button
                    weight="thin"
                    onClick={() => setWaiting(before => before.filter(other => other.key !== each.key))}
                  >
                    Leave {each.name} out
                  </Button>
                </div>
              </li>
            ))}
          </ul>
          <div className="buttons">
            <Button weight="main" type="submit" busy={busy}>
              Keep and read {waiting.length === 1 ? 'this list' : `these ${waiting.length} lists`}
            </Button>
          </div>
        </form>
      ) : null}
    </Section>
  );
}

function keep({ content, name, maker, model, duty }: Waiting): Promise<Uploaded> {
  if (typeof content === 'string')
    return api.keepText({ maker: maker.trim(), model: model.trim(), duty, name, text: content });
  return api.keepFile({ file: content, maker: maker.trim(), model: model.trim(), duty });
}
