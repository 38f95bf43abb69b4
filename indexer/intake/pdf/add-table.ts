import type { GridBuilder } from '../grid-builder.ts';
import type { BuiltTable, TableRow } from './build-table.ts';
import type { Box } from './matrix.ts';
import type { PageContent } from './page-content.ts';
import type { Sheet } from './sheet.ts';
import { turnedBack } from './words.ts';

interface Place {
  page: number;
  sheet: Sheet;
  content: PageContent;
  /** Rows of this page before the table. */
  rows: number;
}

let stretches = 0;

/** Adds a table's titles and rows to the grid, in reading order; gives how many rows the page then has. */
export function addTable(
  { header, rows }: BuiltTable,
  { page, sheet, content, rows: before }: Place,
  builder: GridBuilder,
): number {
  stretches += 1;
  let count = before;
  const add = ({ cells, merged, box }: TableRow, place: string) =>
    builder.add({
      page,
      place,
      stretch: stretches,
      cells,
      ...(merged && { merged }),
      area: areaOf(box, sheet, content),
    });
  if (header) add(header, 'titles');
  for (const row of rows) {
    count += 1;
    add(row, `row ${count}`);
  }
  return count;
}

/** A box of the turned sheet as shares of the shown page. */
export function areaOf({ left, top, right, bottom }: Box, { angle }: Sheet, page: PageContent): Box {
  const [x1, y1] = turnedBack(left, top, angle, page);
  const [x2, y2] = turnedBack(right, bottom, angle, page);
  const share = (number: number, whole: number) => Math.round((10_000 * number) / whole) / 10_000;
  return {
    left: share(Math.min(x1, x2), page.width),
    top: share(Math.min(y1, y2), page.height),
    right: share(Math.max(x1, x2), page.width),
    bottom: share(Math.max(y1, y2), page.height),
  };
}
