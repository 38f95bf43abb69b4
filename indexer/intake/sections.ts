import { isTitle } from '../reading/column-words.ts';
import { type Heading, joinHeader, paperHeader } from './column-order.ts';
import { filled, type GridLine, titlesOf } from './grid.ts';
import { headerOf } from './header.ts';
import { countsIn } from './model-columns.ts';

/** Lines under one header, or under none. */
export interface Section {
  /** The cells of the header; null where there is none. */
  titles: readonly string[] | null;
  headerLines: GridLine[];
  /** What a printed header can mean, where its lines are still to be cut. */
  heading: Heading | null;
  lines: GridLine[];
}

/** Cuts a document at its headers, which come again on every page, and where a sheet or a table ends. */
export function cutAtHeaders(lines: readonly GridLine[]): Section[] {
  const sections: Section[] = [];
  let stretch: number | undefined;
  for (let at = 0; at < lines.length; at += 1) {
    const line = lines[at]!;
    const below = lines[at + 1];
    const header = headerAt(line, below?.stretch === line.stretch ? below : undefined);
    if (header) sections.push({ ...header, lines: [] });
    else {
      if (sections.length === 0 || line.stretch !== stretch) sections.push(headless());
      sections.at(-1)!.lines.push(line);
    }
    stretch = line.stretch;
    if (header && header.headerLines.length > 1) at += 1;
  }
  return sections;
}

const headless = (): Section => ({ titles: null, headerLines: [], heading: null, lines: [] });

/** The header that begins at a line, with the line below it where that belongs to it; null where none does. */
function headerAt(line: GridLine, below: GridLine | undefined): Omit<Section, 'lines'> | null {
  if (line.faulted || line.hidden) return null;
  if (line.text !== undefined) {
    const upper = paperHeader(line.text);
    if (!upper) return null;
    line.cells = upper.cells;
    const both = below?.text !== undefined && !below.faulted ? joinHeader(upper, below.text) : null;
    const heading = both ?? upper;
    return { titles: heading.cells, headerLines: both ? [line, below!] : [line], heading };
  }
  if (!mayBeHeader(line)) return null;
  const titles = titlesOf(line);
  const both = below && !below.faulted && below.text === undefined ? joined(line, below) : null;
  if (both && (isSecondLine(line, below!) || fillsUp(line, below!, both)) && headerOf(both))
    return { titles: both, headerLines: [line, below!], heading: null };
  return headerOf(titles) ? { titles, headerLines: [line], heading: null } : null;
}

const mayBeHeader = (line: GridLine): boolean =>
  filled(line).length > 1 && filled(line).every(cell => cell.length <= 60);

/** Titles over two lines as one; what is merged over both is said once. */
function joined(upper: GridLine, lower: GridLine): string[] {
  const [over, under] = [titlesOf(upper), titlesOf(lower)];
  return Array.from({ length: Math.max(over.length, under.length) }, (_, at) => {
    const words = [over[at]?.trim() ?? '', under[at]?.trim() ?? ''];
    return (words[0] === words[1] ? words[0]! : words.join(' ')).trim();
  });
}

/** A second header line names models, units or the rest of a title; it has no part's name or number. */
function isSecondLine(upper: GridLine, lower: GridLine): boolean {
  const cells = filled(lower);
  if (cells.length === 0) return false;
  if (lower.cells.every((cell, at) => !cell.trim() || goesUnder(upper.cells[at]?.trim() ?? '', cell, at)))
    return true;
  if (headerOf(lower.cells)) return false;
  return cells.every(cell => cell.length <= 12) && lower.cells.slice(0, 2).every(cell => !cell.trim());
}

/** The longest name of a model in a header, in characters. */
const longestModel = 24;

/** A word that stands where the line above has none, makes a title with the one above, or names one of its models. */
const goesUnder = (over: string, cell: string, at: number): boolean =>
  over ? isTitle(`${over} ${cell}`) || (countsIn(over) && cell.trim().length <= longestModel) : at > 0;

const titled = (cells: readonly string[]): number =>
  (headerOf(cells) ?? []).filter(roles => roles !== null).length;

/** Two lines of titles of which each tells columns that the other leaves blank. */
function fillsUp(upper: GridLine, lower: GridLine, both: string[]): boolean {
  return headerOf(lower.cells) !== null && titled(both) > Math.max(titled(upper.cells), titled(lower.cells));
}
