import { hiddenRows, noStoredResult, tooManyColumns } from '../faults.ts';
import type { GridLine } from '../grid.ts';
import { type GridBuilder, mostColumns } from '../grid-builder.ts';
import type { Attributes, MarkupHandler } from '../markup.ts';
import { applyMerges, type Merge } from '../merged-cells.ts';
import { type Format, general, showNumber } from './formats.ts';
import { longestText, RichText } from './shared-strings.ts';

/** What the cells of all sheets refer to. */
export interface Shared {
  strings: readonly string[];
  formats: readonly Format[];
  from1904: boolean;
}

interface Cell {
  column: number;
  type: string;
  format: Format;
  value: string;
  formula: boolean;
}

/** One row on its way. */
interface OpenRow {
  number: number;
  hidden: boolean;
  cells: string[];
  dates: number[];
  /** A formula has no result that could be read. */
  unknown: boolean;
  tooWide: boolean;
}

/** The letters and the number of `AB12`; columns from 0. */
function placeOf(reference: string): { column: number; row: number } | null {
  const found = /^\$?([A-Z]{1,3})\$?(\d{1,7})$/i.exec(reference);
  if (!found) return null;
  let column = 0;
  for (const letter of found[1]!.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return { column: column - 1, row: Number(found[2]) };
}

/** Reads one sheet (ECMA-376 part 1, 18.3.1) into lines: stored results and never formulas, numbers as they are shown. */
export class SheetReader implements MarkupHandler {
  private readonly place: (row: number) => Pick<GridLine, 'page' | 'place' | 'stretch'>;
  private readonly shared: Shared;
  private readonly builder: GridBuilder;
  private readonly lines = new Map<number, GridLine>();
  private readonly merges: Merge[] = [];
  private readonly rich = new RichText();
  private row: OpenRow | null = null;
  private cell: Cell | null = null;
  private inValue = false;
  private lastRow = 0;
  private hidden: { first: GridLine; count: number } | null = null;
  private wide: GridLine | null = null;

  constructor(shared: Shared, builder: GridBuilder, place: SheetReader['place']) {
    this.shared = shared;
    this.builder = builder;
    this.place = place;
  }

  open(name: string, attributes: Attributes): void {
    if (name === 'row') this.openRow(attributes);
    else if (name === 'c' && this.row) this.openCell(attributes, this.row);
    else if (name === 'v') this.inValue = true;
    else if (name === 'f' && this.cell) this.cell.formula = true;
    else if (name === 'mergeCell') this.merge(attributes['ref'] ?? '');
    else this.rich.enter(name);
  }

  text(text: string): void {
    if (!this.cell) return;
    if (!this.inValue) this.rich.add(text);
    else if (this.cell.value.length <= longestText) this.cell.value += text;
  }

  close(name: string): void {
    if (name === 'v') this.inValue = false;
    else if (name === 'c') this.closeCell();
    else if (name === 'row') this.closeRow();
    else if (name === 'worksheet') this.end();
    else this.rich.leave(name);
  }

  private openRow({ r, hidden, outlineLevel }: Attributes): void {
    const number = Number(r) > this.lastRow ? Math.floor(Number(r)) : this.lastRow + 1;
    this.lastRow = number;
    // Rows of a group that is folded in are the parts of the assembly above them, and not out of sight for good.
    const away = /^(?:1|true)$/.test(hidden ?? '') && !Number(outlineLevel);
    this.row = { number, hidden: away, cells: [], dates: [], unknown: false, tooWide: false };
  }

  private openCell({ r, t, s }: Attributes, row: OpenRow): void {
    const column = (r && placeOf(r)?.column) ?? row.cells.length;
    this.cell = {
      column: typeof column === 'number' ? column : row.cells.length,
      type: t ?? 'n',
      format: this.shared.formats[Number(s ?? 0)] ?? general,
      value: '',
      formula: false,
    };
    this.rich.take();
  }

  private closeCell(): void {
    const { cell, row } = this;
    this.cell = null;
    if (!cell || !row) return;
    const text = this.show(cell, row);
    if (!text.trim()) return;
    if (cell.column >= mostColumns) {
      row.tooWide = true;
      return;
    }
    while (row.cells.length < cell.column) row.cells.push('');
    row.cells[cell.column] = '  '.repeat(cell.format.indent) + text;
    if (cell.type === 'd' || (cell.type === 'n' && cell.format.isDate)) row.dates.push(cell.column);
  }

  private show({ type, value, format, formula }: Cell, row: OpenRow): string {
    if (type === 'e' || (formula && !value.trim() && type !== 'str')) {
      row.unknown = true;
      return '';
    }
    if (type === 's') return this.shared.strings[Number(value)] ?? '';
    if (type === 'inlineStr') return this.rich.take();
    if (type === 'b') return value.trim() === '1' ? 'TRUE' : 'FALSE';
    const number = Number(value);
    if (type !== 'n' || !value.trim() || !Number.isFinite(number)) return value;
    return showNumber(number, format, this.shared.from1904);
  }

  private closeRow(): void {
    const { row } = this;
    this.row = null;
    if (!row) return;
    const { cells, dates, hidden } = row;
    const line = this.builder.add({
      ...this.place(row.number),
      cells,
      ...(dates.length > 0 && { dates }),
      ...(hidden && { hidden }),
    });
    if (!line) return;
    this.lines.set(row.number, line);
    if (row.unknown) this.builder.grid.faults.push(noStoredResult(line));
    if (row.tooWide) this.wide ??= line;
    if (hidden) this.hidden = { first: this.hidden?.first ?? line, count: (this.hidden?.count ?? 0) + 1 };
  }

  private merge(reference: string): void {
    const [from, to] = reference.split(':').map(placeOf);
    if (!from || !to || to.row < from.row || to.column < from.column) return;
    const { row, column } = from;
    this.merges.push({ row, column, rows: to.row - row + 1, columns: to.column - column + 1 });
  }

  private end(): void {
    applyMerges(this.lines, this.merges);
    const { faults } = this.builder.grid;
    if (this.hidden) faults.push(hiddenRows(this.hidden.first, this.hidden.count));
    if (this.wide) faults.push(tooManyColumns(this.wide, mostColumns));
  }
}
