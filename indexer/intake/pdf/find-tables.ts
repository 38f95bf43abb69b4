import { type BuiltTable, buildTables } from './build-table.ts';
import { findHeaders } from './headers.ts';
import { regionOf } from './region.ts';
import type { Sheet } from './sheet.ts';
import type { Word } from './words.ts';

/** The parts lists on a sheet, in reading order, and the words that they take up. */
export function findTables(sheet: Sheet): { tables: BuiltTable[]; used: Set<Word> } {
  const headers = findHeaders(sheet);
  const used = new Set<Word>();
  const tables: BuiltTable[] = [];
  for (const header of headers) {
    if (header.titles.some(({ words }) => words.some(word => used.has(word)))) continue;
    const region = regionOf(header, sheet, headers);
    region.lines = region.lines
      .map(line => line.filter(word => !used.has(word)))
      .filter(line => line.length > 0);
    if (region.lines.length === 0) continue;
    for (const table of buildTables(region, sheet)) {
      tables.push(table);
      for (const word of table.words) used.add(word);
    }
  }
  return { tables, used };
}
