import { fold } from './fold.ts';
import { unknownWord, type Word, wordIn, wordOf } from './vocabulary.ts';

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
  /** Figures behind the decimal mark of a number; 0 for a whole one. */
  decimals: number;
  /** What is known of its letters. */
  word: Word;
  /** True where it belongs to a phrase that a dictionary holds. */
  known: boolean;
  /** True where it is found to be no size: a quantity, reference, part number, price, thread or standard. */
  taken: boolean;
}

type Codes = Uint16Array;

const [lineFeed, tab, star, comma, point, dash, letterX, bar, times] = [
  10, 9, 42, 44, 46, 45, 120, 124, 0xd7,
];
const [mark, digit, letter, sign, blank] = [0, 1, 2, 3, 4];
const blanks: ReadonlySet<number> = new Set([32, 95, 13, lineFeed]);
const ascii = Uint8Array.from({ length: 128 }, (_, c) =>
  c >= 48 && c <= 57 ? digit : c >= 97 && c <= 122 ? letter : blanks.has(c) ? blank : mark,
);

/** What a folded character is: a digit, a letter, a sign of Japanese, a blank or a mark. */
function kindOf(c: number): number {
  if (c < 128) return ascii[c]!;
  if (c === 0xa0) return blank;
  // ø stands alone as the sign for a diameter; punctuation and arrows are marks.
  if (c >= 0xc0 && c < 0x2000) return c === 0xd7 || c === 0xf8 ? mark : letter;
  return c >= 0x3005 && c !== 0x3008 && c < 0xfb00 ? sign : mark;
}
const isDigit = (c: number) => c >= 48 && c <= 57;
const isLetter = (c: number) => kindOf(c) === letter;

/** How far a number reaches that begins at `at`: 12, 1.5, 2,5, .035 */
function numberEnd(codes: Codes, at: number): number {
  let end = at;
  while (isDigit(codes[end]!)) end++;
  const separator = codes[end];
  if ((separator === point || separator === comma) && isDigit(codes[end + 1]!)) {
    let after = end + 1;
    while (isDigit(codes[after]!)) after++;
    // 3,4,5 and 1.2.3 are lists, and a point that stood before takes no second one.
    const chained = codes[after] === separator && isDigit(codes[after + 1]!);
    if (!chained && (at === 0 || codes[at - 1] !== separator)) end = after;
  }
  return end;
}

/** The sign that a mark is read as, by its code: a tab parts cells as a bar does, a star or an x between sizes is a times sign. */
const signOf = (c: number): number => (c === tab ? bar : c === star || c === letterX ? times : c);
const oneMark = new Uint16Array(1);
function markOf(c: number): Word {
  oneMark[0] = signOf(c);
  return wordIn(oneMark, 0, 1);
}
const textOf = (c: number) => String.fromCharCode(signOf(c));

function decimalsIn(codes: Codes, start: number, end: number): number {
  let at = start;
  while (at < end && isDigit(codes[at]!)) at++;
  return at < end ? end - at - 1 : 0;
}

/** A number without a decimal mark. */
export const isWhole = ({ kind, decimals }: Token): boolean => kind === 'number' && decimals === 0;

/** Says of the tokens `first` up to and including `last` that they are no sizes. */
export function take(tokens: readonly Token[], first: number, last = first): void {
  for (let at = first; at <= last; at++) tokens[at]!.taken = true;
}

/** Cuts a line once. Offsets are into the text as given. Never fails; linear in its length. */
export function tokenise(text: string): Token[] {
  const { text: line, codes, printed, from, to } = fold(text);
  const tokens: Token[] = [];
  const { length } = line;
  let gap = 1;
  for (let at = 0; at < length; ) {
    const c = codes[at]!;
    const is = kindOf(c);
    if (is === blank) {
      gap += c === lineFeed ? 9 : 1;
      at++;
      continue;
    }
    let kind: Token['kind'] = 'mark';
    let end = at + 1;
    if (is === digit) {
      kind = 'number';
      end = numberEnd(codes, at);
    } else if (is === letter) {
      while (isLetter(codes[end]!)) end++;
      end = joinsSize(line, codes, at, end) ? end - 1 : splitTimes(line, codes, at, end);
      if (c !== letterX || end > at + 1 || namesForm(codes, end)) kind = 'word';
    } else if (is === sign) kind = 'word';
    else if (c === point && isDigit(codes[end]!) && startsNumber(codes, at)) {
      kind = 'number';
      end = numberEnd(codes, end);
    }
    const decimals = kind === 'number' ? decimalsIn(codes, at, end) : 0;
    const word = kind === 'mark' ? markOf(c) : wordIn(codes, at, end);
    tokens.push({
      kind,
      text: word !== unknownWord ? word.text : kind !== 'mark' ? line.slice(at, end) : textOf(c),
      start: from[at]!,
      end: to[end - 1]!,
      gap: gap === 2 || tokens.length === 0 ? 1 : gap,
      upper: printed[at] !== c,
      decimals,
      word: decimals === 0 || word !== unknownWord ? word : wordOf(line.slice(at, end).replace(',', '.')),
      known: false,
      taken: false,
    });
    gap = 0;
    at = end;
  }
  return tokens;
}

/** How the vocabulary spells a token: 8,8 and 8.8 are one grade. */
export const spellingOf = ({ kind, text }: Pick<Token, 'kind' | 'text'>): string =>
  kind === 'number' && text.includes(',') ? text.replace(',', '.') : text;

/** The same token with other letters. */
export const respelled = (token: Token, kind: Token['kind'], text: string): Token => ({
  ...token,
  kind,
  text,
  word: wordOf(spellingOf({ kind, text })),
});

/** A leading point begins a number unless it ends a word or stands in a chain: .035 and 5x.25, but not No.8 and 1.2.3 */
function startsNumber(codes: Codes, at: number): boolean {
  if (at === 0) return true;
  const before = codes[at - 1]!;
  if (before === letterX && (at === 1 || !isLetter(codes[at - 2]!))) return true;
  return !(isDigit(before) || isLetter(before) || before === point);
}

/**
 * `3xM4` is 3, times, M4: an x between a digit and the letter before the next digit is a sign; so is one in front of what
 * a scanner made of figures: `3xl0`, `M4xIO`.
 */
function splitTimes(line: string, codes: Codes, at: number, end: number): number {
  if (codes[at] !== letterX || end - at > 3 || at === 0 || !isDigit(codes[at - 1]!)) return end;
  const behind = line.slice(at + 1, end);
  // 681XZZ: the X is the number's, and ZZ its shields.
  return isDigit(codes[end]!) || (/^[oilszb]+$/.test(behind) && behind !== 'zz') ? at + 1 : end;
}

/** `1.5mmx10mm`: an x between a unit and a figure is a sign. */
const joinsSize = (line: string, codes: Codes, at: number, end: number) =>
  end - at === 3 &&
  codes[end - 1] === letterX &&
  isDigit(codes[end]!) &&
  at > 0 &&
  isDigit(codes[at - 1]!) &&
  /^(?:mm|cm|in)x$/.test(line.slice(at, end));

/** An X with a dash and a word behind it is a letter: X-ring. */
const namesForm = (codes: Codes, at: number) => codes[at] === dash && isLetter(codes[at + 1]!);
