import type { GridLine } from './grid.ts';
import type { Fault } from './rows.ts';

/** What can be wrong with one line of a document, in words for the person who sent it. */
type Told = Pick<Fault, 'code' | 'message' | 'remedy'>;

const at = ({ page, place }: GridLine, told: Told): Fault => ({ page, place, ...told });

export const unclosedQuote = (line: GridLine): Fault =>
  at(line, {
    code: 'unclosed-quote',
    message:
      'A quotation mark is opened here and never closed, so the cells of this row cannot be told apart.',
    remedy: 'Close the quotation mark, or double it where an inch mark is meant, and send the file again.',
  });

export const lineTooLong = (line: GridLine, longest: number): Fault =>
  at(line, {
    code: 'line-too-long',
    message: `This line is longer than ${longest} characters; no line of a parts list is.`,
    remedy: 'Send the list again with one part on each line.',
  });

export const moreCells = (line: GridLine, width: number): Fault =>
  at(line, {
    code: 'more-cells-than-columns',
    message: `This row has ${line.cells.length} cells, the table has ${width} columns, so what belongs where is unknown.`,
    remedy: 'Put a cell that holds a separator into quotation marks, and send the file again.',
  });

export const hiddenCharacters = (line: GridLine): Fault =>
  at(line, {
    code: 'hidden-characters',
    message: 'Control characters or marks of writing direction stood in this line; they are left out.',
    remedy: 'Compare the line with the sheet, its part number above all.',
  });

export const brokenCharacters = (line: GridLine): Fault =>
  at(line, {
    code: 'broken-characters',
    message: 'Some characters of this row could not be read; they are shown as �.',
    remedy: 'Save the file again as UTF-8, or correct the row by hand.',
  });
