import type { GridLine } from '../grid.ts';
import { type GridBuilder, mostColumns } from '../grid-builder.ts';
import type { Attributes } from '../markup.ts';
import { applyMerges, type Merge } from '../merged-cells.ts';

/** The longest text of a cell, in characters, and the most rows that one reaches over. */
const longestText = 65_536;
const mostSpanned = 65_534;

interface OpenCell {
  column: number;
  text: string;
}

/** One table of a page on its way (HTML, "Forming a table"): cells find their columns past those that reach down. */
export class OpenTable {
  readonly number: number;
  private readonly builder: GridBuilder;
  private readonly lines = new Map<number, GridLine>();
  private readonly merges: Merge[] = [];
  /** For each column, the last row that a cell of an earlier row reaches over. */
  private readonly reaches: number[] = [];
  private row = 0;
  private cells: string[] | null = null;
  private column = 0;
  private cell: OpenCell | null = null;

  constructor(number: number, builder: GridBuilder) {
    this.number = number;
    this.builder = builder;
  }

  get inCell(): boolean {
    return this.cell !== null;
  }

  openRow(): void {
    this.closeRow();
    this.row += 1;
    this.cells = [];
    this.column = 0;
  }

  openCell(attributes: Attributes): void {
    this.closeCell();
    if (!this.cells) this.openRow();
    while ((this.reaches[this.column] ?? 0) >= this.row) this.column += 1;
    const columns = span(attributes['colspan'], mostColumns);
    const rows = attributes['rowspan'] === '0' ? mostSpanned : span(attributes['rowspan'], mostSpanned);
    const { column, row } = this;
    this.cell = { column, text: '' };
    this.column += columns;
    if (columns > 1 || rows > 1) this.merges.push({ row, column, rows, columns });
    if (rows > 1)
      for (let at = column; at < Math.min(column + columns, mostColumns); at += 1)
        this.reaches[at] = row + rows - 1;
  }

  add(text: string): void {
    if (this.cell && this.cell.text.length <= longestText) this.cell.text += text;
  }

  /** Parts what follows from what stands before it. */
  part(): void {
    if (this.cell && /\S$/.test(this.cell.text.slice(-1))) this.cell.text += ' ';
  }

  closeCell(): void {
    const { cell, cells } = this;
    this.cell = null;
    if (!cell || !cells || cell.column >= mostColumns) return;
    const text = cell.text.replace(/[ \t\r\f]*\n[ \t\r\n\f]*/g, ' ').replace(/[ \t]+/g, ' ');
    while (cells.length < cell.column) cells.push('');
    cells[cell.column] = text.replace(/^ | $/g, '');
  }

  closeRow(): void {
    this.closeCell();
    const { cells } = this;
    this.cells = null;
    if (!cells) return;
    const place = `table ${this.number}, row ${this.row}`;
    const line = this.builder.add({ page: 1, place, stretch: this.number, cells });
    if (line) this.lines.set(this.row, line);
  }

  close(): void {
    this.closeRow();
    applyMerges(this.lines, this.merges);
  }
}

function span(attribute: string | undefined, most: number): number {
  const number = Number.parseInt(attribute ?? '1', 10);
  return Math.min(Math.max(number || 1, 1), most);
}
