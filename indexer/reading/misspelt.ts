import type { Dictionary } from './dictionary.ts';

/** Letters that a scanner puts for others, each way that one printed piece may have been meant. */
const confused: readonly (readonly [printed: string, meant: string])[] = [
  ['n', 'ri'],
  ['m', 'rn'],
  ['rn', 'm'],
  ['l', 'i'],
  ['i', 'l'],
  ['cl', 'd'],
  ['vv', 'w'],
  ['c', 'e'],
  ['m', 'in'],
  ['rm', 'nn'],
];

/** A word shorter than this is one letter from too many others. */
const shortest = 5;
/** … and only so long a one is taken for a word that a person wrote with one letter wrong. */
const shortestTyped = 9;

/** What one dictionary's words tell: what was found of printed words, so many at most, and what slips make of its own. */
interface Remembered {
  found: Map<string, Mended | null>;
  slips: ReadonlyMap<string, string> | null;
}
const remembered = new WeakMap<Dictionary, Remembered>();
const mostRemembered = 20_000;

/** The word that was meant, and whether a scanner misread it; a person's slip leaves nothing open. */
export interface Mended {
  word: string;
  scanned: boolean;
}

/**
 * The part's word that a scanner (bearlng, beanng) or a person (countersunck) made the printed one of; null for a word that is known,
 * and for one that no such change makes known. A word is looked at once.
 */
export function misspelt(word: string, dictionary: Dictionary): Mended | null {
  if (word.length < shortest || word.length > 24) return null;
  const known = remembered.get(dictionary) ?? { found: new Map(), slips: null };
  remembered.set(dictionary, known);
  if (known.found.size > mostRemembered) known.found.clear();
  let mended = known.found.get(word);
  if (mended === undefined) {
    mended = dictionary.holds(word) ? null : (misread(word, dictionary) ?? mistyped(word, dictionary, known));
    known.found.set(word, mended);
  }
  return mended;
}

function misread(word: string, dictionary: Dictionary): Mended | null {
  for (const [printed, meant] of confused)
    for (let at = word.indexOf(printed); at >= 0; at = word.indexOf(printed, at + 1)) {
      const tried = word.slice(0, at) + meant + word.slice(at + printed.length);
      if (dictionary.measures(tried)) return { word: tried, scanned: true };
    }
  return null;
}

/** One letter too many, too few, another, or two changed about: both words lack one letter to be the same. */
function mistyped(word: string, dictionary: Dictionary, known: Remembered): Mended | null {
  if (word.length < shortestTyped) return null;
  known.slips ??= slipsOf(dictionary.ofOneWord());
  for (const lacking of [word, ...lackingOne(word)]) {
    const meant = known.slips.get(lacking);
    if (meant !== undefined && Math.abs(meant.length - word.length) < 2)
      return { word: meant, scanned: false };
  }
  return null;
}

/** Long words by themselves, whole and with one letter left out. */
function slipsOf(words: readonly string[]): ReadonlyMap<string, string> {
  const slips = new Map<string, string>();
  for (const word of words)
    if (word.length >= shortestTyped)
      for (const lacking of [word, ...lackingOne(word)]) if (!slips.has(lacking)) slips.set(lacking, word);
  return slips;
}

/** A word with each of its letters left out in turn. */
const lackingOne = (word: string): string[] =>
  Array.from(word, (_, at) => word.slice(0, at) + word.slice(at + 1));
