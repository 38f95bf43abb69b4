import type { ColumnMeaning, GivenColumns } from '../reading/column-meanings.ts';
import { foldHeader } from '../reading/column-words.ts';
import { suits } from './cell-kinds.ts';
import type { Layout } from './column.ts';
import { cutSection, usualShapes } from './cut-section.ts';
import type { Entry } from './entry.ts';
import { columnCells, filled, type Grid, type GridLine, titlesOf } from './grid.ts';
import { findLayout, layoutOf } from './layout.ts';
import { isRule } from './line-sort.ts';
import { RowBuilder } from './row-builder.ts';
import type { Table } from './rows.ts';
import { cutAtHeaders, type Section } from './sections.ts';

/** Sections of one table: those whose header reads the same, or one without a header. */
interface Sections {
  sections: Section[];
  layout: Layout | null;
  /** The layout by the first of them, found when it is first asked for. */
  firstLayout?: Layout;
}

/** Rows in printed order, each with its cells under their meaning and what it stood under; and the tables they stood in. */
export function readTables(grid: Grid, given: GivenColumns = []): { entries: Entry[]; tables: Table[] } {
  const builder = new RowBuilder(grid.faults);
  const sections = cutAtHeaders(grid.lines);
  const shapes = usualShapes(grid.lines);
  const tableOf = gather(sections);
  const headed = sections.some(section => section.titles !== null);
  const tables: Table[] = [];
  for (const section of sections) {
    for (const line of section.headerLines) builder.skip(line, 'header');
    if (section.lines.length === 0) continue;
    const table = tableOf.get(section)!;
    if (!table.layout) {
      const found = findTable(table, shapes);
      if (section.titles === null && (headed ? !looksLikeList(section.lines) : isAside(found, section))) {
        for (const line of section.lines)
          builder.skip(line, isRule(filled(line).join(' ')) ? 'header' : 'heading');
        continue;
      }
      const header = takeHeader(section, found);
      if (header) builder.skip(header, 'header');
      const meanings = given[tables.length];
      table.layout = meanings ? findTable(table, shapes, padded(meanings, found)) : found;
      tables.push(describe(section, table.layout));
    }
    builder.read(section.lines, table.layout, section.titles);
  }
  return { entries: builder.entries, tables };
}

/**
 * The table that each section belongs to. A header read again, on another page or sheet, goes on with its table, and
 * so does a page or sheet without one whose lines fit the table before.
 */
function gather(sections: readonly Section[]): ReadonlyMap<Section, Sections> {
  const byTitles = new Map<string, Sections>();
  const tables = new Map<Section, Sections>();
  let last: Sections | null = null;
  for (const section of sections) {
    const key = section.titles?.map(foldHeader).join('|');
    const known = key === undefined ? (last && goesOn(last, section) ? last : null) : byTitles.get(key);
    const table: Sections = known ?? { sections: [], layout: null };
    if (key !== undefined) byTitles.set(key, table);
    table.sections.push(section);
    tables.set(section, table);
    if (section.lines.length > 0) last = table;
  }
  return tables;
}

/** True for lines of another sheet that have under a table's titles what belongs there. */
function goesOn(table: Sections, { lines }: Section): boolean {
  const { titles, lines: before } = table.sections[0]!;
  if (titles === null || lines.length === 0 || lines[0]!.text !== undefined) return false;
  if (lines.some(({ cells }) => cells.length > titles.length)) return false;
  table.firstLayout ??= findLayout(titles, before);
  return table.firstLayout
    .flat()
    .filter(({ role }) => role === 'description' || role === 'ref' || role === 'partNumber')
    .every(({ at, role }) => {
      const cells = columnCells(at, lines);
      const fitting = cells.filter(cell => suits(cell, role) > 0).length;
      return cells.length >= lines.length * 0.5 && fitting >= cells.length * 0.8;
    });
}

/** What the columns of a table are, or are said to be; cuts its lines where that is still to be done. */
function findTable(
  table: Sections,
  shapes: ReadonlySet<string>,
  meanings?: readonly ColumnMeaning[],
): Layout {
  const lines = table.sections.flatMap(section => section.lines);
  const { titles, heading } = table.sections[0]!;
  if (lines.some(line => line.text !== undefined)) {
    const orders = meanings ? [[...meanings]] : undefined;
    return layoutOf(cutSection(lines, heading, shapes, orders), titles);
  }
  return meanings ? layoutOf(meanings, titles) : findLayout(titles, lines);
}

/** Columns whose cells show by themselves what they are. */
const telling = new Set<ColumnMeaning>(['ref', 'partNumber', 'qty', 'price']);

/** A first line of words where numbers stand in the lines below: a header in words that are not known. */
function takeHeader(section: Section, layout: Layout): GridLine | null {
  const [first, ...rest] = section.lines;
  if (section.titles !== null || first!.text !== undefined || first!.faulted || rest.length < 2) return null;
  if (filled(first!).some(cell => /\d/.test(cell))) return null;
  const columns = layout.flat().filter(({ at, role }) => telling.has(role) && first!.cells[at]?.trim());
  if (columns.length < 2 || columns.some(({ at, role }) => suits(first!.cells[at]!, role) > 0)) return null;
  section.titles = titlesOf(first!);
  section.lines = rest;
  for (const column of layout.flat()) column.title = section.titles[column.at]?.trim() ?? '';
  return first!;
}

/** What is said of the first columns alone leaves the others what no column of a row takes. */
const padded = (meanings: readonly ColumnMeaning[], found: Layout): ColumnMeaning[] =>
  Array.from({ length: Math.max(meanings.length, found.flat().length) }, (_, at) => meanings[at] ?? 'other');

/** A table as a person is told of it. */
function describe(section: Section, layout: Layout): Table {
  const { page, place } = section.headerLines[0] ?? section.lines[0]!;
  const sample = section.lines.filter(line => !line.faulted && filled(line).length > 1).slice(0, shownCells);
  const columns = layout.flat().map(({ at, title, role }) => ({
    title,
    meaning: role,
    cells: sample.map(({ cells }) => (cells[at] ?? '').trim().slice(0, longestCell)),
  }));
  return { page, place, columns };
}

/** How many cells of a column are told, and how much of each, in characters. */
const shownCells = 3;
const longestCell = 80;

/** One table of several that has neither references, numbers nor quantities: a menu, an address. */
const isAside = (layout: Layout, { lines }: Section): boolean =>
  lines[0]!.stretch !== undefined &&
  layout.flat().length > 1 &&
  !layout.flat().some(({ role }) => role === 'ref' || role === 'partNumber' || role === 'qty');

/** Lines above the first header are titles, unless they are a list of their own. */
function looksLikeList(lines: readonly GridLine[]): boolean {
  const rows = lines.filter(line => filled(line).length >= 3);
  return rows.length >= 3 && rows.length > lines.length * 0.6;
}
