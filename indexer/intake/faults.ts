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

export const turnedIntoDate = (line: GridLine, shown: string): Fault =>
  at(line, {
    code: 'turned-into-date',
    message: `A spreadsheet turned this into a date: "${shown}". What was typed is lost.`,
    remedy: 'Put the row right by the printed sheet; in the spreadsheet, give the column the format "text".',
  });

export const noStoredResult = (line: GridLine): Fault =>
  at(line, {
    code: 'no-stored-result',
    message: 'A formula of this row has no stored result, or an error as its result; its cell is left empty.',
    remedy: 'Open the file in a spreadsheet program, let it calculate, save it and send it again.',
  });

/** Rows of a sheet that are hidden; the line is the first of them. */
export const hiddenRows = (line: GridLine, count: number): Fault =>
  at(line, {
    code: 'hidden-rows',
    message: `${count === 1 ? 'A row is' : `${count} rows are`} hidden here; what is hidden is not read.`,
    remedy: 'Where hidden rows belong to the list, show them, clear the filter, and send the file again.',
  });

export const hiddenSheet = (page: number, place: string): Fault => ({
  page,
  place,
  code: 'hidden-sheet',
  message: 'This sheet is hidden; it is not read.',
  remedy: 'Where it belongs to the list, show it and send the file again.',
});

export const tooManyColumns = (line: GridLine, most: number): Fault =>
  at(line, {
    code: 'too-many-columns',
    message: `Cells beyond the ${most}th column are not read; no parts list is that wide.`,
    remedy: 'Where the list stands there, move it to the left and send the file again.',
  });
