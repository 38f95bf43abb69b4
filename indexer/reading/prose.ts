import type { Cell } from './cells.ts';
import type { Hit } from './dictionary.ts';
import { endsSentence } from './sentences.ts';
import type { Token } from './tokens.ts';

/** Tokens `first` up to and including `last`. */
export interface Stretch {
  first: number;
  last: number;
}

const none: Stretch[] = [];

/** A cell of so many words, so many of them no words of the trade, is prose. */
const wordsOfProse = 5;
const strangersOfProse = 3;

/**
 * The cells and sentences behind the part's name that only tell of it: `Screws | M3 x 5 | 8 | Where the plate is thin, take …`.
 * Their sizes and attributes are of other things.
 */
export function proseIn(tokens: readonly Token[], cells: readonly Cell[], hits: readonly Hit[]): Stretch[] {
  const told = sentencesIn(tokens);
  if (cells.length < 2) return told;
  const named = hits.find(h => h.categories.some(c => c !== 'plain'));
  if (!named) return told;
  const prose = cells.filter(cell => cell.first > named.last && isProse(tokens, cell));
  return prose.length > 0 ? [...told, ...prose] : told;
}

/** What stands behind a full stop, to the end of its cell. */
function sentencesIn(tokens: readonly Token[]): Stretch[] {
  const told: Stretch[] = [];
  for (let at = 1; at < tokens.length; at++) {
    if (!endsSentence(tokens, at)) continue;
    const first = at + 1;
    while (at + 1 < tokens.length && tokens[at + 1]!.text !== '|') at++;
    told.push({ first, last: at });
  }
  return told.length > 0 ? told : none;
}

const units = new Set('mm cm in inch'.split(' '));

function isProse(tokens: readonly Token[], { first, last }: Stretch): boolean {
  if (last - first + 1 < wordsOfProse) return false;
  let words = 0;
  let strangers = 0;
  for (let at = first; at <= last; at++) {
    const { kind, text, gap, known, taken } = tokens[at]!;
    // What is glued to a figure is its unit.
    if (
      kind !== 'word' ||
      text.length < 2 ||
      taken ||
      units.has(text) ||
      (gap === 0 && tokens[at - 1]?.kind === 'number')
    )
      continue;
    words++;
    if (!known) strangers++;
  }
  return words >= wordsOfProse && strangers >= strangersOfProse;
}
