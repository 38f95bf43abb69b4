import { suits } from './cell-kinds.ts';
import { foldHeader, headerRoles, type Role, type Roles } from './column-words.ts';
import type { GridLine } from './grid.ts';
import { readReference, refParts } from './reference.ts';

/** One column of a table: which cell of a line, what stands in it, and for a model's quantities, which model. */
export interface Column {
  at: number;
  role: Role;
  /** The header as printed; '' where there is none. */
  title: string;
  model?: string;
}

/** Columns that belong to one row; a sheet with lists side by side has several groups. */
export type Layout = Column[][];

/** Header words of each cell, or null when the line is no header: two roles at least, and most cells must be known. */
export function headerOf(cells: readonly string[]): (Roles | null)[] | null {
  const roles = cells.map(cell => (cell.trim() ? headerRoles(cell.trim()) : null));
  const known = roles.filter(role => role !== null);
  const printed = cells.filter(cell => cell.trim());
  const strongest = new Set(known.map(role => best(role)));
  const names = printed.filter((cell, at) => !headerRoles(cell.trim()) && at > 0 && cell.trim().length <= 12);
  if (strongest.size < 2 || known.length < 2) return null;
  return known.length >= 0.6 * printed.length || known.length + names.length === printed.length
    ? roles
    : null;
}

const best = (roles: Roles): Role =>
  (Object.entries(roles) as [Role, number][]).reduce((a, b) => (b[1] > a[1] ? b : a))[0];

const sampleSize = 300;

/** The layout of a table from its header cells (null where it has none) and its lines together. */
export function findLayout(header: readonly string[] | null, lines: readonly GridLine[]): Layout {
  const sample = lines.filter(line => !line.faulted).slice(0, sampleSize);
  const width = widthOf(header, sample);
  const titles = Array.from({ length: width }, (_, at) => header?.[at]?.trim() ?? '');
  const groups = groupStarts(titles, header ? titles.map(title => headerRoles(title)) : null, sample, width);
  return groups.map((start, nth) =>
    findColumns(titles, sample, start, groups[nth + 1] ?? width, header !== null),
  );
}

/** The cells that a column without a title must fill, as a share of the lines, to be one rather than a slip. */
const leastFilled = 0.4;

function widthOf(header: readonly string[] | null, sample: readonly GridLine[]): number {
  const widest = sample.reduce((most, line) => Math.max(most, line.cells.length), 1);
  if (!header) return widest;
  let width = header.length;
  while (width < widest && cellsOf(width, sample).length >= leastFilled * sample.length) width += 1;
  return width;
}

/** Where each of the lists side by side begins: at the first title's next appearance. */
function groupStarts(
  titles: readonly string[],
  roles: (Roles | null)[] | null,
  sample: readonly GridLine[],
  width: number,
): number[] {
  if (roles) {
    const first = titles.find(title => title !== '');
    const starts = titles.flatMap((title, at) => (title === first ? [at] : []));
    const descriptions = roles.filter(role => role && best(role) === 'description').length;
    return starts.length > 1 && descriptions === starts.length ? [0, ...starts.slice(1)] : [0];
  }
  for (const groups of [4, 3, 2]) {
    if (width % groups || width / groups < 3) continue;
    const size = width / groups;
    const alike = sample.filter(line => {
      const kinds = line.cells.map(cell => (readReference(cell) ? 'n' : /\p{L}{3}/u.test(cell) ? 'w' : 'c'));
      return (
        line.cells.length > size && kinds.slice(0, size).join('') === kinds.slice(size, 2 * size).join('')
      );
    });
    if (alike.length > sample.length * 0.6) return Array.from({ length: groups }, (_, nth) => nth * size);
  }
  return [0];
}

/** Roles that at most one column of a group has, the surest first. */
const single: Role[] = [
  'description',
  'ref',
  'partNumber',
  'qty',
  'price',
  'remarks',
  'size',
  'material',
  'unit',
  'level',
];
/** Roles that content alone can show. */
const shownByContent = new Set<Role>(['description', 'ref', 'partNumber', 'qty', 'price', 'remarks']);

function findColumns(
  titles: readonly string[],
  sample: readonly GridLine[],
  start: number,
  end: number,
  named: boolean,
): Column[] {
  const columns: Column[] = titles
    .slice(start, end)
    .map((title, nth) => ({ at: start + nth, role: 'other', title }));
  const models = modelColumns(columns, sample, named);
  const open = columns.filter(column => !models.has(column));
  const scores = open.map(column => scoreRoles(column, sample, named));
  const assigned = assign(scores);
  open.forEach((column, nth) => {
    column.role = assigned[nth] ?? 'other';
  });
  for (const [column, model] of models) Object.assign(column, { role: 'model', model });
  // Prices with and without tax, and what has no title: kept, but not as a part's own fact.
  return columns;
}

