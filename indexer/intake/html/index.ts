import type { Grid } from '../grid.ts';
import { GridBuilder } from '../grid-builder.ts';
import { type MarkupHandler, markupParser } from '../markup.ts';
import { isHidden } from './hidden.ts';
import { blocks, PageText } from './page-text.ts';
import { OpenTable } from './tables.ts';

const headings = new Set(['h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'caption']);

/** The tables of a page as a grid, each with the headings above it, and the page's text for where it has no tables. */
export function readHtml(html: string, mostRows: number): { grid: Grid; text: () => string } {
  const reader = new PageReader(new GridBuilder(mostRows));
  const parser = markupParser(reader, { xml: false });
  parser.end(html);
  return reader.end();
}

/** Reads a page once, top to bottom; nothing it names is fetched, nothing in it runs. */
class PageReader implements MarkupHandler {
  private readonly builder: GridBuilder;
  private readonly page = new PageText();
  private readonly tables: OpenTable[] = [];
  private count = 0;
  private heading: string | null = null;
  private above: string[] = [];
  private unseen = 0;

  constructor(builder: GridBuilder) {
    this.builder = builder;
  }

  open(name: string, attributes: Readonly<Record<string, string>>): void {
    if (this.unseen > 0 || isHidden(name, attributes)) {
      this.unseen += 1;
      return;
    }
    this.page.open(name);
    const table = this.tables.at(-1);
    if (name === 'table') this.openTable();
    else if (headings.has(name) && !table?.inCell) this.heading = '';
    else if (!table) return;
    else if (name === 'tr') table.openRow();
    else if (name === 'td' || name === 'th') table.openCell(attributes);
    else if (name === 'br') table.add('\n');
    else if (name === 'sup' || blocks.has(name)) table.part();
  }

  close(name: string): void {
    if (this.unseen > 0) {
      this.unseen -= 1;
      return;
    }
    this.page.close(name);
    const table = this.tables.at(-1);
    if (headings.has(name) && this.heading !== null) this.closeHeading();
    else if (!table) return;
    else if (name === 'table') this.closeTable(table);
    else if (name === 'tr') table.closeRow();
    else if (name === 'td' || name === 'th') table.closeCell();
    else if (blocks.has(name)) table.part();
  }

  text(text: string): void {
    if (this.unseen > 0) return;
    this.page.add(text);
    const plain = text.replace(/[ \t\r\n\f]+/g, ' ');
    if (this.heading !== null) this.heading += plain;
    else this.tables.at(-1)?.add(plain);
  }

  end(): { grid: Grid; text: () => string } {
    for (const table of this.tables.splice(0)) table.close();
    const { grid } = this.builder;
    // A table within another ends before it: lines are put where their tables begin.
    grid.lines.sort((a, b) => a.stretch! - b.stretch!);
    return { grid, text: () => this.page.toString() };
  }

  private openTable(): void {
    this.count += 1;
    for (const text of this.above.splice(0)) this.addHeading(text, this.count);
    this.tables.push(new OpenTable(this.count, this.builder));
  }

  private closeTable(table: OpenTable): void {
    table.close();
    this.tables.pop();
  }

  private closeHeading(): void {
    const text = this.heading!.trim();
    this.heading = null;
    const table = this.tables.at(-1);
    if (table) this.addHeading(text, table.number);
    else this.above = [text];
  }

  private addHeading(text: string, stretch: number): void {
    this.builder.add({ page: 1, place: `above table ${stretch}`, stretch, cells: [text] });
  }
}
