import type { ColumnMeaning } from '../reading/column-meanings.ts';
import { assignRoles, scoreRoles } from './assign-roles.ts';
import type { Column, Layout } from './column.ts';
import type { GridLine } from './grid.ts';
import { startsByContent, startsByTitle } from './lists-beside.ts';
import { modelColumns, modelName } from './model-columns.ts';

const sampleSize = 300;

/** The layout of a table from its header cells (null where it has none) and its lines together. */
export function findLayout(header: readonly string[] | null, lines: readonly GridLine[]): Layout {
  const sample = sampleOf(lines);
  const width = widthOf(header, sample);
  const titles = Array.from({ length: width }, (_, at) => header?.[at]?.trim() ?? '');
  const groups = header ? startsByTitle(titles) : startsByContent(sample, width);
  return groups.map((start, nth) =>
    findColumns(titles, sample, start, groups[nth + 1] ?? width, header !== null),
  );
}

/** The layout that roles from left to right make; columns whose order repeats are lists side by side. */
export function layoutOf(roles: readonly ColumnMeaning[], titles: readonly string[] | null): Layout {
  const first = roles.find(role => role !== 'other');
  const groups: Layout = [];
  roles.forEach((role, at) => {
    const title = titles?.[at]?.trim() ?? '';
    const column: Column = { at, role, title };
    if (role === 'model') column.model = modelName(title) || `column ${at + 1}`;
    const repeats =
      role === first && groups.length > 0 && groups.at(-1)!.some(({ role: used }) => used === first);
    if (groups.length === 0 || (repeats && first !== 'model')) groups.push([column]);
    else groups.at(-1)!.push(column);
  });
  return groups;
}

/** The first lines of a table, together, for references are known by running on. */
function sampleOf(lines: readonly GridLine[]): readonly GridLine[] {
  const sample: GridLine[] = [];
  for (const line of lines) {
    if (!line.faulted && !line.continued && !line.hidden) sample.push(line);
    if (sample.length === sampleSize) break;
  }
  return sample;
}

/** The cells that a column without a title must fill, as a share of the lines, to be one rather than a slip. */
const leastFilled = 0.4;

function widthOf(header: readonly string[] | null, sample: readonly GridLine[]): number {
  const widest = sample.reduce((most, line) => Math.max(most, line.cells.length), 1);
  if (!header) return widest;
  let width = header.length;
  const fills = (at: number) => sample.filter(line => line.cells[at]?.trim()).length;
  while (width < widest && fills(width) >= leastFilled * sample.length) width += 1;
  return width;
}

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
  const models = named ? modelColumns(columns, sample) : new Map<Column, string | null>();
  const open = columns.filter(column => !models.has(column));
  const scores = open.map(column => scoreRoles(column, sample, named));
  const assigned = assignRoles(scores);
  open.forEach((column, nth) => {
    column.role = assigned[nth] ?? 'other';
  });
  for (const [column, model] of models) if (model !== null) Object.assign(column, { role: 'model', model });
  // Prices with and without tax, and what has no title: kept, but not as a part's own fact.
  return columns;
}
