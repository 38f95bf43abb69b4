import { headerRoles } from '../../reading/column-words.ts';
import { strongestRole } from '../header.ts';
import { readReference, refParts } from '../reference.ts';
import { type BuiltTable, buildUntitled, type ListShape } from './build-table.ts';
import { type Block, blocksOf, columnAt } from './columns.ts';
import { segmentsOf } from './region.ts';
import type { Sheet } from './sheet.ts';
import type { Word } from './words.ts';

/** Lines at least that make a table without titles, and columns. */
const fewestLines = 3;
const fewestColumns = 3;

/** Goes on with lists of the page before, where what is left on this one stands in their columns. */
export function goOn(shapes: readonly ListShape[], sheet: Sheet, used: ReadonlySet<Word>): BuiltTable[] {
  return shapes.flatMap(shape => {
    const { edges } = shape.columns;
    const [left, right] = [edges[0]!, edges.at(-1)!];
    const lines = unusedLines(sheet, used).flatMap(line => {
      const words = line.filter(
        word => (word.left + word.right) / 2 > left && (word.left + word.right) / 2 < right,
      );
      return words.length > 0 ? [words] : [];
    });
    const fits = lines.map(words => fitsIn(words, shape));
    const first = fits.indexOf(true);
    const last = fits.lastIndexOf(true);
    if (first < 0 || fits.filter(Boolean).length < 0.4 * (last - first + 1)) return [];
    return [buildUntitled(lines.slice(first, last + 1), shape, sheet)];
  });
}

/** Short numbers and sizes alone, as on drawings: a part has a name or a number of some length. */
const isBare = (words: readonly Word[]): boolean => words.every(({ text }) => bare.test(text));
const bare = /^(?:[^\p{L}]?[\d.,/×°±~-]{1,5}\p{L}?|[ØRM]?[\d.,]{1,4}|\p{Lu}{1,2}|\d{1,2}[xX])$/u;

/** A line of a list: its reference stands where references do, and something beside it. */
function fitsIn(words: readonly Word[], { titles, columns }: ListShape): boolean {
  const filled = new Set(words.map(word => columnAt(columns, word)));
  if (filled.size < Math.min(3, titles.length) || segmentsOf(words).length < 2 || isBare(words)) return false;
  const ref = titles.findIndex(title => {
    const roles = headerRoles(title);
    return roles !== null && strongestRole(roles) === 'ref';
  });
  if (ref < 0) return filled.size >= 3;
  const cell = words.filter(word => columnAt(columns, word) === ref).map(({ text }) => text);
  return cell.length === 0 ? filled.size > 2 : readReference(cell.join(' ')) !== null;
}

/** Lists without any titles: lines of several columns that stand one under the other. */
export function findUntitled(sheet: Sheet, used: ReadonlySet<Word>): BuiltTable[] {
  const lines = unusedLines(sheet, used).map(line => cut(line, sheet));
  const places = new Places(lines.flat());
  const rows = lines.flatMap((segments, nth) => {
    const aligned = segments.filter(segment => places.shared(segment));
    return aligned.length >= fewestColumns && !isBare(aligned.flat()) ? [{ nth, segments: aligned }] : [];
  });
  const found: BuiltTable[] = [];
  for (const run of runsOf(rows, lines)) {
    if (run.length < fewestLines) continue;
    found.push(...tablesOf(run, lines, sheet));
  }
  return found;
}

interface Row {
  nth: number;
  segments: Word[][];
}

function tablesOf(run: readonly Row[], lines: readonly Word[][][], sheet: Sheet): BuiltTable[] {
  const segments = run.flatMap(row => row.segments);
  const blocks = blocksOf(segments.map(words => ({ left: words[0]!.left, right: words.at(-1)!.right })));
  const size = segments[0]![0]!.size;
  const filled = blocks.map(block => filledIn(block, run));
  if (filled.filter(count => count >= 0.3 * run.length).length < fewestColumns) return [];
  const first = filled.findIndex(count => count >= 0.3 * run.length);
  // Remarks stand in few of the lines, one under the other; so do the numbers of a drawing beside the list.
  const some = blocks.filter((_, at) => at >= first && filled[at]! >= Math.max(2, 0.06 * run.length));
  const listed = some.filter(
    block => filledIn(block, run) >= 0.3 * run.length || !isBare(wordsIn(block, run)),
  );
  const lists = listsBeside(run, edgesOf(some, size));
  const printed = lines.slice(run[0]!.nth, run.at(-1)!.nth + 1);
  const body = printed.map(line => line.flat());
  const single = edgesOf([...listed, ...remarksAfter(listed.at(-1)!.right, printed, size)], size);
  return (lists.length > 1 ? lists : [single]).flatMap(own => {
    const [from, to] = [own[0]!, own.at(-1)!];
    const inside = body
      .map(words => words.filter(word => word.right > from && word.left < to))
      .filter(words => words.length > 0);
    return inside.length > 0 ? [buildUntitled(inside, { titles: [], columns: { edges: own } }, sheet)] : [];
  });
}

