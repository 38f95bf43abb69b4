import type { ColumnMeaning } from '../reading/column-meanings.ts';
import { runs } from './assign-roles.ts';
import { partNumberLike, shapeOf } from './cell-kinds.ts';
import { type Heading, usualOrders } from './column-order.ts';
import { cutLine, type Ruler } from './cut-line.ts';
import type { GridLine } from './grid.ts';
import { cutWords, fragments, isWide, joinWords, type Word } from './line-words.ts';

const sampleSize = 200;
/** Columns that each of the lists side by side has at least. */
const leastBeside = 3;
/** What a line that can't be cut in an order counts against that order. */
const uncut = -5;

/** A line whose words are not cut yet: all of them at once would fill the memory. */
type Printed = GridLine & { text: string };

/**
 * Cuts the lines under one header (or none) into cells, in the order of columns that explains them best, and tells
 * that order. `orders` are those to choose from.
 */
export function cutSection(
  lines: readonly GridLine[],
  heading: Heading | null,
  shapes: ReadonlySet<string>,
  given: readonly (readonly ColumnMeaning[])[] | undefined = heading?.orders,
): readonly ColumnMeaning[] {
  const printed = lines.filter((line): line is Printed => !line.faulted && line.text !== undefined);
  if (printed.length === 0) return (given ?? usualOrders)[0]!;
  const sample = everyNth(printed, sampleSize).map(line => cutWords(line.text));
  const orders = given ?? [...usualOrders, ...ordersBeside(sample)];
  const spaced = isSpaced(sample);
  const narrowEdge = spaced ? 4 : 1.2;
  const edges = spaced ? heading?.edges : undefined;
  const rulers = orders.map<Ruler>(roles => ({
    roles,
    shapes,
    narrowEdge,
    ...(edges && { edges }),
  }));
  const ruler = rulers.reduce(
    (best, next) => {
      const score = rulers.length > 1 ? explains(sample, next) : 0;
      return score > best.score ? { ruler: next, score } : best;
    },
    { ruler: rulers[0]!, score: Number.NEGATIVE_INFINITY },
  ).ruler;
  const settled = spaced ? { ...ruler, edges: usualEdges(sample, ruler) } : ruler;
  const descriptionEdge = settled.edges?.[ruler.roles.indexOf('description')]?.start;
  for (const line of printed) {
    const words = cutWords(line.text);
    line.indent = words[0]!.start;
    if (descriptionEdge !== undefined) line.descriptionEdge = descriptionEdge;
    line.cells = cellsOf(words, settled);
  }
  return ruler.roles;
}

/** Orders of lists side by side, where most lines have words standing apart in enough places. */
function ordersBeside(sample: readonly Word[][]): ColumnMeaning[][] {
  const widths = sample.map(words => fragments(words).length);
  const bare = usualOrders.filter(order => order.at(-1) === 'remarks').map(order => order.slice(0, -1));
  return [2, 3, 4].flatMap(groups => {
    if (widths.filter(width => width >= groups * leastBeside).length < sample.length * 0.5) return [];
    const fitting = bare.filter(order => order.length >= leastBeside && !order.includes('price'));
    return fitting.map(order => Array.from({ length: groups }, () => order).flat());
  });
}

function everyNth<T>(items: readonly T[], count: number): readonly T[] {
  if (items.length <= count) return items;
  return Array.from({ length: count }, (_, nth) => items[Math.floor((nth * items.length) / count)]!);
}

/** True where columns stand wide apart: hardly any two of them are then parted by a single blank. */
function isSpaced(sample: readonly Word[][]): boolean {
  const apart = sample.filter(words => words.filter((word, at) => at > 0 && isWide(word)).length >= 2);
  return apart.length > sample.length * 0.6;
}

function explains(sample: readonly Word[][], ruler: Ruler): number {
  let score = 0;
  const refs: string[] = [];
  const counts: string[] = [];
  for (const words of sample) {
    const cut = cutLine(words, ruler);
    score += cut?.score ?? uncut;
    if (!cut) continue;
    const ref = cut.cells[ruler.roles.indexOf('ref')];
    const qty = cut.cells[ruler.roles.indexOf('qty')];
    if (ref) refs.push(ref);
    if (qty) counts.push(qty);
  }
  if (refs.length > 2) score += (runs(refs) ? 1 : -1.5) * refs.length;
  if (counts.length > 2 && runs(counts)) score -= 2 * counts.length;
  return score;
}

/** Where the cells of each column usually begin and end. */
function usualEdges(sample: readonly Word[][], ruler: Ruler): NonNullable<Ruler['edges']> {
  const starts: number[][] = ruler.roles.map(() => []);
  const ends: number[][] = ruler.roles.map(() => []);
  for (const words of sample) {
    const cut = cutLine(words, ruler);
    if (!cut || cut.score < 2) continue;
    let at = 0;
    cut.cells.forEach((cell, column) => {
      if (!cell) return;
      const length = cell.split(' ').length;
      starts[column]!.push(words[at]!.start);
      at += length;
      ends[column]!.push(words[at - 1]!.end);
    });
  }
  return ruler.roles.map((_, column) => {
    if (starts[column]!.length < 2) return ruler.edges?.[column];
    return { start: median(starts[column]!), end: median(ends[column]!) };
  });
}

function median(numbers: number[]): number {
  return numbers.sort((a, b) => a - b)[numbers.length >> 1]!;
}

/** A line's cells; words standing alone under the remarks are remarks, and a line that can't be cut is one description. */
function cellsOf(words: readonly Word[], ruler: Ruler): string[] {
  const { roles, edges } = ruler;
  const description = roles.indexOf('description');
  const remarks = roles.lastIndexOf('remarks');
  const only = (column: number) =>
    roles.map((_, at) => (at === column ? joinWords(words, 0, words.length) : ''));
  const cut = cutLine(words, ruler);
  if (!cut) return only(Math.max(description, 0));
  const under = edges?.[remarks];
  const alone = fragments(words).length === 1 && cut.cells.every((cell, at) => !cell || at === description);
  if (alone && under && under.start > (edges?.[description]?.end ?? 0) && words[0]!.start >= under.start - 2)
    return only(remarks);
  return cut.cells;
}

/** Builds of part numbers seen often among the fragments and single words of a document. */
export function usualShapes(lines: readonly GridLine[]): ReadonlySet<string> {
  const counts = new Map<string, number>();
  const see = (text: string) => {
    if (partNumberLike(text) === 2) counts.set(shapeOf(text), (counts.get(shapeOf(text)) ?? 0) + 1);
  };
  for (const line of everyNth(lines, 2000)) {
    if (line.text === undefined) continue;
    const words = cutWords(line.text);
    const cut = new Set([...fragments(words), ...words].map(({ text }) => text));
    for (const text of cut) see(text);
  }
  const least = Math.max(3, lines.length * 0.05);
  return new Set([...counts].filter(([, count]) => count >= Math.min(least, 100)).map(([shape]) => shape));
}
