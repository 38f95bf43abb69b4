import { fold } from './fold.ts';

/** The smallest piece of a line: a word, a number, or one mark. Each character of Japanese is a word of its own. */
export interface Token {
  kind: 'word' | 'number' | 'mark';
  /** Folded: small letters, no accents. */
  text: string;
  /** Half-open offsets into the original text. */
  start: number;
  end: number;
  /** How many blanks stand before it: 0 is glued to the one before, a new line counts 9. */
  gap: number;
  /** True where the original begins with a capital. */
  upper: boolean;
}

const isDigit = (c: number) => c >= 48 && c <= 57;
const isLetter = (c: number) =>
  (c >= 97 && c <= 122) || (c >= 0xc0 && c < 0x2e80 && c !== 0xd7 && !isMark(c));
const isCjk = (c: number) => c >= 0x3005 && c !== 0x3008 && c < 0xfb00;
/** Punctuation and arrows beyond ASCII. ø stands alone as the sign for a diameter. */
const isMark = (c: number) => c === 0xf8 || (c >= 0x2000 && c < 0x2e80);
const isBlank = (c: number) => c === 32 || c === 95 || c === 0xa0;

/** How far a number reaches that begins at `at`: 12, 1.5, 2,5, .035 */
function numberEnd(text: string, at: number): number {
  let end = at;
  while (isDigit(text.charCodeAt(end))) end++;
  const separator = text[end];
  if ((separator === '.' || separator === ',') && isDigit(text.charCodeAt(end + 1))) {
    let after = end + 1;
    while (isDigit(text.charCodeAt(after))) after++;
    // 3,4,5 and 1.2.3 are lists, and a point that stood before takes no second one.
    const chained = text[after] === separator && isDigit(text.charCodeAt(after + 1));
    if (!chained && text[at - 1] !== separator) end = after;
  }
  return end;
}

/** Cuts a line once. Offsets are into the text as given. Never fails; linear in its length. */
export function tokenise(text: string): Token[] {
  const folded = fold(text);
  const line = folded.text;
  const tokens: Token[] = [];
  let gap = 1;
  const push = (kind: Token['kind'], at: number, end: number, as = line.slice(at, end)) => {
    const start = folded.from[at]!;
    tokens.push({ kind, text: as, start, end: folded.to[end - 1]!, gap, upper: text[start] !== line[at] });
    gap = 0;
  };
  for (let at = 0; at < line.length; ) {
    const c = line.charCodeAt(at);
    let end = at + 1;
    if (isDigit(c) || (c === 46 && isDigit(line.charCodeAt(end)) && startsNumber(line, at))) {
      end = c === 46 ? numberEnd(line, end) : numberEnd(line, at);
      push('number', at, end);
    } else if (isLetter(c)) {
      while (isLetter(line.charCodeAt(end))) end++;
      end = splitTimes(line, at, end);
      if (end === at + 1 && c === 120) push('mark', at, end, '×');
      else push('word', at, end);
    } else if (isCjk(c)) push('word', at, end);
    else if (c === 10) gap += 9;
    else if (isBlank(c) || c === 13) gap++;
    else if (c === 9) push('mark', at, end, '|');
    else push('mark', at, end, c === 42 ? '×' : line[at]);
    at = end;
  }
  return tokens;
}

/** A leading point begins a number unless it ends a word or stands in a chain: .035, but not No.8 and 1.2.3 */
function startsNumber(line: string, at: number): boolean {
  const before = line.charCodeAt(at - 1);
  return Number.isNaN(before) || !(isDigit(before) || isLetter(before) || before === 46);
}

/** `3xM4` is 3, times, M4: an x between a digit and the letter before the next digit is a sign. */
function splitTimes(line: string, at: number, end: number): number {
  if (line[at] !== 'x' || end - at > 3 || !isDigit(line.charCodeAt(at - 1))) return end;
  return isDigit(line.charCodeAt(end)) ? at + 1 : end;
}
