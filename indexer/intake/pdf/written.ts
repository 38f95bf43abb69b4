import type { Written } from '../rows.ts';
import { areaOf } from './add-table.ts';
import type { PageContent } from './page-content.ts';
import { segmentsOf } from './region.ts';
import { boxOf, type Sheet, textOf } from './sheet.ts';

/** What is kept of one page: no sheet has more to look for. */
const mostPlaces = 3000;
const longest = 200;

/** What is written on a page, cut where wide gaps part it, each piece with its place. */
export function writtenOn(page: number, sheets: readonly Sheet[], content: PageContent): Written[] {
  const found: Written[] = [];
  for (const sheet of sheets)
    for (const line of sheet.lines)
      for (const words of segmentsOf(line)) {
        if (found.length === mostPlaces) return found;
        found.push({ page, text: textOf(words).slice(0, longest), ...areaOf(boxOf(words), sheet, content) });
      }
  return found;
}
