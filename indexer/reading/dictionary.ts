import type { Attrs, CategoryName } from './reading.ts';
import { spellingOf, type Token, tokenise } from './tokens.ts';
import { addWord, wordOf } from './vocabulary.ts';

export type Language = 'en' | 'de' | 'fr' | 'it' | 'es' | 'nl' | 'ja';
export const languages: readonly Language[] = ['en', 'de', 'fr', 'it', 'es', 'nl', 'ja'];

/** What a word or phrase of the trade can mean. */
export type Meaning =
  /** Names a kind of part. */
  | { kind: 'noun'; category: CategoryName; attrs: Attrs }
  /** Says something of a part, of one category or (null) of any. */
  | { kind: 'modifier'; category: CategoryName | null; attrs: Attrs }
  /** Names which dimension a number is. */
  | { kind: 'label'; label: string }
  /** Names a column of a list. */
  | { kind: 'column'; column: string }
  /** Counts pieces. */
  | { kind: 'count' }
  /** What stands behind it only qualifies what stands before. */
  | { kind: 'preposition' }
  /** Belongs to a sheet and not to a part: continued, total, scale. */
  | { kind: 'sheet' }
  /** Several parts under one name, or a part left open. */
  | { kind: 'loose' }
  /** Finish, colour, place or rank: says nothing of kind or size. */
  | { kind: 'finish' };

export interface Entry {
  meaning: Meaning;
  lang: Language;
}

/** Each kind of meaning as a bit, so that what a phrase can mean is asked without going through its entries. */
export const kindBits = {
  noun: 1,
  modifier: 2,
  label: 4,
  column: 8,
  count: 16,
  preposition: 32,
  sheet: 64,
  loose: 128,
  finish: 256,
} as const;

/** All that a phrase can mean. */
export interface Meanings {
  entries: readonly Entry[];
  /** The kinds of the entries, together, as {@link kindBits}. */
  kinds: number;
  /** Those of the entries that name a part. */
  nouns: readonly Entry[];
  /** The categories of the nouns, in their order. */
  categories: readonly CategoryName[];
  /** The languages of the entries, each once. */
  langs: readonly Language[];
}

/** A phrase found in a line: tokens `first` up to and including `last`. */
export interface Hit extends Meanings {
  first: number;
  last: number;
}

/** A word of a phrase, and the words that may follow it; it ends a phrase where it has meanings. */
interface Node {
  /** By the words' numbers; null where nothing follows. */
  next: Map<number, Node> | null;
  meanings: Meanings | null;
}

const newNode = (): Node => ({ next: null, meanings: null });

function meaningsOf(entries: readonly Entry[]): Meanings {
  let kinds = 0;
  for (const { meaning } of entries) kinds |= kindBits[meaning.kind];
  const nouns = entries.filter(e => e.meaning.kind === 'noun');
  const categories = nouns.flatMap(({ meaning }) => (meaning.kind === 'noun' ? [meaning.category] : []));
  return { entries, kinds, nouns, categories, langs: [...new Set(entries.map(e => e.lang))] };
}

const hitOf = (first: number, last: number, { entries, kinds, nouns, categories, langs }: Meanings): Hit => ({
  first,
  last,
  entries,
  kinds,
  nouns,
  categories,
  langs,
});

/** Says of the tokens that belong to a phrase that they are known. */
export function setKnown(tokens: readonly Token[], hits: readonly Hit[]): void {
  for (const { first, last } of hits) for (let at = first; at <= last; at++) tokens[at]!.known = true;
}

/** Marks that may stand inside a phrase: o-ring, brg. , vis d'arrêt */
const isSoft = (token: Token) =>
  token.kind === 'mark' && (token.text === '-' || token.text === '.' || token.text === "'");
const endings = ['s', 'es', 'n', 'en', 'e', 'er'];
/** The last letters of the endings: a word that ends in none of them has no ending to take off. */
const mayBeInflected = (word: string) => {
  const last = word.charCodeAt(word.length - 1);
  return last === 115 || last === 110 || last === 101 || last === 114;
};
/** Sounds that join the parts of a German or Dutch compound. */
const joints = ['', 's', 'n', 'en', 'e', 'r'];

