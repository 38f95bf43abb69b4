import type { Cell } from './cells.ts';
import { holdsName } from './count.ts';
import { type Entry, type Hit, kindBits } from './dictionary.ts';
import type { Line } from './line.ts';
import type { Attrs, CategoryName } from './reading.ts';
import { endsSentence } from './sentences.ts';
import type { Token } from './tokens.ts';
import { isIn, wordSet } from './vocabulary.ts';

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
  /** Only words behind a preposition name it: with lock nuts. */
  aside: boolean;
  /** Every other category whose noun stands in the same phrase. */
  others: CategoryName[];
}

/** Languages whose first noun of a phrase is its head; German and Dutch put what qualifies into one word with the noun. */
const headFirst = new Set(['fr', 'it', 'es', 'de', 'nl']);
const english: readonly string[] = ['en'];
const stops = wordSet(', ; : ( ) [ ] | & + ! ?');

interface Noun {
  hit: Hit;
  entry: Entry;
}

/** A stretch of a cell, and whether it only qualifies what stands before it. */
interface Phrase {
  first: number;
  last: number;
  qualifies: boolean;
}

/** Splits a cell into phrases: at commas, brackets, new lines, a dash between blanks, and before a preposition. */
function phrasesOf(tokens: readonly Token[], cell: Cell, hits: readonly Hit[]): Phrase[] {
  const phrases: Phrase[] = [];
  let first = cell.first;
  let qualifies = false;
  let next = 0;
  for (let at = cell.first; at <= cell.last; at++) {
    const token = tokens[at]!;
    while (next < hits.length && hits[next]!.first < at) next++;
    const joins = isIn(token, conjunctions);
    const hit = !joins && hits[next]?.first === at ? hits[next]! : null;
    const preposition = hit?.kinds === kindBits.preposition;
    const stop =
      joins ||
      isIn(token, stops) ||
      endsSentence(tokens, at) ||
      (token.text === '-' && token.gap > 0 && (tokens[at + 1]?.gap ?? 1) > 0);
    if (hit && !preposition) {
      if (token.gap >= 9 && at > first) {
        phrases.push({ first, last: at - 1, qualifies });
        first = at;
        qualifies = false;
      }
      at = hit.last;
    } else if ((hit && (at > cell.first || cell.first > 0)) || stop) {
      // A preposition that begins a later cell says of the whole row what it is for.
      if (at > first) phrases.push({ first, last: at - 1, qualifies });
      const last = hit?.last ?? at;
      qualifies = hit !== null;
      first = last + 1;
      at = last;
    }
  }
  if (cell.last >= first) phrases.push({ first, last: cell.last, qualifies });
  return phrases;
}

/** Words that join two names: screws and nuts. */
const conjunctions = wordSet('and und et y plus with');

/** Whether a word may be a name nobody knows: three letters or more, no code, no size. */
function isUnknownWord(tokens: readonly Token[], at: number): boolean {
  const { kind, text, gap, known } = tokens[at]!;
  if (kind !== 'word' || known) return false;
  if (text.charCodeAt(0) >= 0x3005) return true;
  const glued =
    (gap === 0 && tokens[at - 1]?.kind === 'number') ||
    (tokens[at + 1]?.gap === 0 && tokens[at + 1]?.kind === 'number');
  return text.length >= 3 && !glued;
}

/** The languages that most of the line's words are of, English first; or the one that is known. */
function languagesOf(hits: readonly Hit[], known: string | undefined): string[] {
  if (known) return [known];
  const langs: string[] = [];
  const counts: number[] = [];
  for (const hit of hits) {
    if (isOfAnyLanguage(hit)) continue;
    for (const lang of hit.langs) {
      const index = langs.indexOf(lang);
      if (index >= 0) counts[index]!++;
      else {
        langs.push(lang);
        counts.push(1);
      }
    }
  }
  const most = Math.max(0, ...counts);
  const likely = langs.filter((_, index) => counts[index] === most);
  return most === 0 || likely.includes('en') ? ['en', ...likely.filter(lang => lang !== 'en')] : likely;
}

/** A material or a finish is written alike in many languages and tells of none. */
const isOfAnyLanguage = ({ entries }: Hit) =>
  entries.every(
    ({ meaning }) => meaning.kind === 'finish' || (meaning.kind === 'modifier' && meaning.category === null),
  );

/** Cells that say nothing of the part's kind. */
const asides = new Set<string | null>(['material', 'remarks', 'partNumber']);

