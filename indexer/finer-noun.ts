import { type Entry, kindBits } from './reading/dictionary.ts';
import type { Head } from './reading/head.ts';
import type { Line } from './reading/line.ts';
import type { CategoryName } from './reading/reading.ts';

/** Names that say more exactly what a general one is. */
const narrower: Readonly<Partial<Record<CategoryName, readonly CategoryName[]>>> = {
  screw: ['set-screw'],
  washer: ['shim'],
};

/**
 * A finer kind that the line names apart from the general name it begins with: Screw | M5x6 | Grub screw; WASHER, SPRING TENSION:
 * BELLEVILLE; SHSS with a point. Null where it names none.
 */
export function finerNoun(head: Head, line: Line): CategoryName | null {
  if (isHeadless(head, line)) return 'set-screw';
  const { tokens, hits } = line;
  for (const { first, last, nouns } of hits) {
    if (nouns.length === 0 || first <= head.hit.last) continue;
    const alone = ends.has(tokens[first - 1]!.text) && ends.has(tokens[last + 1]?.text ?? '|');
    if (!alone) continue;
    for (const { meaning } of nouns)
      if (meaning.kind === 'noun' && isFiner(head.category, meaning.category, meaning.attrs['type']))
        return meaning.category;
  }
  return null;
}

const ends = new Set(['|', ',', ':', ';', '(', ')']);

const isFiner = (general: CategoryName, fine: CategoryName, type: unknown) =>
  (narrower[general]?.includes(fine) ?? false) ||
  (general === 'washer' && fine === 'spring' && type === 'belleville');

/** SHSS is a socket head shoulder screw, and with a point a socket set screw. */
const isHeadless = ({ category, hit }: Head, { tokens, hits }: Line) =>
  category === 'screw' &&
  tokens[hit.first]!.text === 'shss' &&
  hits.some(h => (h.kinds & kindBits.modifier) !== 0 && h.entries.some(namesPoint));

const namesPoint = ({ meaning }: Entry) => meaning.kind === 'modifier' && 'point' in meaning.attrs;
