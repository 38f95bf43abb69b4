import { hiddenRows, hiddenSheet, noStoredResult, tooManyColumns } from '../faults.ts';
import type { GridLine } from '../grid.ts';
import { type GridBuilder, mostColumns } from '../grid-builder.ts';
import type { Attributes, MarkupHandler } from '../markup.ts';
import { applyMerges, type Merge } from '../merged-cells.ts';
import { sheetPlace } from '../sheet-place.ts';
import { CellText } from './cell-text.ts';

interface OpenSheet {
  page: number;
  place: string;
  /** The number of the row now read. */
  row: number;
  lines: Map<number, GridLine>;
  merges: Merge[];
  hidden: { first: GridLine; count: number } | null;
  wide: GridLine | null;
}

interface OpenRow {
  repeated: number;
  hidden: boolean;
  column: number;
  cells: string[];
  dates: number[];
  unknown: boolean;
}

const repeats = (attributes: Attributes, name: string): number =>
  Math.max(1, Math.floor(Number(attributes[name] ?? 1)) || 1);

/** Reads the sheets of an OpenDocument spreadsheet (OpenDocument 1.3 part 3, chapter 9) into lines, texts as they are shown. */
export class SheetsReader implements MarkupHandler {
  sheets = 0;
  private readonly builder: GridBuilder;
  private readonly words = new CellText();
  /** Styles of tables that are not displayed. */
  private readonly hiddenStyles = new Set<string>();
  private style = '';
  private sheet: OpenSheet | null = null;
  private row: OpenRow | null = null;
  private cell: Attributes | null = null;
  /** Tables within a cell, and sheets that are hidden: left out. */
  private skipped = 0;

  constructor(builder: GridBuilder) {
    this.builder = builder;
  }

  open(name: string, attributes: Attributes): void {
    if (name === 'table') this.openTable(attributes);
    else if (this.skipped > 0) return;
    else if (name === 'style') this.style = attributes['style:name'] ?? '';
    else if (name === 'table-properties' && attributes['table:display'] === 'false')
      this.hiddenStyles.add(this.style);
    else if (name === 'table-row' && this.sheet) this.row = openRow(attributes);
    else if ((name === 'table-cell' || name === 'covered-table-cell') && this.row) this.cell = attributes;
    else if (this.cell) this.words.open(name, attributes);
  }

  text(text: string): void {
    if (this.cell) this.words.add(text);
  }

  close(name: string): void {
    if (name === 'table') this.closeTable();
    else if (this.skipped > 0) return;
    else if (name === 'table-row') this.closeRow();
    else if (name === 'table-cell' || name === 'covered-table-cell') this.closeCell();
    else if (this.cell) this.words.close(name);
  }

  private openTable(attributes: Attributes): void {
    if (this.skipped > 0 || this.sheet) {
      this.skipped += 1;
      return;
    }
    this.sheets += 1;
    const page = this.sheets;
    const place = sheetPlace(attributes['table:name'] ?? '', page);
    if (this.hiddenStyles.has(attributes['table:style-name'] ?? '')) {
      this.builder.grid.faults.push(hiddenSheet(page, place));
      this.skipped = 1;
    } else this.sheet = { page, place, row: 0, lines: new Map(), merges: [], hidden: null, wide: null };
  }

  private closeTable(): void {
    if (this.skipped > 0) {
      this.skipped -= 1;
      return;
    }
    const { sheet } = this;
    this.sheet = null;
    if (!sheet) return;
    applyMerges(sheet.lines, sheet.merges);
    const { faults } = this.builder.grid;
    if (sheet.hidden) faults.push(hiddenRows(sheet.hidden.first, sheet.hidden.count));
    if (sheet.wide) faults.push(tooManyColumns(sheet.wide, mostColumns));
  }

  private closeCell(): void {
    const { cell, row, sheet } = this;
    this.cell = null;
    const text = this.words.take();
    if (!cell || !row || !sheet) return;
    const repeated = repeats(cell, 'table:number-columns-repeated');
    const columns = repeats(cell, 'table:number-columns-spanned');
    const rows = repeats(cell, 'table:number-rows-spanned');
    if (columns > 1 || rows > 1) sheet.merges.push({ row: sheet.row + 1, column: row.column, rows, columns });
    const broken = /^(?:#[A-Z/0!?]+|Err:\d+)$/.test(text.trim()) && cell['table:formula'] !== undefined;
    if (broken) row.unknown = true;
    else if (text.trim()) this.fill(row, text, repeated, cell['office:value-type'] === 'date');
    row.column += repeated;
  }

  private fill(row: OpenRow, text: string, repeated: number, isDate: boolean): void {
    const end = Math.min(row.column + repeated, mostColumns + 1);
    while (row.cells.length < Math.min(row.column, mostColumns + 1)) row.cells.push('');
    for (let at = row.column; at < end; at += 1) {
      row.cells[at] = text;
      if (isDate) row.dates.push(at);
    }
  }

  private closeRow(): void {
    const { row, sheet } = this;
    this.row = null;
    if (!row || !sheet) return;
    const tooWide = row.cells.length > mostColumns;
    row.cells.length = Math.min(row.cells.length, mostColumns);
    const { cells, dates, hidden, unknown } = row;
    // A blank row may be repeated a million times, to the end of the sheet.
    const times = cells.some(cell => cell.trim()) ? row.repeated : 0;
    for (let nth = 1; nth <= times; nth += 1) {
      const number = sheet.row + nth;
      const line = this.builder.add({
        page: sheet.page,
        place: `${sheet.place}, row ${number}`,
        stretch: sheet.page,
        cells,
        ...(dates.length > 0 && { dates }),
        ...(hidden && { hidden }),
      });
      if (!line) break;
      sheet.lines.set(number, line);
      if (unknown) this.builder.grid.faults.push(noStoredResult(line));
      if (tooWide) sheet.wide ??= line;
      if (hidden)
        sheet.hidden = { first: sheet.hidden?.first ?? line, count: (sheet.hidden?.count ?? 0) + 1 };
    }
    sheet.row += row.repeated;
  }
}

const openRow = (attributes: Attributes): OpenRow => ({
  repeated: repeats(attributes, 'table:number-rows-repeated'),
  hidden: /^(?:collapse|filter)$/.test(attributes['table:visibility'] ?? ''),
  column: 0,
  cells: [],
  dates: [],
  unknown: false,
});
