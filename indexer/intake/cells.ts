import { hasWord } from './cell-kinds.ts';
import type { Column } from './column.ts';
import type { GridLine } from './grid.ts';

/** What stands in a line's columns, by their meaning; '' where nothing does. */
export interface Cells {
  ref: string;
  partNumber: string;
  description: string;
  qty: string;
  remarks: string;
  price: string;
  unit: string;
  facts: string[];
  level: string;
  models: { model: string; text: string }[];
}

/** A line's cells under the columns of one list. What no column of a row takes is kept with the remarks, a bare number under its title. */
export function cellsOf(line: GridLine, group: readonly Column[]): Cells {
  const cells: Cells = {
    ref: '',
    partNumber: '',
    description: '',
    qty: '',
    remarks: '',
    price: '',
    unit: '',
    facts: [],
    level: '',
    models: [],
  };
  const more: string[] = [];
  for (const { at, role, model, title } of group) {
    const printed = line.cells[at] ?? '';
    const text = printed.replace(/\s+/g, ' ').trim();
    if (role === 'model') cells.models.push({ model: model!, text });
    if (!text || role === 'model') continue;
    if (role === 'size' || role === 'material') cells.facts.push(text);
    else if (role === 'other') more.push(title && !hasWord(text) ? `${title}: ${text}` : text);
    else if (role === 'description') cells.description = printed.trimEnd().replace(/(?<=\S)\s+/g, ' ');
    else cells[role] = text;
  }
  cells.remarks = [cells.remarks, ...cells.facts, ...more].filter(Boolean).join('; ');
  return cells;
}

/** What a line says, field by field in the order of a row. */
export const fieldsOf = (cells: Cells): string[] =>
  [
    cells.ref,
    cells.partNumber,
    cells.description,
    cells.qty,
    cells.remarks,
    cells.price,
    ...cells.models.map(({ text }) => text),
  ].filter(Boolean);

/** The same as one text. */
export const textOf = (cells: Cells): string => fieldsOf(cells).join('  ');

/** Points, bullets or blanks before a description are its depth in the assembly. */
export function indentOf(description: string): { text: string; depth: number | null } {
  const points = /^\s*((?:[.·•…>]\s*)+)(?=[\p{L}\d(])/u.exec(description);
  if (points) {
    const depth = points[1]!.replaceAll('…', '...').replace(/\s/g, '').length;
    return { text: description.slice(points[0].length).trim(), depth };
  }
  const blanks = /^ */.exec(description)![0].length;
  return { text: description.trim(), depth: blanks >= 2 ? Math.floor(blanks / 2) : null };
}
