/**
 * Characters: the many ways a sheet, a scan or a keyboard writes one sign become one, in small letters without
 * accents, and every folded character still knows which characters of the text it came from.
 */
export interface Folded {
  text: string;
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

const mark = /\p{M}/u;
const marks = /\p{M}/gu;
const kana = /[\u3040-\u30ff\uff66-\uff9f]/;
const voiced = /[\uff9e\uff9f\u3099\u309a]/;

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

/** Most lines are plain ASCII, where every character stands for itself. */
const isAscii = /^[\0-\x7f]*$/;
const longestPlain = 4_096;
const starts = Uint32Array.from({ length: longestPlain }, (_, at) => at);
const ends = Uint32Array.from({ length: longestPlain }, (_, at) => at + 1);

/** Folds a text of any origin. Never fails; linear in its length. */
export function fold(text: string): Folded {
  if (text.length <= longestPlain && isAscii.test(text))
    return { text: text.toLowerCase(), from: starts, to: ends };
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
      while (
        end < text.length &&
        text.charCodeAt(end) >= 0x80 &&
        (mark.test(text[end]!) || voiced.test(text[end]!))
      )
        end++;
      const last = folded.charCodeAt(folded.length - 1);
      piece = foldCluster(text.slice(at, end), last >= 48 && last <= 57);
    }
    for (let i = 0; i < piece.length; i++) {
      from.push(at);
      to.push(end);
    }
    folded += piece;
    at = end;
  }
  return { text: folded, from: Uint32Array.from(from), to: Uint32Array.from(to) };
}
