import type { Box } from './matrix.ts';
import type { Word } from './words.ts';

/** The columns of a list: where one ends and the next begins, from left to right, and the outer edges. */
export interface Columns {
  /** One more than there are columns. */
  edges: number[];
}

/** A stretch of the page's width. */
export interface Block {
  left: number;
  right: number;
}

/**
 * Where columns part, by their titles and what stands under them: between two titles at an upright line if there is
 * one, else in the widest gap that no word crosses, else where the fewest do.
 */
export function columnsOf(
  titles: readonly Box[],
  words: readonly Word[],
  uprightAt: readonly number[],
  outer: { left: number; right: number },
): Columns {
  const edges = [outer.left];
  const blocks = blocksOf([...titles, ...words]);
  for (let at = 0; at + 1 < titles.length; at += 1) {
    const [title, next] = [titles[at]!, titles[at + 1]!];
    const ruled = uprightAt.filter(x => x > title.right - 2 && x < next.left + 2);
    edges.push(ruled.length > 0 ? ruled[0]! : gapBetween(title, next, blocks, words));
  }
  edges.push(outer.right);
  return { edges };
}

/** Stretches of the page's width that something stands in, from left to right. */
export function blocksOf(boxes: readonly Block[]): Block[] {
  const found: Block[] = [];
  for (const { left, right } of [...boxes].sort((a, b) => a.left - b.left)) {
    const last = found.at(-1);
    if (last && left < last.right + 0.3) last.right = Math.max(last.right, right);
    else found.push({ left, right });
  }
  return found;
}

function gapBetween(title: Box, next: Box, blocks: readonly Block[], words: readonly Word[]): number {
  const first = blocks.findIndex(({ left, right }) => left <= title.left && right >= title.right);
  const last = blocks.findIndex(({ left, right }) => left <= next.left && right >= next.right);
  if (first >= 0 && last > first) {
    let best = -1;
    let place = next.left;
    for (let at = first; at < last; at += 1) {
      const gap = blocks[at + 1]!.left - blocks[at]!.right;
      if (gap > best) {
        best = gap;
        place = (blocks[at]!.right + blocks[at + 1]!.left) / 2;
      }
    }
    return place;
  }
  return leastCrossed(title, next, words);
}

/** The place between two titles that the fewest words cross, nearest to the second. */
function leastCrossed(title: Box, next: Box, words: readonly Word[]): number {
  const from = (title.left + title.right) / 2;
  const to = (next.left + next.right) / 2;
  let best = Infinity;
  let place = (title.right + next.left) / 2;
  for (let step = 0; step <= 80; step += 1) {
    const x = to - ((to - from) * step) / 80;
    let crossings = 0;
    for (const { left, right } of words) if (left < x - 0.2 && right > x + 0.2) crossings += 1;
    const cost = crossings + 0.001 * Math.abs(x - next.left);
    if (cost < best) {
      best = cost;
      place = x;
    }
  }
  return place;
}

/** The column that a word stands in: the one that holds its middle. */
export function columnAt({ edges }: Columns, { left, right }: Block): number {
  const middle = (left + right) / 2;
  let at = 0;
  while (at < edges.length - 2 && middle >= edges[at + 1]!) at += 1;
  return at;
}
