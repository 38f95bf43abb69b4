import { foldHeader, headerRoles } from '../reading/column-words.ts';
import { suits } from './cell-kinds.ts';
import type { Column } from './column.ts';
import { columnCells, type GridLine } from './grid.ts';
import { readQuantity } from './quantity.ts';

/**
 * Columns of quantities for one model each, with the model's name: a quantity's title with a name, or a name that is
 * no header word. What only multiplies another such column ("for 5 units") is no model's: null.
 */
export function modelColumns(
  columns: readonly Column[],
  sample: readonly GridLine[],
): Map<Column, string | null> {
  const models = new Map<Column, string | null>();
  for (const column of columns)
    if (isTitledForModel(column.title)) {
      const cells = columnCells(column.at, sample);
      if (cells.length > 0 && cells.every(cell => suits(cell, 'model') > 2))
        models.set(column, modelName(column.title));
    }
  const counting = columns.filter(column => countsIn(column.title) || models.has(column));
  const multiples = counting.filter(column =>
    counting.some(other => other !== column && isMultiple(column, other, sample)),
  );
  for (const column of multiples) models.set(column, null);
  const [only] = counting.filter(column => !multiples.includes(column));
  if (counting.length - multiples.length === 1 && countsIn(only!.title)) models.delete(only!);
  return models;
}

export const countsIn = (title: string): boolean => headerRoles(title)?.qty !== undefined;

/** True for a title that can be a model's: no word of headers, or one for quantities with more beside it. */
export function isTitledForModel(title: string): boolean {
  if (!title) return false;
  const roles = headerRoles(title);
  if (!roles) return true;
  return roles.qty !== undefined && (foldHeader(title).split(' ').length > 1 || roles.qty < 1);
}

/** True for a column that is some whole number of times another, row by row, and says which number. */
function isMultiple(column: Column, other: Column, sample: readonly GridLine[]): boolean {
  const times = Number(/(?<!\d)\d{1,3}(?!\d)/.exec(column.title)?.[0] ?? 0);
  if (times < 2) return false;
  const pairs = sample
    .map(({ cells }) => [column, other].map(({ at }) => readQuantity(cells[at] ?? '').qty))
    .filter(([own, single]) => own !== null && single !== null);
  return pairs.length >= 3 && pairs.every(([own, single]) => own === times * single!);
}

/** `Qty 2500` and `2500 (qty)` name the model 2500. */
export function modelName(title: string): string {
  const kept = title.split(/\s+/).filter(word => headerRoles(word)?.qty === undefined);
  return (kept.join(' ') || title).replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');
}
