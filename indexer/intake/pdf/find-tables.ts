import { type BuiltTable, buildTables, type ListShape } from './build-table.ts';
import { findHeaders } from './headers.ts';
import { regionOf } from './region.ts';
import type { Sheet } from './sheet.ts';
import { surroundings } from './surroundings.ts';
import { findUntitled, goOn } from './untitled.ts';
import type { Word } from './words.ts';

/**
 * The parts lists on a sheet, in reading order, and the words that they and what stands round a drawing take up. `before` are the columns of those on
 * the page before, which may go on here without titles.
 */
export function findTables(
  sheet: Sheet,
  before: readonly ListShape[] = [],
): { tables: BuiltTable[]; used: Set<Word> } {
  const headers = findHeaders(sheet);
  const used = surroundings(sheet, headers);
  const inside = { ...sheet, lines: without(used, sheet.lines) };
  const tables: BuiltTable[] = [];
  for (const header of headers) {
    if (header.titles.some(({ words }) => words.some(word => used.has(word)))) continue;
    const region = regionOf(header, inside, headers);
    region.lines = without(used, region.lines);
    if (region.lines.length === 0) continue;
    for (const table of buildTables(region, sheet)) {
      tables.push(table);
      for (const word of table.words) used.add(word);
    }
  }
  const take = (found: readonly BuiltTable[]) => {
    for (const table of found) for (const word of table.words) used.add(word);
    tables.push(...found);
  };
  if (tables.length === 0) take(goOn(before, sheet, used));
  if (tables.length === 0) take(findUntitled(sheet, used));
  return { tables, used };
}

const without = (used: ReadonlySet<Word>, lines: readonly Word[][]): Word[][] =>
  lines.map(line => line.filter(word => !used.has(word))).filter(line => line.length > 0);
