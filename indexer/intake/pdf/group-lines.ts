import { headerRoles, type Role } from '../../reading/column-words.ts';
import { hasWord } from '../cell-kinds.ts';
import { strongestRole } from '../header.ts';
import { continues } from '../line-sort.ts';
import { type Columns, columnAt } from './columns.ts';
import { textOf } from './sheet.ts';
import type { Word } from './words.ts';

/** One line of print with its words by columns. */
export interface PrintedLine {
  base: number;
  size: number;
  words: Word[];
  cells: Word[][];
}

export const lineOf = (words: Word[], columns: Columns): PrintedLine => {
  const cells: Word[][] = Array.from({ length: columns.edges.length - 1 }, () => []);
  for (const word of words) cells[columnAt(columns, word)]!.push(word);
  return { base: words[0]!.base, size: words[0]!.size, words, cells };
};

/** What the titles say of the columns that tell one row from the next. */
export interface Keys {
  /** Columns of which a row has one entry: reference, number, quantity. */
  keys: number[];
  description: number;
}

export function keysOf(titles: readonly string[], lines: readonly PrintedLine[]): Keys {
  if (titles.length === 0) return keysByContent(lines);
  const roles = titles.map(title => {
    const found = headerRoles(title);
    return found ? strongestRole(found) : null;
  });
  const telling = new Set<Role | null>(['ref', 'partNumber', 'qty', 'price', 'model']);
  const keys = roles.flatMap((role, at) => (telling.has(role) ? [at] : []));
  return { keys, description: roles.indexOf('description') };
}

/** The same without titles: the widest column of words describes, columns that hardly hold words tell rows apart. */
function keysByContent(lines: readonly PrintedLine[]): Keys {
  const count = lines[0]?.cells.length ?? 0;
  const cells = Array.from({ length: count }, (_, at) =>
    lines.flatMap(line => (line.cells[at]!.length > 0 ? [textOf(line.cells[at]!)] : [])),
  );
  const wordy = cells.map(texts => texts.filter(hasWord).length / Math.max(texts.length, 1));
  const letters = cells.map((texts, at) =>
    wordy[at]! > 0.5 ? texts.reduce((sum, text) => sum + text.length, 0) : 0,
  );
  return {
    keys: cells.flatMap((texts, at) => (wordy[at]! < 0.3 && texts.length > 0.4 * lines.length ? [at] : [])),
    description: letters.indexOf(Math.max(...letters)),
  };
}

/** Lines of print that are one row of the table, together: a cell goes on in the next line, or stands in the middle of several. */
export function groupLines(
  lines: readonly PrintedLine[],
  { keys, description }: Keys,
  levels: readonly number[],
): PrintedLine[][] {
  const isFull = (line: PrintedLine) => keys.some(at => line.cells[at]!.length > 0);
  const full = lines.filter(isFull);
  const pitches = full.slice(1).map((line, at) => line.base - full[at]!.base);
  const pitch =
    pitches.length > 0
      ? (pitches.filter(gap => gap > 0.8 * full[0]!.size).sort((a, b) => a - b)[0] ?? Infinity)
      : Infinity;
  const reach = Math.max(
    ...lines.filter(isFull).map(({ cells }) => cells[description]?.at(-1)?.right ?? 0),
    ...lines
      .filter(line => !isFull(line) && line.cells[description]?.length)
      .map(({ cells }) => cells[description]!.at(-1)!.right),
  );
  const groups: PrintedLine[][] = [];
  let level = -1;
  for (const [nth, line] of lines.entries()) {
    const group = groups.at(-1);
    const before = lines[nth - 1];
    const band = levels.findLastIndex(y => y < line.base - 0.25 * line.size);
    const banded = levels.length > 1;
    const sameBand = banded && band === level && band >= 0 && band < levels.length - 1;
    level = band;
    const joins =
      group &&
      before &&
      canJoin(group, line, keys) &&
      (sameBand
        ? isOneRow(lines, nth, band, levels, keys)
        : !(banded && between(levels, before.base, line.base)) &&
          goesOn(group, before, line, lines[nth + 1], { isFull, pitch, description, reach }));
    if (joins) group.push(line);
    else groups.push([line]);
  }
  return groups;
}

const between = (levels: readonly number[], above: number, below: number): boolean =>
  levels.some(y => y > above && y < below);

/** No column of which a row has one entry may have two. */
const canJoin = (group: readonly PrintedLine[], line: PrintedLine, keys: readonly number[]): boolean =>
  !keys.some(
    (at, nth) => nth < 3 && line.cells[at]!.length > 0 && group.some(({ cells }) => cells[at]!.length > 0),
  );

/** Lines between two level lines are one row, if no more than one of them has a row's entries. */
function isOneRow(
  lines: readonly PrintedLine[],
  nth: number,
  band: number,
  levels: readonly number[],
  keys: readonly number[],
): boolean {
  const [top, bottom] = [levels[band]!, levels[band + 1]!];
  const within = lines.filter(({ base, size }) => base - 0.25 * size > top && base - 0.25 * size < bottom);
  return (
    keys.every(at => within.filter(({ cells }) => cells[at]!.length > 0).length <= 1) &&
    lines[nth] !== undefined
  );
}

interface Habit {
  isFull(line: PrintedLine): boolean;
  /** The least distance of two rows. */
  pitch: number;
  description: number;
  /** How far to the right descriptions reach. */
  reach: number;
}

/** True where a line belongs to the row of the line before, as its distance, its place and its words tell. */
function goesOn(
  group: readonly PrintedLine[],
  before: PrintedLine,
  line: PrintedLine,
  next: PrintedLine | undefined,
  habit: Habit,
): boolean {
  const gap = line.base - before.base;
  const filled = line.cells.flatMap((cell, at) => (cell.length > 0 ? [at] : []));
  const groupFull = group.some(habit.isFull);
  if (gap < 0.75 * line.size) return true;
  if (habit.isFull(line))
    return !groupFull && group.length < 4 && gap < 0.9 * habit.pitch && gap < 1.6 * line.size;
  if (
    !groupFull ||
    !filled.every(at => before.cells[at]!.length > 0 || group.some(({ cells }) => cells[at]!.length > 0))
  )
    return false;
  if (
    before.words[0]!.style !== line.words[0]!.style &&
    line.cells[habit.description]?.[0]?.style !== group[0]!.cells[habit.description]?.[0]?.style
  )
    return false;
  if (gap < 0.85 * habit.pitch && gap < 1.7 * line.size)
    return !next || !habit.isFull(next) || next.base - line.base > 0.95 * gap;
  if (gap > 1.15 * habit.pitch) return false;
  const own = line.cells[habit.description];
  const above = group.findLast(({ cells }) => cells[habit.description]?.length)?.cells[habit.description];
  if (!own?.length || !above) return filled.length === 1 && filled[0]! > habit.description;
  const start = group.find(({ cells }) => cells[habit.description]!.length > 0)!.cells[habit.description]![0]!
    .left;
  if (Math.abs(own[0]!.left - start) > 3 * line.size) return false;
  if (continues(textOf(above), textOf(own))) return true;
  return above.at(-1)!.right + 0.28 * line.size + (own[0]!.right - own[0]!.left) > habit.reach;
}
