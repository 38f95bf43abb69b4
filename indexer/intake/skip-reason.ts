import { type Cells, fieldsOf } from './cells.ts';
import type { GridLine } from './grid.ts';
import type { Habits } from './habits.ts';
import { isFooter, isNote, isTotal, isUnused, numberOrWords } from './line-sort.ts';
import { hasSize } from './part-facts.ts';
import { readReference } from './reference.ts';

/** One cell over three columns or more is a heading; no row of a list has such. */
export const spansTable = ({ cells, merged }: GridLine): boolean => {
  if (!merged || cells.filter(cell => cell.trim()).length !== 1) return false;
  const at = cells.findIndex(cell => cell.trim());
  return merged.filter(column => column === at).length >= 3;
};

/** Why a line of a table is no part; null for a part, also one without reference, number or quantity. */
export function reasonToSkip(cells: Cells, text: string, habits: Habits, spans: boolean): string | null {
  const numbered = numberOrWords(cells.partNumber).number !== '';
  const referred = readReference(cells.ref) !== null;
  if (!numbered && (referred ? isTotal(cells.description) && !cells.qty : isTotal(text))) return 'total';
  if (!(referred && (numbered || cells.qty)) && isFooter(text)) return 'footer';
  if (referred && !numbered && isUnused(cells.description) && (cells.description || isUnused(cells.remarks)))
    return 'empty';
  const alone = !referred && !numbered && !cells.qty && fieldsOf(cells).length === 1;
  if (alone && (spans || (!hasSize(text) && (habits.numbered || !/\p{L}/u.test(text)))))
    return isNote(text) ? 'note' : 'heading';
  return null;
}
