import type { Cell } from './cells.ts';
import type { Entry, Hit } from './dictionary.ts';
import type { Line } from './line.ts';
import type { Attrs, CategoryName } from './reading.ts';
import type { Token } from './tokens.ts';

/** The noun that says what the line is, with what else could be it. */
export interface Head {
  category: CategoryName;
  attrs: Attrs;
  hit: Hit;
  /** Words nobody knows stand behind the noun in its phrase: "gear xyz" may be an xyz. */
  unknownBehind: boolean;
  /** The noun is not the first word of meaning: unknown words stand before a comma in front of it. */
  unknownFirst: boolean;
  /** Tokens of the phrase the noun stands in, and of its whole cell. */
  phrase: { first: number; last: number };
  /** Every other category whose noun stands in the same phrase. */
  others: CategoryName[];
}

/** Languages whose first noun of a phrase is its head; German and Dutch put what qualifies into one word with the noun. */
const headFirst = new Set(['fr', 'it', 'es', 'de', 'nl']);
const stops = new Set([',', ';', ':', '(', ')', '[', ']', '|', '&', '+', '!', '?']);

interface Noun {
  hit: Hit;
  entry: Entry;
}

const nounIn = (hit: Hit): Entry[] => hit.entries.filter(e => e.meaning.kind === 'noun');

/** Splits a cell into phrases: at commas, brackets, new lines, a dash between blanks, and before a preposition. */
function phrasesOf(
  tokens: readonly Token[],
  cell: Cell,
  hits: readonly Hit[],
): { first: number; last: number; qualifies: boolean }[] {
  const phrases: { first: number; last: number; qualifies: boolean }[] = [];
  const byFirst = new Map(hits.map(h => [h.first, h]));
  let first = cell.first;
  let qualifies = false;
  const close = (last: number) => {
    if (last >= first) phrases.push({ first, last, qualifies });
  };
  for (let at = cell.first; at <= cell.last; at++) {
    const token = tokens[at]!;
    const joins = isConjunction(token.text);
    const hit = joins ? undefined : byFirst.get(at);
    const preposition = hit?.entries.every(e => e.meaning.kind === 'preposition');
    const stop =
      joins ||
      stops.has(token.text) ||
      (token.text === '-' && token.gap > 0 && (tokens[at + 1]?.gap ?? 1) > 0);
    if (hit && !preposition) {
      if (token.gap >= 9 && at > first) {
        close(at - 1);
        first = at;
        qualifies = false;
      }
      at = hit.last;
    } else if (preposition && at > first) {
      close(at - 1);
      first = hit!.last + 1;
      qualifies = true;
      at = hit!.last;
    } else if (stop) {
      close(at - 1);
      first = at + 1;
      qualifies = false;
    }
  }
  close(cell.last);
  return phrases;
}

/** A word that joins two names: screws and nuts. */
const isConjunction = (word: string) => /^(and|und|et|y|plus|with)$/.test(word);

/** Whether a word may be a name nobody knows: three letters or more, no code, no size. */
function isUnknownWord(tokens: readonly Token[], at: number, known: Uint8Array): boolean {
  const { kind, text, gap } = tokens[at]!;
  if (kind !== 'word' || known[at]) return false;
  if (text.charCodeAt(0) >= 0x3005) return true;
  const glued =
    (gap === 0 && tokens[at - 1]?.kind === 'number') ||
    (tokens[at + 1]?.gap === 0 && tokens[at + 1]?.kind === 'number');
  return text.length >= 3 && !glued;
}

/** The language that most of the line's words are of, given the one that is known. */
export function languageOf(hits: readonly Hit[], known: string | undefined): string {
  if (known) return known;
  const count = new Map<string, number>();
  for (const hit of hits)
    for (const lang of new Set(hit.entries.map(e => e.lang))) count.set(lang, (count.get(lang) ?? 0) + 1);
  let best = 'en';
  for (const [lang, n] of count) if (n > (count.get(best) ?? 0)) best = lang;
  return best;
}

