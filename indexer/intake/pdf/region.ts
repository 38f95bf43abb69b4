import type { Header } from './headers.ts';
import type { Rule } from './page-content.ts';
import { median, type Sheet } from './sheet.ts';
import type { Word } from './words.ts';

/** What belongs to one header: the lines of its list, and the lines that rule it. */
export interface Region {
  header: Header;
  /** Words of the list by lines, top to bottom, the header's left out. */
  lines: Word[][];
  /** True where the titles stand under the list. */
  upwards: boolean;
  uprights: Rule[];
  left: number;
  right: number;
}

/** The farthest that an upright line may be broken, in points: where a heading reaches over the columns. */
const longestBreak = 45;
/** The farthest that a table's edge may lie from its first or last title, as a share of the page's width. */
const farthestEdge = 0.3;

/** The lines that a header heads; those under it, or where there are none, those above it. `ends` are other headers. */
export function regionOf(header: Header, sheet: Sheet, ends: readonly Header[]): Region {
  const uprights = standing(header, sheet);
  const left = edgeBefore(header, uprights, sheet);
  const right = edgeAfter(header, uprights, sheet);
  const boxed = left !== null && right !== null;
  const reach = {
    left: left?.at ?? header.titles[0]!.left,
    right: right?.at ?? header.titles.at(-1)!.right,
    boxed,
  };
  const inner = uprights.filter(({ at }) => at > reach.left + 1 && at < reach.right - 1);
  const bounds = inner.length > 0 ? inner : boxed ? [left, right] : [];
  const bottom = bounds.length > 0 ? Math.max(...bounds.map(({ to }) => to)) : null;
  const top = bounds.length > 0 ? Math.min(...bounds.map(({ from }) => from)) : null;
  const limit = Math.min(
    sheet.height,
    ...ends.filter(end => isBeyond(end, header, 1)).map(end => end.box.top),
  );
  const below = walk(header, sheet, 1, reach, Math.min(bottom ?? limit, limit), bottom !== null);
  const lines =
    below.length > 0
      ? below
      : walk(header, sheet, -1, reach, ceiling(header, ends, top), top !== null).reverse();
  return { header, lines, upwards: below.length === 0, uprights, left: reach.left, right: reach.right };
}

function ceiling(header: Header, ends: readonly Header[], top: number | null): number {
  const limit = Math.max(0, ...ends.filter(end => isBeyond(end, header, -1)).map(end => end.box.bottom));
  return Math.max(top ?? limit, limit);
}

const isBeyond = (end: Header, header: Header, way: 1 | -1): boolean =>
  end !== header &&
  (way > 0 ? end.box.top > header.box.top + 1 : end.box.top < header.box.top - 1) &&
  end.box.left < header.box.right &&
  end.box.right > header.box.left;

/** Upright lines through the header, each drawn together from its pieces. */
function standing(header: Header, { uprights }: Sheet): Rule[] {
  const { top, bottom } = header.box;
  const found: Rule[] = [];
  for (let at = 0; at < uprights.length; ) {
    const x = uprights[at]!.at;
    const pieces: Rule[] = [];
    while (at < uprights.length && uprights[at]!.at < x + 1.2) pieces.push(uprights[at++]!);
    pieces.sort((a, b) => a.from - b.from);
    let run: Rule | null = null;
    const close = () => {
      if (run && run.from < bottom - 1 && run.to > top + 1) found.push(run);
    };
    for (const piece of pieces) {
      if (run && piece.from < run.to + longestBreak) run.to = Math.max(run.to, piece.to);
      else {
        close();
        run = { ...piece };
      }
    }
    close();
  }
  return found;
}

function edgeBefore({ titles }: Header, uprights: readonly Rule[], { width }: Sheet): Rule | null {
  const { left } = titles[0]!;
  const edge = uprights.filter(({ at }) => at <= left + 1).at(-1);
  return edge && left - edge.at < farthestEdge * width ? edge : null;
}

function edgeAfter({ titles }: Header, uprights: readonly Rule[], { width }: Sheet): Rule | null {
  const { right } = titles.at(-1)!;
  const edge = uprights.find(({ at }) => at >= right - 1);
  return edge && edge.at - right < farthestEdge * width ? edge : null;
}

interface Reach {
  left: number;
  right: number;
  boxed: boolean;
}

/** Goes from line to line away from the header, until the list ends. */
function walk(
  header: Header,
  sheet: Sheet,
  way: 1 | -1,
  reach: Reach,
  limit: number,
  ruled: boolean,
): Word[][] {
  const edge = way > 0 ? header.box.bottom : header.box.top;
  const own = new Set(header.titles.flatMap(({ words }) => words));
  const lines = way > 0 ? sheet.lines : [...sheet.lines].reverse();
  const found: Word[][] = [];
  const gaps: number[] = [];
  let last = header.titles[0]!.words[0]!.base;
  for (const line of lines) {
    const base = line[0]!.base;
    if (way > 0 ? base < edge : base > edge) continue;
    const middle = base - 0.25 * line[0]!.size;
    if (way > 0 ? middle > limit : middle < limit) break;
    const words = within(line, reach).filter(word => !own.has(word));
    if (words.length === 0) continue;
    const gap = Math.abs(base - last);
    const pitch = Math.max(gaps.length > 0 ? median(gaps) : 0, 1.4 * words[0]!.size);
    const pieces = segmentsOf(words).length;
    if (!ruled && (pieces < 2 ? gap > 2.6 * pitch : gap > 7 * pitch)) break;
    if (!ruled && found.length === 0 && gap > 4 * pitch) break;
    found.push(words);
    gaps.push(gap);
    last = base;
  }
  while (found.length > 0 && !ruled && way < 0 && segmentsOf(found.at(-1)!).length < 2) found.pop();
  return found.some(words => segmentsOf(words).length > 1) ? found : [];
}

/** Words of one line that a wide gap does not part. */
export function segmentsOf(words: readonly Word[]): Word[][] {
  const found: Word[][] = [];
  let right = -Infinity;
  for (const word of words) {
    if (word.left - right > 0.7 * word.size) found.push([]);
    found.at(-1)!.push(word);
    right = word.right;
  }
  return found;
}

/** The words of a line that stand in the table; without lines round it, those that its titles and what touches them reach. */
function within(line: readonly Word[], { left, right, boxed }: Reach): Word[] {
  if (boxed)
    return line.filter(word => {
      const middle = (word.left + word.right) / 2;
      return middle > left && middle < right;
    });
  const size = line[0]!.size;
  let first = line.findIndex(word => word.right > left - 1.5 * size);
  if (first < 0) return [];
  let last = first - 1;
  while (last + 1 < line.length && line[last + 1]!.left < right + 0.5 * size) last += 1;
  if (last < first) return [];
  while (last + 1 < line.length && line[last + 1]!.left - line[last]!.right < 1.2 * size) last += 1;
  while (first > 0 && line[first]!.left - line[first - 1]!.right < 0.5 * size) first -= 1;
  return line.slice(first, last + 1);
}