/** The cells that may name the part: those under a heading of descriptions first. */
function namingCells(cells: readonly Cell[]): readonly Cell[] {
  if (!cells.some(c => c.column !== null)) return cells;
  return [
    ...cells.filter(c => c.column === 'description'),
    ...cells.filter(c => c.column !== 'description' && !asides.has(c.column)),
  ];
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
  const named = hits.filter(hit => hit.nouns.length > 0);
  if (named.length === 0) return null;
  // One word of one meaning is that, whatever the language.
  const plainly = named.length === 1 && named[0]!.nouns.length === 1;
  const languages = plainly ? english : languagesOf(hits, lang);
  const sized = hasSizedThread(line);
  let fallback: Head | null = null;
  let unknownFirst = false;
  for (const cell of namingCells(line.cells)) {
    if (!holdsName(cell, named)) {
      unknownFirst ||= holdsUnknown(tokens, cell, hits);
      continue;
    }
    for (const { first, last, qualifies } of phrasesOf(tokens, cell, hits)) {
      const nouns = nounsIn(first, last, named, line, languages, sized);
      if (nouns.length === 0) {
        for (let at = first; at <= last && !qualifies; at++)
          if (isUnknownWord(tokens, at)) unknownFirst = true;
        continue;
      }
      const head = chooseNoun(nouns, languages[0]!, tokens);
      const { meaning } = head.entry;
      if (meaning.kind !== 'noun') continue;
      let unknownBehind = false;
      for (let at = head.hit.last + 1; at <= last; at++) if (isUnknownWord(tokens, at)) unknownBehind = true;
      const others = nouns.length > 1 ? nouns.filter(n => n !== head).flatMap(categoryOf) : [];
      const found: Head = {
        category: meaning.category,
        attrs: meaning.attrs,
        hit: head.hit,
        unknownBehind,
        unknownFirst,
        phrase: { first, last },
        others,
        aside: qualifies && !unknownFirst,
      };
      // M5x10 CHC (capot → plaque): behind a whole screw a bracket tells where it goes.
      if (found.category === 'plain' && tokens[first - 1]?.text === '(' && sizedBefore(line, cell, first))
        continue;
      if (!qualifies && !sizedBelow(line, cell)) return found;
      // "M4 x 10, for the base plate": a thread and its length are a part without a name.
      if (qualifies && sized && !unknownFirst) continue;
      // "Adapter for bearing": what stands before the preposition is the part, though nobody knows the word.
      fallback ??= unknownFirst ? { ...found, category: 'plain', attrs: {}, unknownBehind: true } : found;
    }
  }
  return fallback;
}

/**
 * The nouns of a phrase. One that names a dimension beside its number is none; nor is one that describes the part named
 * before it, with a size between, or a thread with its length: Screw M3 cap x 20, M3 x 5 cone.
 */
function nounsIn(
  first: number,
  last: number,
  named: readonly Hit[],
  { tokens, labels, groups }: Pick<Line, 'tokens' | 'labels' | 'groups'>,
  languages: readonly string[],
  sized: boolean,
): Noun[] {
  const nouns: Noun[] = [];
  for (const hit of named) {
    if (hit.first < first || hit.last > last || labels.has(hit.first)) continue;
    if (nouns.length > 0 && isContainer(tokens, hit.first) && isLubricant(nouns.at(-1)!.entry)) continue;
    // A set of nuts is nuts; de and nl know the word as a part.
    const follows =
      nouns.length > 0 && nouns.at(-1)!.hit.last === hit.first - 1 && !isPlain(nouns.at(-1)!.entry);
    if (
      hit.first === hit.last &&
      tokens[hit.first]!.text === 'set' &&
      (follows || tokens[hit.first - 1]?.kind === 'number')
    )
      continue;
    const entry = preferred(hit.nouns, languages, groups);
    const describes = (hit.kinds & kindBits.modifier) !== 0 && (isPlain(entry) || isSeat(entry, nouns[0]));
    const front = nouns[0];
    const behindSize =
      front && !isPlain(front.entry) && groups.some(g => g.first > front.hit.last && g.last < hit.first);
    if (!describes || !(sized || behindSize)) nouns.push({ hit, entry });
  }
  return nouns;
}

