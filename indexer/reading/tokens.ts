import { fold } from './fold.ts';

/** The smallest piece of a line: a word, a number, or one mark. Each character of Japanese is a word of its own. */
export interface Token {
  kind: 'word' | 'number' | 'mark';
  /** Folded: small letters, no accents. */
  text: string;
  /** Half-open offsets into the original text. */
  start: number;
  end: number;
  /** How many blanks stand before it: 0 is glued to the one before, two are as one, a new line counts 9. */
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
const [lineFeed, carriageReturn, tab, star, comma, point, letterX] = [10, 13, 9, 42, 44, 46, 120];

/** How far a number reaches that begins at `at`: 12, 1.5, 2,5, .035 */
function numberEnd(text: string, at: number): number {
  let end = at;
  while (isDigit(text.charCodeAt(end))) end++;
  const separator = text.charCodeAt(end);
  if ((separator === point || separator === comma) && isDigit(text.charCodeAt(end + 1))) {
    let after = end + 1;
    while (isDigit(text.charCodeAt(after))) after++;
    // 3,4,5 and 1.2.3 are lists, and a point that stood before takes no second one.
    const chained = text.charCodeAt(after) === separator && isDigit(text.charCodeAt(after + 1));
    if (!chained && text.charCodeAt(at - 1) !== separator) end = after;
  }
  return end;
}

/** Cuts a line once. Offsets are into the text as given. Never fails; linear in its length. */
export function tokenise(text: string): Token[] {
  const { text: line, from, to } = fold(text);
  const tokens: Token[] = [];
  let gap = 1;
  for (let at = 0; at < line.length; ) {
    const c = line.charCodeAt(at);
    if (isBlank(c) || c === carriageReturn || c === lineFeed) {
      gap += c === lineFeed ? 9 : 1;
      at++;
      continue;
    }
    let kind: Token['kind'] = 'mark';
    let end = at + 1;
    if (isDigit(c)) {
      kind = 'number';
      end = numberEnd(line, at);
    } else if (c === point && isDigit(line.charCodeAt(end)) && startsNumber(line, at)) {
      kind = 'number';
      end = numberEnd(line, end);
    } else if (isLetter(c)) {
      while (isLetter(line.charCodeAt(end))) end++;
      end = joinsSize(line, at, end) ? end - 1 : splitTimes(line, at, end);
      if (c !== letterX || end > at + 1 || namesForm(line, end)) kind = 'word';
    } else if (isCjk(c)) kind = 'word';
    const sign = kind !== 'mark' ? '' : c === tab ? '|' : c === star || c === letterX ? '×' : line[at]!;
    const start = from[at]!;
    tokens.push({
      kind,
      text: sign || line.slice(at, end),
      start,
      end: to[end - 1]!,
      gap: gap === 2 || tokens.length === 0 ? 1 : gap,
      upper: text.charCodeAt(start) !== c,
    });
    gap = 0;
    at = end;
  }
  return tokens;
}

/** A leading point begins a number unless it ends a word or stands in a chain: .035 and 5x.25, but not No.8 and 1.2.3 */
function startsNumber(line: string, at: number): boolean {
  const before = line.charCodeAt(at - 1);
  if (before === letterX && !isLetter(line.charCodeAt(at - 2))) return true;
  return Number.isNaN(before) || !(isDigit(before) || isLetter(before) || before === point);
}

/**
 * `3xM4` is 3, times, M4: an x between a digit and the letter before the next digit is a sign; so is one in front of what
 * a scanner made of figures: `3xl0`, `M4xIO`.
 */
function splitTimes(line: string, at: number, end: number): number {
  if (line.charCodeAt(at) !== letterX || end - at > 3 || !isDigit(line.charCodeAt(at - 1))) return end;
  return isDigit(line.charCodeAt(end)) || /^[oilszb]+$/.test(line.slice(at + 1, end)) ? at + 1 : end;
}

/** `1.5mmx10mm`: an x between a unit and a figure is a sign. */
const joinsSize = (line: string, at: number, end: number) =>
  end - at === 3 &&
  line.charCodeAt(end - 1) === letterX &&
  isDigit(line.charCodeAt(end)) &&
  isDigit(line.charCodeAt(at - 1)) &&
  /^(?:mm|cm|in)x$/.test(line.slice(at, end));

/** An X with a dash and a word behind it is a letter: X-ring. */
const namesForm = (line: string, at: number) =>
  line.charCodeAt(at) === 45 && isLetter(line.charCodeAt(at + 1));
