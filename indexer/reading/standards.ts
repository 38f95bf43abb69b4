import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

/** A standard named in a line, e.g. `DIN 471`, `ISO 7380-1`. */
export interface StandardName {
  name: string;
  first: number;
  last: number;
  start: number;
  end: number;
}

/** Who publishes standards. */
const bodies = wordSet('din iso jis ansi asme bs uni nf gb vsm nen une as en');
/** ASME's standards of fasteners are printed without their body too: B18.22M. */
const alone = wordSet('b');
/** What a standard may begin with. */
export const beginStandard = bodies | alone;

/** B18.22.1 and B18.22M: the numbers of ASME's standards of fasteners, with their body or alone. */
function asmeAt(tokens: readonly Token[], at: number, from: number, body: string): StandardName | null {
  const figures = tokens[from];
  if (figures?.kind !== 'number' || figures.gap > 0 || !/^18(\.\d+)?$/.test(figures.text)) return null;
  let end = from;
  let number = figures.text;
  while (tokens[end + 1]?.text === '.' && tokens[end + 2]?.kind === 'number' && tokens[end + 2]!.gap === 0) {
    number += `.${tokens[end + 2]!.text}`;
    end += 2;
  }
  if (!number.includes('.')) return null;
  if (tokens[end + 1]?.text === 'm' && tokens[end + 1]!.gap === 0) {
    number += 'M';
    end++;
  }
  return {
    name: `${body} B${number}`,
    first: at,
    last: end,
    start: tokens[at]!.start,
    end: tokens[end]!.end,
  };
}

/** Standards of parts that come in parts; of any other the figure behind the dash is a size: ISO 7089-4, DIN 471-8. */
const inParts: Readonly<Record<string, ReadonlySet<string>>> = {
  DIN: new Set(['625', '5412', '5418', '32711', '82101']),
  ISO: new Set(
    '7380 7046 3601 7093 6194 4759 898 20515 3290 15973 15974 14583 12240 10683 286 683 2341 3506'.split(' '),
  ),
};
const mayHaveParts = (body: string, number: string) =>
  body !== 'AS' && (inParts[body]?.has(number) ?? (body !== 'DIN' && body !== 'ISO'));

/** Reads a standard that begins at a token: body, more bodies (DIN EN ISO), number, and the part an ISO number carries. */
export function standardAt(tokens: readonly Token[], at: number): StandardName | null {
  if (!isIn(tokens[at]!, bodies)) return isIn(tokens[at]!, alone) ? asmeAt(tokens, at, at + 1, 'ASME') : null;
  let end = at;
  let body = '';
  while (end < tokens.length && isIn(tokens[end]!, bodies) && (end === at || tokens[end]!.gap <= 1)) {
    body = tokens[end]!.text.toUpperCase();
    end++;
    if (tokens[end]?.text === '-' || tokens[end]?.text === '/') end++;
  }
  if (!body) return null;
  let letter = '';
  const letterToken = tokens[end];
  if (
    letterToken &&
    /^[a-e]$/.test(letterToken.text) &&
    (body === 'JIS' || body === 'ANSI' || body === 'ASME')
  ) {
    letter = letterToken.text.toUpperCase();
    end++;
  }
  if (letter === 'B' && body !== 'JIS') return asmeAt(tokens, at, end, body);
  const number = tokens[end];
  if (number?.kind !== 'number' || number.gap > 1 || !/^[1-9]\d{0,5}(\.\d+)*$/.test(number.text)) return null;
  // ISO 61801 is how a bearing's number is introduced: no standard of five figures begins so.
  if (body === 'ISO' && /^6[0-4]\d{3}$/.test(number.text)) return null;
  // "as 2" is a word and a count; the aerospace standard of O-rings has three figures.
  if (body === 'AS' && !/^\d{3,4}$/.test(number.text)) return null;
  let part = '';
  if (mayHaveParts(body, number.text) && tokens[end + 1]?.text === '-' && tokens[end + 1]!.gap === 0) {
    const figure = tokens[end + 2];
    const after = tokens[end + 3];
    if (
      figure?.gap === 0 &&
      /^[1-9]$/.test(figure.text) &&
      !(after?.gap === 0 && /^[.,×a-z]/.test(after.text))
    ) {
      part = `-${figure.text}`;
      end += 2;
    }
  }
  const text = `${body} ${letter ? `${letter} ` : ''}${number.text}${part}`;
  return { name: text, first: at, last: end, start: tokens[at]!.start, end: tokens[end]!.end };
}