/**
 * Finds the noun that says what the line is. In English and Japanese the last noun of a phrase is its head, in the other
 * languages the first; the first phrase that holds one decides. Null where no known noun stands.
 */
export function findHead(
  line: Pick<Line, 'tokens' | 'cells' | 'hits' | 'labels' | 'groups'>,
  lang: string | undefined,
): Head | null {
  const { tokens, hits } = line;
  const known = new Uint8Array(tokens.length);
  for (const hit of hits) known.fill(1, hit.first, hit.last + 1);
  const language = languageOf(hits, lang);
  const described = line.cells.filter(c => c.column === 'description');
  const cells = [
    ...described,
    ...line.cells.filter(
      c =>
        c.column !== 'description' &&
        c.column !== 'material' &&
        c.column !== 'remarks' &&
        c.column !== 'partNumber',
    ),
  ];
  let fallback: Head | null = null;
  let unknownFirst = false;
  for (const cell of cells) {
    for (const { first, last, qualifies } of phrasesOf(tokens, cell, hits)) {
      const inside = hits.filter(h => h.first >= first && h.last <= last);
      const nouns = inside.flatMap(hit => {
        const entries = line.labels.has(hit.first) ? [] : nounIn(hit);
        return entries.length > 0 ? [{ hit, entry: preferred(entries, language) }] : [];
      });
      if (nouns.length === 0) {
        for (let at = first; at <= last && !qualifies; at++)
          if (isUnknownWord(tokens, at, known)) unknownFirst = true;
        continue;
      }
      const head = chooseNoun(nouns, language);
      const { meaning } = head.entry;
      if (meaning.kind !== 'noun') continue;
      let unknownBehind = false;
      for (let at = head.hit.last + 1; at <= last; at++)
        if (isUnknownWord(tokens, at, known)) unknownBehind = true;
      const others = nouns.flatMap(n =>
        n !== head && n.entry.meaning.kind === 'noun' ? [n.entry.meaning.category] : [],
      );
      const found: Head = {
        category: meaning.category,
        attrs: meaning.attrs,
        hit: head.hit,
        unknownBehind,
        unknownFirst,
        phrase: { first, last },
        others,
      };
      if (!qualifies && !sizedBelow(line, cell)) return found;
      // "Adapter for bearing": what stands before the preposition is the part, though nobody knows the word.
      fallback ??= unknownFirst ? { ...found, category: 'plain', attrs: {}, unknownBehind: true } : found;
    }
  }
  return fallback;
}

/** A caption printed above the line that holds the sizes only groups it: "Fasteners, encoder" over "M3 x 16 cap screw". */
function sizedBelow(
  { tokens, cells, groups, hits }: Pick<Line, 'tokens' | 'cells' | 'hits' | 'groups'>,
  cell: Cell,
): boolean {
  const sized = (c: Cell) =>
    groups.some(g => (g.thread ?? g.joined) && g.first >= c.first && g.last <= c.last);
  if (sized(cell)) return false;
  return cells.some(
    c =>
      c.first > cell.last &&
      tokens[c.first]!.gap >= 9 &&
      sized(c) &&
      hits.some(
        h =>
          h.first >= c.first &&
          h.last <= c.last &&
          nounIn(h).some(e => e.meaning.kind === 'noun' && e.meaning.category !== 'plain'),
      ),
  );
}

/** Of several meanings of one phrase the one in the line's language; else the first. */
const preferred = (entries: readonly Entry[], language: string): Entry =>
  entries.find(e => e.lang === language) ?? entries[0]!;

function chooseNoun(nouns: readonly Noun[], language: string): Noun {
  const first = nouns[0]!;
  return headFirst.has(language) && headFirst.has(first.entry.lang) ? first : nouns.at(-1)!;
}
