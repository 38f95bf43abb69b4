import { hasWord, partNumberLike } from './cell-kinds.ts';
import { filled, type GridLine } from './grid.ts';
import { mostColumns } from './grid-builder.ts';

/** Cells that are one; the text stands in the first. Rows are numbered as the sheet does, columns from 0. */
export interface Merge {
  row: number;
  column: number;
  rows: number;
  columns: number;
}

/** Steps over all merges of a sheet: they may not overlap, but who says that they do not? */
const mostSteps = 2_000_000;

/**
 * Tells the lines of a sheet, by their row, what their merged cells mean: a cell merged over columns says so, one
 * merged over rows stands in each of them. Where only words stand beside merged numbers, they go on from the row above.
 */
export function applyMerges(lines: ReadonlyMap<number, GridLine>, merges: readonly Merge[]): void {
  const above = new Map<GridLine, Map<number, string>>();
  let steps = 0;
  for (const { row, column, rows, columns } of merges) {
    if (column >= mostColumns) continue;
    const text = lines.get(row)?.cells[column]?.trim() ?? '';
    for (let at = row; at < row + rows && steps < mostSteps; at += 1) {
      steps += 1;
      const line = lines.get(at);
      if (!line) continue;
      if (columns > 1) spread(line, column, columns);
      if (at > row && text) above.set(line, (above.get(line) ?? new Map()).set(column, text));
    }
  }
  for (const [line, cells] of above) fillDown(line, cells);
}

function spread(line: GridLine, column: number, columns: number): void {
  const end = Math.min(column + columns, mostColumns);
  while (line.cells.length < end) line.cells.push('');
  const merged = Array.from(line.cells, (_, at) => line.merged?.[at] ?? at);
  for (let at = column; at < end; at += 1) merged[at] = column;
  line.merged = merged;
}

function fillDown(line: GridLine, above: ReadonlyMap<number, string>): void {
  const [own, ...more] = filled(line);
  const numbered = [...above.values()].some(text => !hasWord(text));
  if (own && more.length === 0 && numbered && hasWord(own) && partNumberLike(own) === 0)
    line.continued = true;
  else
    for (const [at, text] of above) {
      while (line.cells.length <= at) line.cells.push('');
      line.cells[at] ||= text;
    }
}
