import { suits } from './cell-kinds.ts';
import { foldHeader, headerRoles } from './column-words.ts';
import { columnCells, type GridLine } from './grid.ts';
import type { Column } from './layout.ts';

/** Columns of quantities for one model each: a quantity's title with a model's name, or a name that is no header word. */
export function modelColumns(columns: readonly Column[], sample: readonly GridLine[]): Map<Column, string> {
  const models = new Map<Column, string>();
  for (const column of columns) {
    if (!column.title) continue;
    const roles = headerRoles(column.title);
    const counted = roles?.qty !== undefined;
    if (
      (roles && !counted) ||
      (counted && foldHeader(column.title).split(' ').length === 1 && roles!.qty === 1)
    )
      continue;
    const cells = columnCells(column.at, sample);
    if (cells.length > 0 && cells.every(cell => suits(cell, 'model') > 2))
      models.set(column, modelName(column.title));
  }
  const sharing = columns.filter(column => column.title && headerRoles(column.title)?.qty !== undefined);
  if (models.size === 1 && sharing.length <= 1 && [...models.keys()][0] === sharing[0]) models.clear();
  return models;
}

/** `Qty 2500` and `2500 (qty)` name the model 2500. */
export function modelName(title: string): string {
  const kept = title.split(/\s+/).filter(word => headerRoles(word)?.qty === undefined);
  return (kept.join(' ') || title).replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');
}
