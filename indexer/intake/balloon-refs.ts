import { readReference, refsBetween } from './reference.ts';

const range = /^(.+?)\s*(?:-|–|—|\.{2,3}|\bto\b|\bbis\b)\s*(.+)$/;

/**
 * The references of a list that a balloon stands for: its own number; the numbers of a range ("12-15") or of a group
 * ("12, 13") that the list has. Spacing, capitals and leading zeros aside ("04" is 4). None where the list has none.
 */
export function refsOfBalloon(balloon: string, refs: Iterable<string>): string[] {
  const known = [...refs];
  const own = named(balloon, known);
  if (own.length > 0) return own;
  return balloon.split(/[,;/+&]/).flatMap(piece => {
    const ends = range.exec(piece.trim());
    const [from, to] = ends ? [plain(ends[1]!), plain(ends[2]!)] : [];
    return from && to ? refsBetween(from, to, known) : named(piece, known);
  });
}

const plain = (text: string) => readReference(text)?.ref;

const folded = (ref: string) =>
  ref
    .replace(/[\s().]/g, '')
    .replace(/^0+(?=\d)/, '')
    .toUpperCase();

const named = (text: string, known: string[]) => known.filter(ref => folded(ref) === folded(text));