/** A last column with words in few of its lines, which stand one under the other: remarks. */
function remarksAfter(edge: number, lines: readonly Word[][][], size: number): Block[] {
  const after = lines.flat().filter(words => {
    const { left } = words[0]!;
    return left > edge && left < edge + 15 * size && !isBare(words);
  });
  const left = Math.min(...after.map(words => words[0]!.left));
  const under = after.filter(words => words[0]!.left < left + 1.5);
  return under.length > 1 ? [{ left, right: Math.max(...under.map(words => words.at(-1)!.right)) }] : [];
}

/** Where columns part: in the middle between them. */
const edgesOf = (columns: readonly Block[], size: number): number[] => [
  columns[0]!.left - 0.5 * size,
  ...columns.slice(1).map((block, at) => (columns[at]!.right + block.left) / 2),
  Math.max(...columns.map(block => block.right)) + 0.5 * size,
];

/** The edges of each list where several stand side by side: each has its column of references, which goes on in the next. */
function listsBeside(run: readonly Row[], edges: number[]): number[][] {
  const body = run.map(({ segments }) => segments.flat());
  const counting = edges.slice(1).flatMap((_, at) => {
    const numbers = body.flatMap(words => {
      const cell = words.filter(word => columnAt({ edges }, word) === at);
      const parts = refParts(readReference(cell.map(({ text }) => text).join(' '))?.ref ?? '');
      return parts ? [parts.number] : [];
    });
    const filled = body.filter(words => words.some(word => columnAt({ edges }, word) === at)).length;
    const rising = numbers.filter((number, nth) => nth > 0 && number >= numbers[nth - 1]!).length;
    const isRefs =
      numbers.length > 1 &&
      numbers.length >= 0.8 * filled &&
      rising >= 0.9 * (numbers.length - 1) &&
      numbers.at(-1)! - numbers[0]! >= 0.4 * (numbers.length - 1);
    return isRefs ? [{ at, first: numbers[0]!, last: numbers.at(-1)! }] : [];
  });
  const goOn = counting.every(({ first }, nth) => nth === 0 || first >= counting[nth - 1]!.last);
  if (counting.length < 2 || !goOn) return [edges];
  const before = counting[0]!.at === 0;
  if (!before && counting.at(-1)!.at !== edges.length - 2) return [edges];
  return counting.map(({ at }, nth) =>
    before
      ? edges.slice(at, (counting[nth + 1]?.at ?? edges.length - 1) + 1)
      : edges.slice(nth === 0 ? 0 : counting[nth - 1]!.at + 1, at + 2),
  );
}

const filledIn = ({ left, right }: Block, run: readonly Row[]): number =>
  run.filter(({ segments }) =>
    segments.some(words => words[0]!.left >= left - 1 && words.at(-1)!.right <= right + 1),
  ).length;

const wordsIn = ({ left, right }: Block, run: readonly Row[]): Word[] =>
  run.flatMap(({ segments }) =>
    segments.flat().filter(word => word.left >= left - 1 && word.right <= right + 1),
  );

/** Rows near enough to be one table: no more than two other lines, and no great gap, between them. */
function runsOf(rows: readonly Row[], lines: readonly Word[][][]): Row[][] {
  const runs: Row[][] = [];
  let before: Row | null = null;
  for (const row of rows) {
    const gap = before ? baseOf(lines[row.nth]!) - baseOf(lines[before.nth]!) : Infinity;
    if (!before || gap > 6 * sizeOf(row)) runs.push([]);
    runs.at(-1)!.push(row);
    before = row;
  }
  return runs;
}

const baseOf = (line: Word[][]): number => line[0]![0]!.base;
const sizeOf = (row: Row): number => row.segments[0]![0]!.size;

const unusedLines = (sheet: Sheet, used: ReadonlySet<Word>): Word[][] =>
  sheet.lines.flatMap(line => {
    const words = line.filter(word => !used.has(word));
    return words.length > 0 ? [words] : [];
  });

/** A line cut at wide gaps and at upright lines. */
function cut(line: readonly Word[], { uprights }: Sheet): Word[][] {
  return segmentsOf(line).flatMap(segment => {
    const parts: Word[][] = [[]];
    segment.forEach((word, at) => {
      const before = segment[at - 1];
      const y = word.base - 0.3 * word.size;
      if (
        before &&
        uprights.some(
          rule => rule.at > before.right - 1 && rule.at < word.left + 1 && rule.from < y && rule.to > y,
        )
      )
        parts.push([]);
      parts.at(-1)!.push(word);
    });
    return parts;
  });
}

/** Where runs of words begin, end or have their middle: those of a column share one of the three. */
class Places {
  private readonly counts = [new Map<number, number>(), new Map<number, number>(), new Map<number, number>()];

  constructor(segments: readonly Word[][]) {
    for (const words of segments)
      this.keys(words).forEach((key, nth) => {
        const counts = this.counts[nth]!;
        counts.set(key, (counts.get(key) ?? 0) + 1);
      });
  }

  shared(words: readonly Word[]): boolean {
    return this.keys(words).some((key, nth) => {
      const counts = this.counts[nth]!;
      return (counts.get(key - 1) ?? 0) + (counts.get(key) ?? 0) + (counts.get(key + 1) ?? 0) > fewestLines;
    });
  }

  private keys(words: readonly Word[]): number[] {
    const [left, right] = [words[0]!.left, words.at(-1)!.right];
    return [left, right, (left + right) / 2].map(x => Math.round(x / 1.5));
  }
}
