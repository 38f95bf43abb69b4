/** A word, number or mark that the reader knows. */
export interface Word {
  /** Phrases are found by the numbers of their words; 0 is of no word. */
  readonly number: number;
  /** The sets it is in, as bits. */
  sets: number;
}

/** What every word is that nobody asks for. */
export const unknownWord: Word = { number: 0, sets: 0 };

const words = new Map<string, Word>();
const count = { words: 0, sets: 0 };
/** Bits of a whole number. */
const mostSets = 31;

/** A word by its folded letters, looked up once for each token of a line. */
export const wordOf = (text: string): Word => words.get(text) ?? unknownWord;

/** The word of these letters, made where there is none. */
export function addWord(text: string): Word {
  let word = words.get(text);
  if (!word) {
    count.words += 1;
    word = { number: count.words, sets: 0 };
    words.set(text, word);
  }
  return word;
}

/** Whether a token's word is in a set, or in one of several. */
export const isIn = ({ word }: { word: Word }, set: number): boolean => (word.sets & set) !== 0;

/**
 * Makes a set of words that tokens are asked for over and over, without looking at their letters again: {@link isIn}.
 *
 * @param members folded words, with a blank between them, or a list
 * @returns the bit that stands for the set
 */
export function wordSet(members: string | Iterable<string>): number {
  if (count.sets === mostSets) throw new Error(`More than ${mostSets} sets of words.`);
  const bit = 1 << count.sets;
  count.sets += 1;
  for (const member of typeof members === 'string' ? members.split(' ') : members)
    addWord(member).sets |= bit;
  return bit;
}
