import { attachingWords } from './availability-words.ts';
import type { Cells } from './cells.ts';
import type { GridLine } from './grid.ts';
import type { Habits } from './habits.ts';
import { continues, isNote } from './line-sort.ts';
import type { Row } from './rows.ts';

/** Words under the descriptions of a printed list are all of them the description's, also a number among them. */
export function unwrapped(line: GridLine, cells: Cells, habits: Habits, last: Row | undefined): Cells {
  const { text, indent, descriptionEdge: edge } = line;
  if (cells.ref || cells.partNumber || !cells.qty || !last?.qtyText) return cells;
  if (text === undefined || !habits.numbered || edge === undefined || edge <= 3) return cells;
  if (Math.abs(indent! - edge) > 1 || /\S(?: {2,}|\t)\S/.test(text)) return cells;
  return { ...cells, qty: '', description: text.trim().replace(/\s+/g, ' ') };
}

/**
 * True for the rest of a wrapped description of the row right before: its words say so, or its place does and its
 * first word would not have fitted on the line before, which is `lastLine` characters long.
 */
export function goesOn(line: GridLine, cells: Cells, habits: Habits, last: Row, lastLine: number): boolean {
  const { description } = cells;
  if (cells.models.some(({ text }) => text) || cells.price) return false;
  if (cells.qty) return last.qtyText === '' && habits.counted && Boolean(description) && habits.numbered;
  if (!description) return Boolean(cells.remarks);
  if (attachingWords.test(description)) return false;
  if (continues(last.description, description)) return true;
  const { indent, descriptionEdge: edge } = line;
  if (isNote(description) || indent === undefined || edge === undefined) return false;
  if (edge <= 3 || !habits.numbered || Math.abs(indent - edge) > 4) return false;
  const fits = lastLine + 1 + description.trim().split(' ', 1)[0]!.length < habits.width;
  return !fits && !isShout(description, last.description);
}

/** Capitals after small letters are a heading's. */
const isShout = (text: string, before: string): boolean =>
  !/\p{Ll}/u.test(text) && /\p{Ll}{2}/u.test(before) && /\p{Lu}{4}/u.test(text);
