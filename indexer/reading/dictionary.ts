import type { Attrs, CategoryName } from './reading.ts';
import { type Token, tokenise } from './tokens.ts';

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
  | { kind: 'loose' };

export interface Entry {
  meaning: Meaning;
  lang: Language;
}

/** A phrase found in a line: tokens `first` up to and including `last`. */
export interface Hit {
  first: number;
  last: number;
  entries: Entry[];
}

interface Node {
  next: Map<string, Node>;
  entries: Entry[];
}

const newNode = (): Node => ({ next: new Map(), entries: [] });
/** Marks that may stand inside a phrase: o-ring, brg. , vis d'arrêt */
const soft = new Set(['-', '.', "'"]);
const endings = ['s', 'es', 'n', 'en', 'e', 'er'];
/** Sounds that join the parts of a German or Dutch compound. */
const joints = ['', 's', 'n', 'en', 'e', 'r'];

/** All words of all categories in one tree, filled once at start. */
export class Dictionary {
  #root = newNode();
  #compounds = new Map<string, Entry[] | null>();

  /** Adds a phrase. One with an umlaut is known by its two-letter spelling too. */
  add(phrase: string, lang: Language, meaning: Meaning): void {
    for (const spelling of spellings(phrase)) this.#insert(spelling, { meaning, lang });
  }

  #insert(phrase: string, entry: Entry): void {
    let node = this.#root;
    for (const token of tokenise(phrase)) {
      if (token.kind === 'mark' && soft.has(token.text)) continue;
      const key = keyOf(token);
      const next = node.next.get(key) ?? newNode();
      node.next.set(key, next);
      node = next;
    }
    if (node === this.#root) throw new Error(`Dictionary: "${phrase}" (${entry.lang}) holds no word.`);
    node.entries.push(entry);
  }

  /** Every phrase of the line, longest first at each place, none overlapping. */
  find(tokens: readonly Token[]): Hit[] {
    const hits: Hit[] = [];
    for (let at = 0; at < tokens.length; ) {
      const hit = this.#longest(tokens, at) ?? this.#compound(tokens, at);
      if (hit) hits.push(hit);
      at = hit ? hit.last + 1 : at + 1;
    }
    return hits;
  }

  #longest(tokens: readonly Token[], first: number): Hit | null {
    if (tokens[first]!.kind === 'mark') return null;
    let node: Node = this.#root;
    let best: Hit | null = null;
    for (let at = first, softs = 0; at < tokens.length && at < first + 12; at++) {
      const token: Token = tokens[at]!;
      const next: Node | undefined = stands(tokens, at, first) ? node.next.get(keyOf(token)) : undefined;
      if (!next && at > first && token.kind === 'mark' && soft.has(token.text) && softs < 2) {
        softs++;
        continue;
      }
      softs = 0;
      if (!next) {
        const ended = this.#inflected(node, token.text);
        if (ended) best = { first, last: at, entries: ended };
        break;
      }
      node = next;
      if (node.entries.length > 0) best = { first, last: at, entries: node.entries };
    }
    return best;
  }

  /** A word with a plural or case ending that the dictionary holds without it. */
  #inflected(node: Node, word: string): Entry[] | null {
    if (word.length < 4) return null;
    for (const ending of endings) {
      if (!word.endsWith(ending) || word.length - ending.length < 3) continue;
      const entries = node.next.get(word.slice(0, -ending.length))?.entries;
      if (entries && entries.length > 0) return entries;
    }
    return null;
  }

  /** Whether a word by itself names a part. */
  knows(word: string): boolean {
    return this.#single(word)?.some(e => e.meaning.kind === 'noun') ?? false;
  }

  #single(word: string): Entry[] | null {
    const entries = this.#root.next.get(word)?.entries;
    return entries && entries.length > 0 ? entries : this.#inflected(this.#root, word);
  }

  /** German and Dutch write a noun and what qualifies it as one word, the noun last. */
  #compound(tokens: readonly Token[], at: number): Hit | null {
    const token = tokens[at]!;
    if (token.kind !== 'word' || token.text.length < 6) return null;
    let entries = this.#compounds.get(token.text);
    if (entries === undefined) {
      entries = this.#takeApart(token.text);
      if (this.#compounds.size > 20_000) this.#compounds.clear();
      this.#compounds.set(token.text, entries);
    }
    return entries && { first: at, last: at, entries };
  }

  #takeApart(word: string): Entry[] | null {
    if (word.length > 48) return null;
    for (let cut = 2; cut <= word.length - 3; cut++) {
      const head = this.#single(word.slice(cut))?.filter(isCompounding) ?? [];
      if (head.length === 0) continue;
      const front = this.#front(word.slice(0, cut));
      return [...head, ...front];
    }
    return null;
  }

  /** What the front part of a compound says of its noun. */
  #front(part: string): Entry[] {
    for (const joint of joints) {
      if (!part.endsWith(joint)) continue;
      const entries = this.#single(joint ? part.slice(0, -joint.length) : part);
      const modifiers = entries?.filter(
        e => e.meaning.kind === 'modifier' && (e.lang === 'de' || e.lang === 'nl'),
      );
      if (modifiers && modifiers.length > 0) return modifiers;
    }
    const inner = part.length >= 6 ? this.#takeApart(part) : null;
    return inner?.filter(e => e.meaning.kind === 'modifier') ?? [];
  }
}

/** A2 is a grade and MC3 a clearance, but "A 2" is neither: figures behind one or two letters must be glued to them. */
const stands = (tokens: readonly Token[], at: number, first: number) =>
  !(at > first && tokens[at]!.kind === 'number' && tokens[at]!.gap > 0 && tokens[at - 1]!.text.length <= 2);

/** 8,8 and 8.8 are one grade. */
const keyOf = (token: Token) => (token.kind === 'number' ? token.text.replace(',', '.') : token.text);

const isCompounding = (entry: Entry) =>
  (entry.lang === 'de' || entry.lang === 'nl') && entry.meaning.kind === 'noun';

const umlauts: Record<string, string> = { ä: 'ae', ö: 'oe', ü: 'ue', Ä: 'ae', Ö: 'oe', Ü: 'ue' };

function spellings(phrase: string): string[] {
  const spelled = phrase.replace(/[äöüÄÖÜ]/g, c => umlauts[c]!);
  return spelled === phrase ? [phrase] : [phrase, spelled];
}
