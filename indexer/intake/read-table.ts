import { type Column, findLayout, headerOf, type Layout } from './columns.ts';
import type { Entry } from './entry.ts';
import { filled, type Grid, type GridLine } from './grid.ts';
import { isRule } from './line-sort.ts';
import { RowBuilder } from './row-builder.ts';

/** Rows in printed order, each with its cells under their meaning and what it stood under. */
export function readTable(grid: Grid): Entry[] {
  const builder = new RowBuilder(grid.faults);
  let section: GridLine[] = [];
  let header: string[] | null = null;
  let headed = false;
  const close = () => {
    if (section.length > 0) readSection(section, header, builder, headed);
    section = [];
  };
  const sections = cutAtHeaders(grid.lines);
  headed = sections.some(part => part.header !== null);
  for (const part of sections) {
    close();
    header = part.header?.cells ?? null;
    for (const line of part.headerLines) builder.skip(line, 'header');
    section = part.lines;
  }
  close();
  return builder.entries;
}

interface Section {
  header: { cells: string[] } | null;
  headerLines: GridLine[];
  lines: GridLine[];
}

/** A header is repeated on every page; a second line of it is read with the first. */
function cutAtHeaders(lines: readonly GridLine[]): Section[] {
  const sections: Section[] = [{ header: null, headerLines: [], lines: [] }];
  for (let at = 0; at < lines.length; at += 1) {
    const line = lines[at]!;
    if (line.faulted || line.roles || !mayBeHeader(line)) {
      sections.at(-1)!.lines.push(line);
      continue;
    }
    const below = lines[at + 1];
    const both = below && !below.faulted && !below.roles ? joined(line, below) : null;
    const alone = headerOf(line.cells);
    const twoLines = both && (isSecondLine(below!) || fillsUp(line, below!, both)) && headerOf(both);
    if (!alone && !twoLines) {
      sections.at(-1)!.lines.push(line);
      continue;
    }
    sections.push({
      header: { cells: twoLines ? both! : line.cells },
      headerLines: twoLines ? [line, below!] : [line],
      lines: [],
    });
    if (twoLines) at += 1;
  }
  return sections;
}

const mayBeHeader = (line: GridLine): boolean =>
  line.cells.length > 1 && filled(line).every(cell => cell.length <= 60);

const joined = (upper: GridLine, lower: GridLine): string[] =>
  Array.from({ length: Math.max(upper.cells.length, lower.cells.length) }, (_, at) =>
    `${upper.cells[at] ?? ''} ${lower.cells[at] ?? ''}`.trim(),
  );

/** A second header line names models, units or the rest of a title; it has no part's name or number. */
function isSecondLine(line: GridLine): boolean {
  const cells = filled(line);
  if (cells.length === 0 || headerOf(line.cells)) return false;
  return cells.every(cell => cell.length <= 12) && line.cells.slice(0, 2).every(cell => !cell.trim());
}

const titled = (cells: readonly string[]): number =>
  (headerOf(cells) ?? []).filter(roles => roles !== null).length;

/** Two lines of titles of which each tells columns that the other leaves blank. */
function fillsUp(upper: GridLine, lower: GridLine, both: string[]): boolean {
  return headerOf(lower.cells) !== null && titled(both) > Math.max(titled(upper.cells), titled(lower.cells));
}

function readSection(lines: GridLine[], header: string[] | null, builder: RowBuilder, headed: boolean): void {
  if (header === null && headed && !looksLikeList(lines)) {
    for (const line of lines) builder.skip(line, isRule(filled(line).join(' ')) ? 'header' : 'heading');
    return;
  }
  const roles = lines.find(line => line.roles)?.roles;
  const layout: Layout = roles
    ? groupsOf(
        roles.map((role, at) => ({
          at,
          role,
          title: header?.[at]?.trim() ?? '',
          ...model(role, header?.[at]),
        })),
      )
    : findLayout(header, lines);
  builder.read(lines, layout, header);
}

const model = (role: string, title: string | undefined) =>
  role === 'model' ? { model: title?.trim() ?? '' } : {};

/** Columns whose order repeats are lists side by side. */
function groupsOf(columns: Column[]): Layout {
  const first = columns.find(column => column.role !== 'other')?.role;
  const groups: Layout = [];
  for (const column of columns) {
    const repeats =
      column.role === first && groups.length > 0 && groups.at(-1)!.some(({ role }) => role === first);
    if (groups.length === 0 || repeats) groups.push([column]);
    else groups.at(-1)!.push(column);
  }
  return groups;
}

/** Lines above the first header are titles, unless they are a list of their own. */
function looksLikeList(lines: readonly GridLine[]): boolean {
  const rows = lines.filter(line => filled(line).length >= 3);
  return rows.length >= 3 && rows.length > lines.length * 0.6;
}