/** What a lubricant is sold in, behind its amount or, of a tube, its name: GREASE 1 TUBE. */
const containers = new Set(
  'tube bottle can tin jar spray cartridge pot dose flasche kartusche flacon bidon tubetto flacone bote fles'.split(
    ' ',
  ),
);
const isContainer = (tokens: readonly Token[], at: number) =>
  containers.has(tokens[at]!.text) && (tokens[at - 1]?.kind !== 'word' || tokens[at]!.text === 'tube');
const isLubricant = ({ meaning }: Entry) => meaning.kind === 'noun' && meaning.category === 'lubricant';

/** A shaft behind a ring's or bearing's size is what it sits on: circlip 8 mm shaft. */
const isSeat = ({ meaning }: Entry, front: Noun | undefined) =>
  meaning.kind === 'noun' &&
  meaning.category === 'shaft' &&
  front !== undefined &&
  categoryOf(front).some(category => seated.has(category));
const seated = new Set<CategoryName>([
  'retaining-ring',
  'bearing',
  'bushing',
  'seal',
  'o-ring',
  'washer',
  'gear',
]);

const categoryOf = ({ entry: { meaning } }: Noun) => (meaning.kind === 'noun' ? [meaning.category] : []);

const isPlain = ({ meaning }: Entry) => meaning.kind === 'noun' && meaning.category === 'plain';

/** Whether a word nobody knows stands in a cell, and not only behind a preposition. */
function holdsUnknown(tokens: readonly Token[], cell: Cell, hits: readonly Hit[]): boolean {
  let unknown = false;
  for (let at = cell.first; at <= cell.last; at++) unknown ||= isUnknownWord(tokens, at);
  if (!unknown) return false;
  for (const { first, last, qualifies } of phrasesOf(tokens, cell, hits))
    for (let at = first; at <= last && !qualifies; at++) if (isUnknownWord(tokens, at)) return true;
  return false;
}

/** Whether a thread with its length stands in the cell in front of a token. */
const sizedBefore = ({ groups }: Pick<Line, 'groups'>, cell: Cell, at: number) =>
  groups.some(g => g.thread !== null && g.measures.length > 0 && g.first >= cell.first && g.last < at);

/** Whether a thread stands in the line with a length behind it. */
const hasSizedThread = ({ groups }: Pick<Line, 'groups'>) =>
  groups.some(g => g.thread !== null && g.measures.length > 0);

type Cut = Pick<Line, 'tokens' | 'cells' | 'hits' | 'groups'>;

/** A caption printed above the line that holds the sizes only groups it: "Fasteners, encoder" over "M3 x 16 cap screw". */
function sizedBelow(line: Cut, cell: Cell): boolean {
  for (const below of line.cells)
    if (below.first > cell.last && line.tokens[below.first]!.gap >= 9 && isSizedPart(line, below))
      return !isSized(line, cell);
  return false;
}

const isSized = ({ groups }: Cut, { first, last }: Cell) =>
  groups.some(g => (g.thread ?? g.joined) && g.first >= first && g.last <= last);

/** Whether a cell names a part that is measured, and gives its size. */
const isSizedPart = (line: Cut, cell: Cell) =>
  isSized(line, cell) &&
  line.hits.some(
    ({ first, last, categories }) =>
      first >= cell.first && last <= cell.last && categories.some(category => category !== 'plain'),
  );

/**
 * Of several meanings of one phrase the one in the line's language, else the first. A word that is a screw in one language
 * and something smooth in another (Spanish and Italian perno) is a screw only with a thread.
 */
function preferred(entries: readonly Entry[], languages: readonly string[], groups: Line['groups']): Entry {
  if (entries.length === 1) return entries[0]!;
  let first: Entry | undefined;
  for (let at = 0; at < languages.length && !first; at++) first = entries.find(e => e.lang === languages[at]);
  if (!first) return entries[0]!;
  if (!isScrew(first) || groups.some(g => g.thread)) return first;
  for (const lang of languages)
    for (const other of entries)
      if (other.lang === lang && lang !== first.lang && !isScrew(other) && !isPlain(other)) return other;
  return first;
}

const isScrew = ({ meaning }: Entry) => meaning.kind === 'noun' && meaning.category === 'screw';

function chooseNoun(nouns: readonly Noun[], language: string, tokens: readonly Token[]): Noun {
  const first = nouns[0]!;
  // "shaft, idler gear": the name stands first, and what stands behind its comma qualifies it.
  if (tokens[first.hit.first + 1]?.text === ',' && first.hit.last > first.hit.first) return first;
  return headFirst.has(language) && headFirst.has(first.entry.lang) ? first : nouns.at(-1)!;
}