/** Words that are looked up by themselves are remembered, this many at most. */
const mostRemembered = 20_000;

/** All words of all categories in one tree, filled once at start. */
export class Dictionary {
  /** What begins with each word, by its number; number 0 is of no word. */
  #begins: (Node | undefined)[] = [];
  /** Words seen that the tree does not hold as they stand: what they mean without an ending or as compounds, or null. */
  #derived = new Map<string, Meanings | null>();

  /** The phrases of one word. */
  #ofOne = new Set<string>();

  /** Adds a phrase. One with an umlaut is known by its two-letter spelling too. */
  add(phrase: string, lang: Language, meaning: Meaning): void {
    for (const spelling of spellings(phrase)) this.#insert(spelling, { meaning, lang });
  }

  #insert(phrase: string, entry: Entry): void {
    let node: Node | null = null;
    for (const token of tokenise(phrase)) {
      if (isSoft(token)) continue;
      const { number } = addWord(spellingOf(token));
      if (node === null) node = this.#begin(number);
      else node = follow(node, number);
    }
    if (node === null) throw new Error(`Dictionary: "${phrase}" (${entry.lang}) holds no word.`);
    node.meanings = meaningsOf([...(node.meanings?.entries ?? []), entry]);
    if (/^\p{L}+$/u.test(phrase)) this.#ofOne.add(spellingOf(tokenise(phrase)[0]!));
    this.#derived.clear();
  }

  #begin(number: number): Node {
    // No hole stands in the list: it is asked for every token.
    while (this.#begins.length <= number) this.#begins.push(undefined);
    const node = this.#begins[number] ?? newNode();
    this.#begins[number] = node;
    return node;
  }

  /** Every phrase of the line, longest first at each place, none overlapping. */
  find(tokens: readonly Token[]): Hit[] {
    const hits: Hit[] = [];
    for (let at = 0; at < tokens.length; at++) {
      if (tokens[at]!.kind === 'mark') continue;
      const hit = this.#longest(tokens, at);
      if (!hit) continue;
      hits.push(hit);
      at = hit.last;
    }
    return hits;
  }

  #longest(tokens: readonly Token[], first: number): Hit | null {
    const begins = this.#begins[tokens[first]!.word.number];
    if (begins === undefined) return this.#alone(tokens, first);
    let node: Node = begins;
    let last = first;
    let best = node.meanings;
    const end = Math.min(tokens.length, first + longestPhrase);
    for (let at = first + 1, softs = 0; at < end && node.next !== null; at++) {
      const { number } = tokens[at]!.word;
      const next: Node | undefined = number > 0 && stands(tokens, at) ? node.next.get(number) : undefined;
      if (next === undefined) {
        const token = tokens[at]!;
        if (softs < 2 && isSoft(token)) {
          softs++;
          continue;
        }
        const ended = this.#inflected(node, token.text);
        if (ended) [best, last] = [ended, at];
        break;
      }
      softs = 0;
      node = next;
      if (node.meanings) [best, last] = [node.meanings, at];
    }
    return best ? hitOf(first, last, best) : this.#alone(tokens, first);
  }

  /** A word by itself, with an ending or as a compound. */
  #alone(tokens: readonly Token[], at: number): Hit | null {
    const { kind, text } = tokens[at]!;
    if (kind !== 'word' || text.length < 4) return null;
    let meanings = this.#derived.get(text);
    if (meanings === undefined) {
      meanings = this.#inflected(null, text) ?? this.#compound(text);
      if (this.#derived.size > mostRemembered) this.#derived.clear();
      this.#derived.set(text, meanings);
    }
    return meanings && hitOf(at, at, meanings);
  }

  /** Whether a word by itself means anything here, as it stands, inflected, as a compound or as the beginning of a phrase. */
  holds(word: string): boolean {
    return (
      this.#begins[wordOf(word).number] !== undefined ||
      (this.#inflected(null, word) ?? this.#compound(word)) !== null
    );
  }

  /** Whether a word by itself names a part of a measured kind, or describes one. */
  measures(word: string): boolean {
    const entries = this.#single(word)?.entries ?? [];
    return entries.some(
      ({ meaning }) =>
        (meaning.kind === 'noun' || meaning.kind === 'modifier') &&
        meaning.category !== 'plain' &&
        meaning.category !== null,
    );
  }

  /** The words that by themselves name a part of a measured kind, or describe one. */
  ofOneWord(): string[] {
    return [...this.#ofOne].filter(word => this.measures(word));
  }

  /** Whether a word by itself names a part. */
  knows(word: string): boolean {
    return (this.#single(word)?.nouns.length ?? 0) > 0;
  }

  #single(word: string): Meanings | null {
    return this.#begins[wordOf(word).number]?.meanings ?? this.#inflected(null, word);
  }

  /** A word with a plural or case ending that is held without it, behind a node or (null) by itself. */
  #inflected(node: Node | null, word: string): Meanings | null {
    if (word.length < 4 || !mayBeInflected(word)) return null;
    for (const ending of endings) {
      if (!word.endsWith(ending) || word.length - ending.length < 3) continue;
      const stem = word.slice(0, -ending.length);
      const { number } = wordOf(stem);
      const meanings = (node ? node.next?.get(number) : this.#begins[number])?.meanings;
      if (meanings) return meanings;
    }
    return null;
  }

  /** German and Dutch write a noun and what qualifies it as one word, the noun last. */
  #compound(word: string): Meanings | null {
    const entries = word.length < 6 ? null : this.#takeApart(word);
    return entries && meaningsOf(entries);
  }

  #takeApart(word: string): Entry[] | null {
    if (word.length > 48) return null;
    for (let cut = 2; cut <= word.length - 3; cut++) {
      const head = this.#single(word.slice(cut))?.entries.filter(isCompounding) ?? [];
      if (head.length === 0 || isGerund(word, cut)) continue;
      const front = this.#front(word.slice(0, cut));
      return [...head, ...front];
    }
    return null;
  }

  /** What the front part of a compound says of its noun. */
  #front(part: string): Entry[] {
    for (const joint of joints) {
      if (!part.endsWith(joint)) continue;
      const entries = this.#single(joint ? part.slice(0, -joint.length) : part)?.entries;
      const modifiers = entries?.filter(
        e => e.meaning.kind === 'modifier' && (e.lang === 'de' || e.lang === 'nl'),
      );
      if (modifiers && modifiers.length > 0) return modifiers;
    }
    const inner = part.length >= 6 ? this.#takeApart(part) : null;
    return inner?.filter(e => e.meaning.kind === 'modifier') ?? [];
  }
}

