import { clean } from './clean.ts';
import { type Heading, paperHeader } from './column-order.ts';
import { cutSection, type PrintedLine, usualShapes } from './cut-section.ts';
import { hiddenCharacters, lineTooLong } from './faults.ts';
import type { Grid } from './grid.ts';
import { Unreadable } from './unreadable.ts';

/** The longest line of a printed list, in characters; what is longer was never one line. */
const longestLine = 4000;

/**
 * Pasted text, its columns parted by runs of blanks, tabs or single blanks, as a grid; `line` is the place, and a
 * form feed turns the page. The order of the columns comes from the header where there is one, else from the order
 * that explains the lines best.
 * @throws {Unreadable} `too-large` beyond `mostRows` lines
 */
export function readPaste(text: string, mostRows: number): Grid {
  const grid: Grid = { pages: 1, lines: [], faults: [] };
  const printed = printedLines(text, grid, mostRows);
  const shapes = usualShapes(printed);
  let section: PrintedLine[] = [];
  let heading: Heading | null = null;
  for (const line of printed) {
    const next = line.faulted ? null : paperHeader(line.text);
    if (next) {
      cutSection(section, heading, shapes);
      section = [];
      heading = next;
      line.cells = next.cells;
    } else section.push(line);
  }
  cutSection(section, heading, shapes);
  grid.lines = printed.map(({ text: _, ...line }) => line);
  return grid;
}

function printedLines(text: string, grid: Grid, mostRows: number): PrintedLine[] {
  const printed: PrintedLine[] = [];
  let number = 0;
  let page = 1;
  for (const raw of text.split(/\r\n|[\n\r\u2028\u2029]/)) {
    number += 1;
    for (const [nth, part] of raw.split('\f').entries()) {
      if (nth > 0) page += 1;
      if (!part.trim()) continue;
      const line: PrintedLine = { page, place: `line ${number}`, cells: [], text: '' };
      const { text: seen, hidden, broken } = clean(part.length > longestLine ? part.slice(0, 200) : part);
      line.cells = [seen.trim()];
      if (part.length > longestLine) {
        line.faulted = 'line-too-long';
        grid.faults.push(lineTooLong(line, longestLine));
      } else line.text = seen;
      if (!seen.trim()) continue;
      if (broken) line.broken = true;
      if (hidden) grid.faults.push(hiddenCharacters(line));
      printed.push(line);
      if (printed.length > mostRows)
        throw new Unreadable('too-large', {
          place: line.place,
          message: `The list has more than ${mostRows} lines.`,
          remedy: 'Split it into several parts and send them one by one.',
        });
    }
  }
  grid.pages = page;
  return printed;
}
