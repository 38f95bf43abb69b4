import { joinWrapped } from '../line-sort.ts';
import { readReference, refParts } from '../reference.ts';
import { type Columns, columnsOf } from './columns.ts';
import { groupLines, keysOf, lineOf, type PrintedLine } from './group-lines.ts';
import type { Title } from './headers.ts';
import type { Box } from './matrix.ts';
import type { Rule } from './page-content.ts';
import { type Region, segmentsOf } from './region.ts';
import { boxOf, type Sheet, textOf } from './sheet.ts';
import type { Word } from './words.ts';

/** One row of a table as it stands on the sheet. */
export interface TableRow {
  cells: string[];
  /** For each cell the one it is merged with; absent where none is. */
  merged?: number[];
  box: Box;
}

/** A list with its titles, in reading order. */
export interface BuiltTable {
  header: TableRow | null;
  rows: TableRow[];
  words: Word[];
  shape: ListShape;
}

/** What a list on a further page goes on in. */
export interface ListShape {
  /** None where it has no titles. */
  titles: string[];
  columns: Columns;
}

/** The lists that one header heads, lists side by side one after the other. */
export function buildTables(region: Region, sheet: Sheet): BuiltTable[] {
  const { header, lines, uprights } = region;
  const body = lines.flat();
  const all = [...body, ...header.titles];
  const outer = {
    left: Math.min(region.left, ...all.map(({ left }) => left)) - 1,
    right: Math.max(region.right, ...all.map(({ right }) => right)) + 1,
  };
  const inner = uprights.map(({ at }) => at).filter(at => at > outer.left + 2 && at < outer.right - 2);
  const samples = lines.filter(words => segmentsOf(words).length > 1).flat();
  const { edges } = columnsOf(header.titles, samples, inner, outer);
  return header.starts.map((start, nth) => {
    const end = header.starts[nth + 1] ?? header.titles.length;
    const columns = { edges: edges.slice(start, end + 1) };
    const from = nth === 0 ? -Infinity : columns.edges[0]!;
    const to = nth === header.starts.length - 1 ? Infinity : columns.edges.at(-1)!;
    const own = lines
      .map(words => words.filter(({ left, right }) => (left + right) / 2 >= from && (left + right) / 2 < to))
      .filter(words => words.length > 0);
    return buildTable(header.titles.slice(start, end), own, columns, region, sheet);
  });
}

function buildTable(
  titles: readonly Title[],
  lines: readonly Word[][],
  columns: Columns,
  region: Region,
  sheet: Sheet,
): BuiltTable {
  const shape = { titles: titles.map(({ text }) => text), columns };
  const rows = rowsOf(lines, shape, region.uprights, sheet);
  return {
    header: { cells: shape.titles, box: boxOf(titles) },
    rows: region.upwards && countsUpwards(rows) ? rows.reverse() : rows,
    words: [...titles.flatMap(({ words }) => words), ...lines.flat()],
    shape,
  };
}

/** A list whose titles stand on a page before, or nowhere. */
export function buildUntitled(lines: readonly Word[][], shape: ListShape, sheet: Sheet): BuiltTable {
  const { edges } = shape.columns;
  const uprights = sheet.uprights.filter(({ at }) => edges.some(edge => Math.abs(edge - at) < 4));
  return { header: null, rows: rowsOf(lines, shape, uprights, sheet), words: lines.flat(), shape };
}

function rowsOf(
  lines: readonly Word[][],
  { titles, columns }: ListShape,
  uprights: readonly Rule[],
  sheet: Sheet,
): TableRow[] {
  const printed = lines.map(words => lineOf(words, columns));
  const groups = groupLines(printed, keysOf(titles, printed), levelsOf(columns, sheet));
  return groups.map(group => rowOf(group, columns, uprights));
}

/** Level lines that reach over most of the table, top to bottom. */
function levelsOf({ edges }: Columns, { levels }: Sheet): number[] {
  const [left, right] = [edges[0]!, edges.at(-1)!];
  const found: number[] = [];
  for (let at = 0; at < levels.length; ) {
    const y = levels[at]!.at;
    let covered = 0;
    while (at < levels.length && levels[at]!.at < y + 1) {
      const { from, to } = levels[at]!;
      covered += Math.max(0, Math.min(to, right) - Math.max(from, left));
      at += 1;
    }
    if (covered > 0.6 * (right - left)) found.push(y);
  }
  return found;
}

function rowOf(group: readonly PrintedLine[], columns: Columns, uprights: readonly Rule[]): TableRow {
  const words = group.flatMap(line => line.words);
  const box = boxOf(words);
  if (group.length === 1 && reachesOver(group[0]!, columns, uprights)) {
    const count = columns.edges.length - 1;
    const cells = Array.from({ length: count }, (_, at) => (at === 0 ? textOf(words) : ''));
    return { cells, merged: cells.map(() => 0), box };
  }
  const cells = columns.edges
    .slice(1)
    .map((_, at) => group.reduce((text, line) => joinWrapped(text, textOf(line.cells[at]!)), ''));
  return { cells, box };
}

/** True for words that stand across columns: no upright line parts them, or their one run reaches from one column into another. */
function reachesOver(
  { words, cells, base, size }: PrintedLine,
  { edges }: Columns,
  uprights: readonly Rule[],
): boolean {
  if (segmentsOf(words).length !== 1 || edges.length < 4) return false;
  const box = boxOf(words);
  const inner = edges.slice(1, -1);
  const crossed = inner.filter(edge => box.left < edge - 1 && box.right > edge + 1);
  const filled = cells.filter(cell => cell.length > 0).length;
  return (
    (crossed.length > 0 && filled > 1) ||
    (uprights.length > 3 && !inner.some(edge => isRuledAt(edge, base - 0.3 * size, uprights)))
  );
}

const isRuledAt = (x: number, y: number, uprights: readonly Rule[]): boolean =>
  uprights.some(({ at, from, to }) => Math.abs(at - x) < 1.5 && from < y && to > y);

/** True for a list whose titles stand under it and that is read from them upwards. */
function countsUpwards(rows: readonly TableRow[]): boolean {
  const columns = rows[0]?.cells.length ?? 0;
  for (let at = 0; at < columns; at += 1) {
    const numbers = rows.flatMap(({ cells }) => {
      const reference = readReference(cells[at] ?? '');
      const parts = reference && refParts(reference.ref);
      return parts ? [parts.number] : [];
    });
    if (numbers.length < 0.6 * rows.length || new Set(numbers).size < 0.6 * numbers.length) continue;
    return numbers[0]! > numbers.at(-1)!;
  }
  return false;
}
