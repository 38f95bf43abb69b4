import { bytes, encode, longestText } from './characters.ts';

/**
 * Characters: the many ways a sheet, a scan or a keyboard writes one sign become one, in small letters without
 * accents, and every folded character still knows which characters of the text it came from.
 */
export interface Folded {
  text: string;
  /** The code of each of its UTF-16 units, then a 0. Written over by the next fold. */
  codes: Uint16Array;
  /** The code of the character that each began as, before it was made small. */
  printed: Uint16Array;
  /** For each folded UTF-16 unit, where the characters it came from begin in the original text. */
  from: Uint32Array;
  /** … and where they end. */
  to: Uint32Array;
}

/** Signs that Unicode's own compatibility forms do not bring together. '' drops the character. */
const signs: Record<string, string> = {
  '\u00ad': '', // soft hyphen
  '\u200b': '',
  '\u200c': '',
  '\u200d': '',
  '\u2060': '',
  '\ufeff': '',
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '-',
  '\u2013': '-',
  '\u2014': '-',
  '\u2015': '-',
  '\u2212': '-',
  '\uff0d': '-',
  '\u00d7': '×',
  '\u2715': '×',
  '\u2716': '×',
  '\u2a2f': '×',
  '\u2300': 'ø', // diameter sign
  '\u2205': 'ø', // empty set, its look-alike
  '\u00d8': 'ø',
  '\u00f8': 'ø',
  '\u03a6': 'ø',
  '\u03c6': 'ø',
  '\u03d5': 'ø',
  '\u0424': 'ø', // Cyrillic ef, from scans
  '\u0444': 'ø',
  '\u201c': '"',
  '\u201d': '"',
  '\u201e': '"',
  '\u2033': '"',
  '\u3003': '"',
  '\u02ba': '"',
  '\u2018': "'",
  '\u2019': "'",
  '\u2032': "'",
  '\u00b4': "'",
  '\u02b9': "'",
  '\u2044': '/',
  '\u2215': '/',
  '\u00df': 'ss',
  '\u00e6': 'ae',
  '\u0153': 'oe',
  '\u00b5': 'u',
  '\u03bc': 'u',
  '\u30fb': ' ',
  '\u3001': ',',
  '\u3002': '.',
  '\u2022': ' ',
};

const marks = /\p{M}/gu;
const kana = /[\u3040-\u30ff\uff66-\uff9f]/;
/** Marks, and the signs of voice that half-width kana carry: they belong to the character before. */
const belonging = /[\p{M}\uff9e\uff9f\u3099\u309a]/u;
/** The first character that may belong to the one before (U+0300, the combining accents). */
const firstBelonging = 0x300;

/** What was found of single characters, by their code: each is looked at once. */
const belongs = new Uint8Array(0x1_0000);
const folds: (string | undefined)[] = [];
const [not, does] = [1, 2];

function belongsToBefore(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (!(code >= firstBelonging)) return false;
  if (belongs[code] === 0) belongs[code] = belonging.test(text[at]!) ? does : not;
  return belongs[code] === does;
}

/** Cyrillic letters that look like Latin ones, as keyboards and scanners put them: M3х8. */
for (const [i, letter] of [...'авекмнорстух'].entries()) {
  signs[letter] = 'abekmhopctyx'[i]!;
  signs[letter.toUpperCase()] = 'abekmhopctyx'[i]!;
}

/** One character, with the marks that belong to it, as folded text. */
function foldCluster(cluster: string, afterDigit: boolean): string {
  const known = signs[cluster];
  if (known !== undefined) return known;
  if (kana.test(cluster)) return cluster.normalize('NFKC');
  const parts = cluster.normalize('NFKD').replace(marks, '').toLowerCase();
  let folded = '';
  for (const character of parts) folded += signs[character] ?? character;
  // A fraction sign behind a digit is a mixed number: 1½ is one and a half, not eleven halves.
  return afterDigit && folded.includes('/') ? ` ${folded}` : folded;
}

const starts = Uint32Array.from({ length: longestText }, (_, at) => at);
const ends = Uint32Array.from({ length: longestText }, (_, at) => at + 1);
const plain = { codes: new Uint16Array(longestText + 1), printed: new Uint16Array(longestText) };

/** Folds a text of any origin. Never fails; linear in its length. */
export function fold(text: string): Folded {
  return (text.length <= longestText && foldPlain(text)) || foldAny(text);
}

/** Most lines are plain ASCII, where every character stands for itself and takes one byte. */
function foldPlain(text: string): Folded | null {
  const { length } = text;
  if (encode(text) !== length) return null;
  const { codes, printed } = plain;
  for (let at = 0; at < length; at++) {
    const code = bytes[at]!;
    printed[at] = code;
    codes[at] = code >= 65 && code <= 90 ? code + 32 : code;
  }
  codes[length] = 0;
  return { text: text.toLowerCase(), codes, printed, from: starts, to: ends };
}

function foldAny(text: string): Folded {
  let folded = '';
  const from: number[] = [];
  const to: number[] = [];
  for (let at = 0; at < text.length; ) {
    const code = text.charCodeAt(at);
    let end = at + 1;
    let piece: string;
    if (code < 0x80) {
      piece = code >= 65 && code <= 90 ? String.fromCharCode(code + 32) : text[at]!;
    } else {
      end = at + (text.codePointAt(at)! > 0xffff ? 2 : 1);
      while (belongsToBefore(text, end)) end++;
      const last = folded.charCodeAt(folded.length - 1);
      const afterDigit = last >= 48 && last <= 57;
      if (end === at + 1 && !afterDigit) piece = folds[code] ??= foldCluster(text[at]!, false);
      else piece = foldCluster(text.slice(at, end), afterDigit);
    }
    for (let i = 0; i < piece.length; i++) {
      from.push(at);
      to.push(end);
    }
    folded += piece;
    at = end;
  }
  const codes = new Uint16Array(folded.length + 1);
  const printed = new Uint16Array(folded.length);
  for (let at = 0; at < folded.length; at++) {
    codes[at] = folded.charCodeAt(at);
    printed[at] = text.charCodeAt(from[at]!);
  }
  return { text: folded, codes, printed, from: Uint32Array.from(from), to: Uint32Array.from(to) };
}
