import { foldHeader, headerRoles, headerWords, isTitle } from '../reading/column-words.ts';
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
  const named = new Map<Column, string>();
  for (const column of columns)
    if (isTitledForModel(column.title)) {
      const cells = columnCells(column.at, sample);
      if (cells.length > 0 && cells.every(cell => suits(cell, 'model') > 2))
        named.set(column, modelName(column.title));
    }
  const models = new Map<Column, string | null>(withoutShared(named));
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

/** `Qty 2500`, `No. req. 2500` and `2500 (qty)` name the model 2500. */
export function modelName(title: string): string {
  let words = title.split(/\s+/);
  for (let length = words.length - 1; length > 0; length -= 1) {
    const [before, behind] = [isQuantity(words.slice(0, length)), isQuantity(words.slice(-length))];
    if (!before && !behind) continue;
    words = before ? words.slice(length) : words.slice(0, -length);
    length = words.length;
  }
  return trimmed(words.join(' ')) || trimmed(title);
}

/** Whether words are a title of quantities, letters set apart as Japanese sheets print them too: 員 数. */
function isQuantity(words: readonly string[]): boolean {
  const title = foldHeader(words.join(' '));
  return (headerWords.get(title) ?? headerWords.get(title.replaceAll(' ', '')))?.qty !== undefined;
}

const trimmed = (text: string) => text.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');

/** Names without the words of headers that all of them begin with: `Number 1000`, `Number 2500`. */
function withoutShared(names: Map<Column, string>): Map<Column, string> {
  const [first, ...others] = [...names.values()].map(name => name.split(' '));
  if (!first || others.length === 0) return names;
  const shared = first.findIndex(
    (word, at) => !isTitle(word) || others.some(other => other[at] !== word || other.length === at + 1),
  );
  if (shared <= 0) return names;
  return new Map([...names].map(([column, name]) => [column, name.split(' ').slice(shared).join(' ')]));
}