/** Columns of quantities for one model each: a quantity's title with a model's name, or a name that is no header word. */
function modelColumns(
  columns: readonly Column[],
  sample: readonly GridLine[],
  named: boolean,
): Map<Column, string> {
  const models = new Map<Column, string>();
  if (!named) return models;
  for (const column of columns) {
    if (!column.title) continue;
    const roles = headerRoles(column.title);
    const counted = roles?.qty !== undefined;
    if (
      (roles && !counted) ||
      (counted && foldHeader(column.title).split(' ').length === 1 && roles!.qty === 1)
    )
      continue;
    const cells = cellsOf(column.at, sample);
    if (cells.length > 0 && cells.every(cell => suits(cell, 'model') > 2))
      models.set(column, modelName(column.title));
  }
  const sharing = columns.filter(column => column.title && headerRoles(column.title)?.qty !== undefined);
  if (models.size === 1 && sharing.length <= 1 && [...models.keys()][0] === sharing[0]) models.clear();
  return models;
}

/** `Qty 2500` and `2500 (qty)` name the model 2500. */
function modelName(title: string): string {
  const kept = title.split(/\s+/).filter(word => headerRoles(word)?.qty === undefined);
  return (kept.join(' ') || title).replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');
}

function cellsOf(at: number, sample: readonly GridLine[]): string[] {
  return sample.map(line => line.cells[at]?.trim() ?? '').filter(Boolean);
}

type Scores = Partial<Record<Role, number>>;

/** For one column, how well each role fits: the header's word first, then what stands below it. */
function scoreRoles(column: Column, sample: readonly GridLine[], named: boolean): Scores {
  const cells = cellsOf(column.at, sample);
  const words = column.title ? headerRoles(column.title) : null;
  const scores: Scores = {};
  const fill = sample.length === 0 ? 0 : cells.length / sample.length;
  for (const role of single) {
    const word = words?.[role] ?? 0;
    if (!word && (words || !shownByContent.has(role))) continue;
    if (!word && cells.length === 0) continue;
    let content = cells.reduce((sum, cell) => sum + suits(cell, role), 0) / Math.max(cells.length, 1);
    if (role === 'ref') content += runs(cells) ? 2 : -1;
    if (role === 'qty' && cells.length > 4 && runs(cells)) content -= 3;
    if (role === 'partNumber') content += 2 * (new Set(cells).size / Math.max(cells.length, 1)) - 1;
    if (role === 'description') content += Math.min(averageLength(cells) / 10, 2) + fill;
    if (role === 'remarks') content += (named ? 0.5 : 0) - fill;
    scores[role] = 6 * word + Math.max(content, word ? -5 : -6);
  }
  return scores;
}

const averageLength = (cells: readonly string[]): number =>
  cells.reduce((sum, cell) => sum + cell.length, 0) / Math.max(cells.length, 1);

/** True for numbers that run on as a list's references do: each a little above the one before, few twice. */
export function runs(cells: readonly string[]): boolean {
  const numbers = cells.flatMap(cell => {
    const ref = readReference(cell);
    const parts = ref && refParts(ref.ref);
    return parts ? [parts.number] : [];
  });
  if (numbers.length < 3 || numbers.length < cells.length * 0.6) return false;
  const steps = numbers
    .slice(1)
    .filter((number, at) => number >= numbers[at]! && number - numbers[at]! <= 20);
  return steps.length >= 0.7 * (numbers.length - 1) && new Set(numbers).size > 0.6 * numbers.length;
}

/** One role for each column, each role once, with the greatest sum. */
function assign(scores: readonly Scores[]): (Role | undefined)[] {
  let bestSum = -1;
  let bestRoles: (Role | undefined)[] = [];
  const chosen: (Role | undefined)[] = scores.map(() => undefined);
  const candidates = single.map(role =>
    scores
      .map((score, at) => ({ at, score: score[role] ?? 0 }))
      .filter(({ score }) => score > 0)
      .sort((a, b) => b.score - a.score)
      .slice(0, 4),
  );
  const choose = (nth: number, sum: number) => {
    if (nth === single.length) {
      if (sum > bestSum) {
        bestSum = sum;
        bestRoles = [...chosen];
      }
      return;
    }
    for (const { at, score } of candidates[nth]!) {
      if (chosen[at] !== undefined) continue;
      chosen[at] = single[nth];
      choose(nth + 1, sum + score);
      chosen[at] = undefined;
    }
    choose(nth + 1, sum);
  };
  choose(0, 0);
  return bestRoles;
}
