import { readReference } from '../reference.ts';
import type { PageContent } from './page-content.ts';
import { segmentsOf } from './region.ts';
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
  const ends = new EndIndex(content.strokes, content.width);
  const marks: Mark[] = [];
  for (const sheet of sheets)
    for (const line of sheet.lines)
      for (const words of segmentsOf(line)) {
        if (words.some(word => used.has(word))) continue;
        for (const word of aloneIn(words, content, sheet)) {
          const [x, y] = turnedBack(
            (word.left + word.right) / 2,
            word.base - 0.36 * word.size,
            sheet.angle,
            content,
          );
          const ring = ringRound(x, y, word, content);
          marks.push({
            text: word.text,
            page,
            x: (ring?.x ?? x) / content.width,
            y: (ring?.y ?? y) / content.height,
            style: `${word.style}${ring ? ' ringed' : ''}`,
            ringed: ring !== null,
            led: ends.reach(x, y, word),
          });
        }
      }
  return withoutZones(marks, content);
}

/** The marks in a run of words: one that stands alone, a range with blanks in it, or several that rings hold apart. */
function aloneIn(words: readonly Word[], content: PageContent, sheet: Sheet): Word[] {
  const text = words.map(word => word.text).join(' ');
  if (markLike.test(text) || readReference(text)?.qty) {
    const last = words.at(-1)!;
    return [{ ...words[0]!, text, right: last.right }];
  }
  return words.filter(word => {
    if (!markLike.test(word.text)) return false;
    const [x, y] = turnedBack(
      (word.left + word.right) / 2,
      word.base - 0.36 * word.size,
      sheet.angle,
      content,
    );
    return ringRound(x, y, word, content) !== null;
  });
}

/** The smallest ring round a word that is about as large as it needs to be. */
function ringRound(x: number, y: number, word: Word, { rings }: PageContent) {
  const width = word.right - word.left;
  let best: PageContent['rings'][number] | null = null;
  for (const ring of rings) {
    const { box } = ring;
    const [across, down] = [box.right - box.left, box.bottom - box.top];
    if (Math.abs(ring.x - x) > 0.22 * across || Math.abs(ring.y - y) > 0.22 * down) continue;
    if (Math.max(across, down) < Math.max(width, word.size) || Math.min(across, down) < 0.9 * word.size)
      continue;
    if (Math.min(across, down) > 4.5 * word.size) continue;
    if (!best || across < best.box.right - best.box.left) best = ring;
  }
  return best;
}

/** The share of a page's width and height that its frame with zone letters may take up on each side. */
const margin = 0.06;

/** Leaves out the letters and numbers of a frame's zones: rows of them run along opposite edges of the page. */
function withoutZones(marks: readonly Mark[], { width, height }: PageContent): Mark[] {
  const bare = marks.filter(({ ringed }) => !ringed);
  const zones = new Set<Mark>();
  for (const [along, across, size] of [
    ['x', 'y', height],
    ['y', 'x', width],
  ] as const)
    for (const near of [true, false]) {
      const edge = bare.filter(mark => (near ? mark[across] < margin : mark[across] > 1 - margin));
      for (const mark of edge) {
        const row = edge.filter(other => Math.abs(other[across] - mark[across]) * size < 3);
        if (row.length >= 3 && runsOn(row.sort((a, b) => a[along] - b[along])))
          for (const zone of row) zones.add(zone);
      }
    }
  return marks.filter(mark => !zones.has(mark));
}

/** True for A, B, C or 8, 7, 6 at even steps. */
function runsOn(row: readonly Mark[]): boolean {
  const places = row.map(({ text }) =>
    /^\d+$/.test(text) ? Number(text) : text.length === 1 ? text.charCodeAt(0) : Number.NaN,
  );
  const step = places[1]! - places[0]!;
  return (
    Math.abs(step) >= 1 &&
    Math.abs(step) <= 2 &&
    places.every((place, at) => at === 0 || Math.abs(place - places[at - 1]! - step) <= 1)
  );
}

/** Ends of strokes, found by place. */
class EndIndex {
  private readonly squares = new Map<number, number[]>();
  private readonly strokes: readonly number[];
  private readonly across: number;

  constructor(strokes: readonly number[], width: number) {
    this.strokes = strokes;
    this.across = Math.ceil(width / cell) + 2;
    for (let at = 0; at < strokes.length; at += 2) {
      const key = this.key(strokes[at]!, strokes[at + 1]!);
      const found = this.squares.get(key);
      if (found) found.push(at);
      else this.squares.set(key, [at]);
    }
  }

  /** True where a stroke that is longer than the word is high ends beside it and points at it. */
  reach(x: number, y: number, word: Word): boolean {
    const halfWidth = (word.right - word.left) / 2;
    const reach = Math.max(halfWidth, 0.4 * word.size) + 1.1 * word.size;
    const steps = Math.ceil(reach / cell);
    for (let row = -steps; row <= steps; row += 1)
      for (let column = -steps; column <= steps; column += 1)
        for (const at of this.squares.get(this.key(x + column * cell, y + row * cell)) ?? [])
          if (this.points(at, x, y, reach, word.size)) return true;
    return false;
  }

  private points(at: number, x: number, y: number, reach: number, size: number): boolean {
    const other = at % 4 === 0 ? at + 2 : at - 2;
    const [ex, ey, fx, fy] = [
      this.strokes[at]!,
      this.strokes[at + 1]!,
      this.strokes[other]!,
      this.strokes[other + 1]!,
    ];
    const length = Math.hypot(fx - ex, fy - ey);
    const distance = Math.hypot(ex - x, ey - y);
    if (length < 0.9 * size || distance > reach || Math.hypot(fx - x, fy - y) < distance) return false;
    // The line drawn on passes the middle of the word by less than half its height.
    const off = Math.abs((fx - ex) * (y - ey) - (fy - ey) * (x - ex)) / length;
    return off < 0.75 * size;
  }

  private key(x: number, y: number): number {
    return Math.floor(y / cell) * this.across + Math.floor(x / cell);
  }
}

/** Side of the squares by which ends of strokes are found, in points. */
const cell = 12;