/** During and measuring are no rings: in front of one stands a consonant in German and Dutch. */
const isGerund = (word: string, cut: number) => cut === word.length - 4 && /[aeiou]ring$/.test(word);

/** The most tokens of a phrase. */
const longestPhrase = 12;

/** The node of a word behind another, made where there is none. */
function follow(node: Node, number: number): Node {
  node.next ??= new Map();
  const next = node.next.get(number) ?? newNode();
  node.next.set(number, next);
  return next;
}

/**
 * A2 is a grade and MC3 a clearance, but "A 2" is neither: figures behind one or two letters must be glued to them, unless a
 * point shows that the letters are short for a word: gr. 8; GR 8 is a bolt's.
 */
function stands(tokens: readonly Token[], at: number): boolean {
  if (tokens[at]!.kind !== 'number' || tokens[at]!.gap === 0) return true;
  const before = tokens[at - 1]!;
  return (
    before.text.length > 2 ||
    before.text === 'gr' ||
    (before.text === '.' && tokens[at - 2]?.text.length === 2)
  );
}

const isCompounding = (entry: Entry) =>
  (entry.lang === 'de' || entry.lang === 'nl') && entry.meaning.kind === 'noun';

const umlauts: Record<string, string> = { ä: 'ae', ö: 'oe', ü: 'ue', Ä: 'ae', Ö: 'oe', Ü: 'ue' };

function spellings(phrase: string): string[] {
  const spelled = phrase.replace(/[äöüÄÖÜ]/g, c => umlauts[c]!);
  return spelled === phrase ? [phrase] : [phrase, spelled];
}
