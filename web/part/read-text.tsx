import type { ReactNode } from 'react';

interface ReadTextProps {
  /** The line as printed; offsets are UTF-16 units of it. */
  text: string;
  spans: { field: string; start: number; end: number }[];
  /** True: the very characters that were read are underlined as doubtful. */
  doubtful: boolean;
}

/** A printed line; where it is doubtful, the characters that raised the doubt are underlined. */
export function ReadText({ text, spans, doubtful }: ReadTextProps) {
  if (!doubtful || spans.length === 0) return <span>{text}</span>;
  const pieces: ReactNode[] = [];
  let at = 0;
  for (const { start, end } of merge(raisers(text, spans), text.length)) {
    if (start > at) pieces.push(text.slice(at, start));
    pieces.push(
      <mark key={start} className="doubt">
        {text.slice(start, end)}
      </mark>,
    );
    at = end;
  }
  pieces.push(text.slice(at));
  return <span>{pieces}</span>;
}

/**
 * What raised the doubt, as far as it can be told: figures with a letter where a figure should stand (5.l); else all the
 * figures that were read; else all that was read.
 */
function raisers(text: string, spans: ReadTextProps['spans']): ReadTextProps['spans'] {
  const figures = spans.filter(({ start, end }) => /\d/.test(text.slice(start, end)));
  const whole = figures.map(span => ({
    ...span,
    end: span.end + (/^[.,]?[lIOSB\d]+/.exec(text.slice(span.end))?.[0].length ?? 0),
  }));
  const misread = whole.filter(({ start, end }) =>
    /\d[.,]?[lIOSB]|[lIOSB][.,]?\d/.test(text.slice(start, end)),
  );
  if (misread.length > 0) return misread;
  return figures.length > 0 ? figures : spans;
}

/** Spans in order, those that touch or overlap made one, none beyond the text. */
function merge(spans: ReadTextProps['spans'], length: number): { start: number; end: number }[] {
  const merged: { start: number; end: number }[] = [];
  for (const span of spans.toSorted((a, b) => a.start - b.start)) {
    const end = Math.min(span.end, length);
    const last = merged.at(-1);
    if (end <= span.start) continue;
    if (last && span.start <= last.end) last.end = Math.max(last.end, end);
    else merged.push({ start: span.start, end });
  }
  return merged;
}
