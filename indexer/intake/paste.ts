import { clean } from './clean.ts';
import { hiddenCharacters, lineTooLong } from './faults.ts';
import type { Grid, GridLine } from './grid.ts';
import { Unreadable } from './unreadable.ts';

/** The longest line of a printed list, in characters; what is longer was never one line. */
const longestLine = 4000;

/**
 * Pasted text as a grid whose lines are still to be cut: its columns are parted by runs of blanks, tabs or single
 * blanks, and only all lines together tell where. `line` is the place, and a form feed turns the page.
 * @throws {Unreadable} `too-large` beyond `mostRows` lines
 */
export function readPaste(text: string, mostRows: number): Grid {
  const grid: Grid = { pages: 1, lines: [], faults: [] };
  let number = 0;
  let page = 1;
  for (const raw of text.split(/\r\n|[\n\r\u2028\u2029]/)) {
    number += 1;
    for (const [nth, part] of raw.split('\f').entries()) {
      if (nth > 0) page += 1;
      if (!part.trim()) continue;
      const line: GridLine = { page, place: `line ${number}`, cells: [] };
      const { text: seen, hidden, broken } = clean(part.length > longestLine ? part.slice(0, 200) : part);
      line.cells = [seen.trim()];
      if (part.length > longestLine) {
        line.faulted = 'line-too-long';
        grid.faults.push(lineTooLong(line, longestLine));
      } else line.text = seen;
      if (!seen.trim()) continue;
      if (broken) line.broken = true;
      if (hidden) grid.faults.push(hiddenCharacters(line));
      grid.lines.push(line);
      if (grid.lines.length > mostRows)
        throw new Unreadable('too-large', {
          place: line.place,
          message: `The list has more than ${mostRows} lines.`,
          remedy: 'Split it into several parts and send them one by one.',
        });
    }
  }
  grid.pages = page;
  return grid;
}
