import { headerRoles } from '../../reading/column-words.ts';
import { strongestRole } from '../header.ts';
import { readReference } from '../reference.ts';
import { type BuiltTable, buildUntitled, type ListShape } from './build-table.ts';
import { blocksOf, columnAt } from './columns.ts';
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

/** A line of a list: its reference stands where references do, and something beside it. */
function fitsIn(words: readonly Word[], { titles, columns }: ListShape): boolean {
  const filled = new Set(words.map(word => columnAt(columns, word)));
  if (filled.size < Math.min(3, titles.length) || segmentsOf(words).length < 2) return false;
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
    return aligned.length >= fewestColumns ? [{ nth, segments: aligned }] : [];
  });
  const found: BuiltTable[] = [];
  for (const run of runsOf(rows, lines)) {
    if (run.length < fewestLines) continue;
    const table = tableOf(run, lines, sheet);
    if (table) found.push(table);
  }
  return found;
}

interface Row {
  nth: number;
  segments: Word[][];
}

function tableOf(run: readonly Row[], lines: readonly Word[][][], sheet: Sheet): BuiltTable | null {
  const segments = run.flatMap(row => row.segments);
  const blocks = blocksOf(segments.map(words => ({ left: words[0]!.left, right: words.at(-1)!.right })));
  const size = segments[0]![0]!.size;
  const filled = blocks.map(block => filledIn(block, run));
  if (filled.filter(count => count >= 0.3 * run.length).length < fewestColumns) return null;
  // Remarks stand in few of the lines, one under the other.
  const columns = blocks.filter((_, at) => filled[at]! >= Math.max(2, 0.06 * run.length));
  const left = columns[0]!.left - 0.5 * size;
  const right = Math.max(...columns.map(block => block.right)) + 0.5 * size;
  const edges = [left, ...columns.slice(1).map((block, at) => (columns[at]!.right + block.left) / 2), right];
  const body = lines.slice(run[0]!.nth, run.at(-1)!.nth + 1).flatMap(line => {
    const words = line.flat().filter(word => word.right > left && word.left < right);
    return words.length > 0 ? [words] : [];
  });
  return buildUntitled(body, { titles: [], columns: { edges } }, sheet);
}

const filledIn = ({ left, right }: { left: number; right: number }, run: readonly Row[]): number =>
  run.filter(({ segments }) =>
    segments.some(words => words[0]!.left >= left - 1 && words.at(-1)!.right <= right + 1),
  ).length;

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
