import type { Printed } from './lay-out.ts';
import type { Chance } from './random.ts';

/** Separated values; cells that need it are quoted. */
export function writeSeparated(rows: readonly Printed[], separator: string, newline = '\r\n'): string {
  const width = Math.max(...rows.map(({ cells }) => cells.length));
  const quoted = (cell: string) =>
    /["\n\r]/.test(cell) || cell.includes(separator) ? `"${cell.replaceAll('"', '""')}"` : cell;
  return rows
    .map(
      ({ cells }) =>
        [...cells, ...Array<string>(width - cells.length).fill('')].map(quoted).join(separator) + newline,
    )
    .join('');
}

/** Signs that are two columns wide on a screen of equal letters. */
const wideSigns = /[\u3000-\u9fff\uff01-\uff60]/g;
const widthOf = (text: string): number => text.length + (text.match(wideSigns)?.length ?? 0);

/** Columns that blanks part, as a list is copied from a page; `gap` blanks at least. */
export function writeColumns(rows: readonly Printed[], gap: number): string {
  const tabular = rows.filter(({ kind }) => kind !== 'wide');
  const widths: number[] = [];
  for (const { cells } of tabular)
    cells.forEach((cell, at) => {
      widths[at] = Math.max(widths[at] ?? 0, widthOf(cell));
    });
  const padded = (cell: string, at: number) => cell + ' '.repeat(widths[at]! - widthOf(cell) + gap);
  return rows
    .map(({ kind, cells }) => (kind === 'wide' ? cells[0]! : cells.map(padded).join('')).trimEnd())
    .join('\n');
}

/** The same with tabs between the cells. */
export const writeTabs = (rows: readonly Printed[]): string =>
  rows.map(({ cells }) => cells.join('\t')).join('\n');

/** Columns that blanks part raggedly, as a list comes through a mail: cells that are blank leave no gap of their own. */
export function writeRagged(rows: readonly Printed[], chance: Chance): string {
  const gap = () => (chance.in100(15) ? '\t' : ' '.repeat(chance.whole(2, 8)));
  return rows
    .map(
      ({ cells }) =>
        ' '.repeat(chance.whole(0, 2)) +
        cells.filter(Boolean).reduce((line, cell) => line + (line ? gap() : '') + cell, ''),
    )
    .join('\n');
}

/** The same with one blank only: what a list is after a careless copy. */
export const writeSingle = (rows: readonly Printed[]): string =>
  rows.map(({ cells }) => cells.filter(Boolean).join(' ')).join('\n');
