import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useRef, useState } from 'react';
import { api } from '../api.ts';
import { Button } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Refused, Waiting } from '../ui/states.tsx';
import { PastedAnswer } from './pasted-answer.tsx';

/** Any list pasted is answered with its rows and sizes; nothing is stored until it is kept. */
export function PasteBox() {
  const [text, setText] = useState('');
  const box = useRef<HTMLTextAreaElement>(null);
  const read = useMutation({ mutationFn: api.read });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (text.trim()) read.mutate({ text });
    else box.current?.focus();
  };
  return (
    <Section title="Paste a list" aside="nothing is stored until you keep it" className="paste">
      <form onSubmit={submit}>
        <div className="field">
          <label htmlFor="paste">A parts list from a sheet, a table or a web page, or just some lines</label>
          <textarea
            ref={box}
            id="paste"
            rows={6}
            spellCheck={false}
            value={text}
            placeholder={'12  70-0896  Ball bearing 5x11x4 ZZ  2\n13  70-0114  Screw, pan head M2.5x6  4'}
            onChange={event => setText(event.target.value)}
          />
        </div>
        <div className="buttons">
          <Button weight="main" type="submit" busy={read.isPending}>
            Read this list
          </Button>
        </div>
      </form>
      {read.isPending ? <Waiting title="Reading the list" /> : null}
      {read.isError ? (
        <Refused error={read.error}>
          <p>The text is still in the box; nothing was stored.</p>
        </Refused>
      ) : null}
      {read.data && !read.isPending ? (
        <PastedAnswer
          pasted={read.data}
          text={read.variables.text}
          columns={read.variables.columns ?? null}
          onColumns={columns => read.mutate({ text: read.variables.text, ...(columns ? { columns } : {}) })}
        />
      ) : null}
    </Section>
  );
}
