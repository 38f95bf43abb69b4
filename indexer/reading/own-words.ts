import { Dictionary, type Hit } from './dictionary.ts';
import type { Abbreviations } from './reading.ts';
import { type Token, tokenise } from './tokens.ts';

/** The words of one document, and by their folded letters what it says they stand for. */
interface OwnWords {
  words: Dictionary;
  meant: ReadonlyMap<string, string>;
}

const known = new WeakMap<Abbreviations, OwnWords>();

/**
 * Finds a document's own abbreviations in a line and puts them in the place of what these letters mean elsewhere; a longer
 * phrase that is known stands.
 *
 * @returns all that was found, in order, and a note for each abbreviation
 */
export function withOwnWords(
  found: Hit[],
  tokens: readonly Token[],
  abbreviations: Abbreviations,
  dictionary: Dictionary,
): { hits: Hit[]; notes: string[] } {
  const own = known.get(abbreviations) ?? ownWords(abbreviations, dictionary);
  known.set(abbreviations, own);
  const length = (hit: Hit) => hit.last - hit.first;
  const overlap = (a: Hit, b: Hit) => a.first <= b.last && b.first <= a.last;
  const meant = own.words
    .find(tokens)
    .filter(hit => !found.some(other => overlap(hit, other) && length(other) > length(hit)));
  if (meant.length === 0) return { hits: found, notes: [] };
  const kept = found.filter(hit => !meant.some(other => overlap(hit, other)));
  return {
    hits: [...kept, ...meant].sort((a, b) => a.first - b.first),
    notes: [...new Set(meant.map(hit => own.meant.get(lettersOf(tokens, hit)) ?? ''))].filter(Boolean),
  };
}

function ownWords(abbreviations: Abbreviations, dictionary: Dictionary): OwnWords {
  const words = new Dictionary();
  const meant = new Map<string, string>();
  for (const [short, long] of abbreviations) {
    for (const { entries } of dictionary.find(tokenise(long)))
      for (const { meaning, lang } of entries)
        if (meaning.kind === 'noun' || meaning.kind === 'modifier') words.add(short, lang, meaning);
    const tokens = tokenise(short);
    meant.set(
      lettersOf(tokens, { first: 0, last: tokens.length - 1 }),
      `“${short}” is “${long}”, as this list says`,
    );
  }
  return { words, meant };
}

const lettersOf = (tokens: readonly Token[], { first, last }: { first: number; last: number }) =>
  tokens
    .slice(first, last + 1)
    .filter(token => token.kind !== 'mark')
    .map(token => token.text)
    .join('');
