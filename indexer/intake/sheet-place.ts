import { clean } from './clean.ts';

const longestName = 60;

/** How a sheet is named to a person: `sheet Parts`, by its number where it has no name. */
export function sheetPlace(name: string, number: number): string {
  const shown = clean(name.replace(/\s+/g, ' ')).text.trim().slice(0, longestName);
  return `sheet ${shown || number}`;
}
