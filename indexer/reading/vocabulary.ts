/** A word, number or mark that the reader knows. */
export interface Word {
  readonly text: string;
  /** Phrases are found by the numbers of their words; 0 is of no word. */
  readonly number: number;
  /** The sets it is in, as bits. */
  sets: number;
}

/** What every word is that nobody asks for. */
export const unknownWord: Word = { text: '', number: 0, sets: 0 };

/** Every word by its number. */
const words: Word[] = [unknownWord];
/** The letters of all words, one word behind another, and where each begins. */
const table = { letters: new Uint16Array(1 << 16), begins: [0, 0], places: new Uint32Array(1 << 14) };

/**
 * The word that stands in a text given by the codes of its characters, `start` up to `end`. Its letters are looked at once: `places`
 * holds numbers of words by the hash of their letters (FNV-1a), in the next place where theirs is taken.
 */
export function wordIn(codes: Uint16Array, start: number, end: number): Word {
  return words[table.places[placeOf(codes, start, end)]!]!;
}

/** The place that holds the number of the word, or the free one where it would be put. */
function placeOf(codes: Uint16Array, start: number, end: number): number {
  const { letters, begins, places } = table;
  let hash = 0x811c9dc5;
  for (let at = start; at < end; at++) hash = Math.imul(hash ^ codes[at]!, 0x01000193);
  const last = places.length - 1;
  let place = (hash ^ (hash >>> 15)) & last;
  for (let number = places[place]!; number !== 0; number = places[place]!) {
    const from = begins[number]!;
    if (begins[number + 1]! - from === end - start) {
      let at = start;
      while (at < end && codes[at] === letters[from + at - start]) at++;
      if (at === end) return place;
    }
    place = (place + 1) & last;
  }
  return place;
}

function codesOf(text: string): Uint16Array {
  const codes = new Uint16Array(text.length);
  for (let at = 0; at < text.length; at++) codes[at] = text.charCodeAt(at);
  return codes;
}

/** A word by its folded letters. */
export const wordOf = (text: string): Word => wordIn(codesOf(text), 0, text.length);

/** The word of these letters, made where there is none. */
export function addWord(text: string): Word {
  const codes = codesOf(text);
  const known = wordIn(codes, 0, codes.length);
  if (known !== unknownWord) return known;
  if (words.length * 2 > table.places.length) growPlaces();
  const word = { text, number: words.length, sets: 0 };
  const from = table.begins[word.number]!;
  const end = from + codes.length;
  if (end > table.letters.length) {
    const more = new Uint16Array(end * 2);
    more.set(table.letters);
    table.letters = more;
  }
  table.letters.set(codes, from);
  table.places[placeOf(codes, 0, codes.length)] = word.number;
  table.begins.push(end);
  words.push(word);
  return word;
}

function growPlaces(): void {
  table.places = new Uint32Array(table.places.length * 2);
  for (const { text, number } of words)
    if (number > 0) table.places[placeOf(codesOf(text), 0, text.length)] = number;
}

/** Whether a token's word is in a set, or in one of several. */
export const isIn = ({ word }: { word: Word }, set: number): boolean => (word.sets & set) !== 0;

/** Every set that a word of the tokens is in, together: a line that lacks the set is spared the look. */
export function setsOf(tokens: readonly { word: Word }[]): number {
  let sets = 0;
  for (const { word } of tokens) sets |= word.sets;
  return sets;
}

/** Bits of a whole number, the sign among them. */
const mostSets = 32;
let sets = 0;

/**
 * Makes a set of words that the tokens of every line are asked for, without looking at their letters again: {@link isIn}. There are
 * few such sets; what is asked seldom is a `Set` of texts.
 *
 * @param members folded words, with a blank between them, or a list
 * @returns the bit that stands for the set
 */
export function wordSet(members: string | Iterable<string>): number {
  if (sets === mostSets)
    throw new Error(`More than ${mostSets} sets of words: a set that few lines are asked for is a Set.`);
  const bit = 1 << sets;
  sets += 1;
  for (const member of typeof members === 'string' ? members.split(' ') : members)
    addWord(member).sets |= bit;
  return bit;
}
