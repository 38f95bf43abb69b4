import { readReference } from '../reference.ts';
import type { PageContent, Ring } from './page-content.ts';
import { segmentsOf } from './region.ts';
import { Rings } from './rings.ts';
import type { Sheet } from './sheet.ts';
import { turnedBack, type Word } from './words.ts';

/** A number on a drawing that may be a balloon, with what speaks for it. */
export interface Mark {
  /** As printed. */
  text: string;
  page: number;
  /** Its middle, as fractions of the shown page from its top left. */
  x: number;
  y: number;
  /** Font, height and whether a line runs round it: balloons of one drawing are alike. */
  style: string;
  /** A circle, oval or hexagon stands round it. */
  ringed: boolean;
  /** A line ends at it. */
  led: boolean;
}

/** Reference numbers as drawings print them: 12, 24A, A, 12-15, 12~15, 3,4, 2X 37. */
const markLike =
  /^(?:\(?\d{1,3}[A-Za-z]{0,2}\)?|[A-Z]{1,2}\d{0,3}|\d{1,3}[A-Za-z]?\s?[-–~/,.:]\s?\d{1,3}[A-Za-z]?)$/;

/** What on a page may be a balloon: short numbers and letters that are in no table, no sentence and no frame. */
export function findMarks(
  page: number,
  content: PageContent,
  sheets: readonly Sheet[],
  used: ReadonlySet<Word>,
): Mark[] {
  const rings = new Rings(content);
  return sheets.flatMap(sheet => {
    const middle = (word: Word) => middleOf(word, sheet, content);
    const found: Candidate[] = [];
    for (const line of sheet.lines)
      for (const words of segmentsOf(line)) {
        if (words.some(word => used.has(word))) continue;
        for (const word of aloneIn(words, rings, middle))
          found.push({ word, ring: rings.round(...middle(word), word) });
      }
    return withoutQuantities(found, sheet, content, rings).map(({ word, ring }) => {
      const [x, y] = middle(word);
      return {
        text: word.text,
        page,
        x: (ring?.x ?? x) / content.width,
        y: (ring?.y ?? y) / content.height,
        style: `${word.style}${ring ? ' ringed' : ''}`,
        ringed: ring !== null,
        led: rings.ends.reach(x, y, word),
      };
    });
  });
}

interface Candidate {
  word: Word;
  ring: Ring | null;
}

/** The middle of a word's figures on the page as shown. */
const middleOf = ({ left, right, base, size }: Word, { angle }: Sheet, content: PageContent) =>
  turnedBack((left + right) / 2, base - 0.36 * size, angle, content);

/** Balloons with a line across have the number above it and how many there are under it: that is no balloon. */
function withoutQuantities(
  found: readonly Candidate[],
  sheet: Sheet,
  content: PageContent,
  rings: Rings,
): Candidate[] {
  const under = new Set<Candidate>();
  for (const [nth, upper] of found.entries()) {
    const { word } = upper;
    for (let at = nth + 1; at < found.length; at += 1) {
      const lower = found[at]!;
      const down = lower.word.base - word.base;
      if (down > 2.6 * word.size) break;
      const apart = (lower.word.left + lower.word.right - word.left - word.right) / 2;
      if (down < 0.8 * word.size || Math.abs(apart) > 0.6 * word.size) continue;
      if (lower.ring && lower.ring !== upper.ring) continue;
      const [x, y] = middleOf({ ...word, base: word.base + down / 2 }, sheet, content);
      const width = Math.max(word.right - word.left, lower.word.right - lower.word.left);
      const ring = rings.split(x, y, width, word.size);
      if (!ring) continue;
      upper.ring = ring;
      under.add(lower);
      break;
    }
  }
  return found.filter(candidate => !under.has(candidate));
}

/** The marks in a run of words: one that stands alone, a range with blanks in it, or several that rings hold apart. */
function aloneIn(words: readonly Word[], rings: Rings, middle: (word: Word) => [number, number]): Word[] {
  const text = words.map(word => word.text).join(' ');
  if (markLike.test(text) || readReference(text)?.qty) {
    const last = words.at(-1)!;
    return [{ ...words[0]!, text, right: last.right }];
  }
  return words.filter(word => markLike.test(word.text) && rings.round(...middle(word), word) !== null);
}
