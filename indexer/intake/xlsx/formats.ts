import { format, getFormatFromId, isDateFormat } from 'numfmt';
import { readXmlMember } from '../markup.ts';
import type { Zip } from '../zip.ts';

/** How a style shows its cells. */
export interface Format {
  pattern: string;
  isDate: boolean;
  /** Steps that the text stands to the right. */
  indent: number;
}

export const general: Format = { pattern: 'General', isDate: false, indent: 0 };

const longestPattern = 255;

/** The formats of cells by their style's number (ECMA-376 part 1, 18.8.10 and 18.8.30). */
export function readFormats(zip: Zip, member: string): Format[] {
  const patterns = new Map<number, string>();
  const formats: Format[] = [];
  let within = false;
  readXmlMember(zip, member, {
    open(name, attributes) {
      if (name === 'numFmt') patterns.set(Number(attributes['numFmtId']), attributes['formatCode'] ?? '');
      else if (name === 'cellXfs') within = true;
      else if (within && name === 'xf') formats.push(formatOf(Number(attributes['numFmtId'] ?? 0), patterns));
      else if (within && name === 'alignment' && formats.length > 0)
        formats.at(-1)!.indent = Math.min(Number(attributes['indent'] ?? 0) || 0, 15);
    },
    close(name) {
      if (name === 'cellXfs') within = false;
    },
    text() {},
  });
  return formats;
}

function formatOf(id: number, patterns: ReadonlyMap<number, string>): Format {
  const pattern = patterns.get(id) ?? builtIn(id);
  return pattern.length > longestPattern
    ? { ...general }
    : { pattern, isDate: isDateFormat(pattern), indent: 0 };
}

function builtIn(id: number): string {
  return String(getFormatFromId(id) ?? general.pattern);
}

/** A number as its cell shows it: 12 and not 12.0, all digits of a whole number. A pattern that makes no sense shows it plainly. */
export function showNumber(value: number, { pattern, isDate }: Format, from1904: boolean): string {
  if (pattern === general.pattern && Number.isSafeInteger(value)) return String(value);
  // Days from 1904 begin 1462 days after those from 1900 (ECMA-376 part 1, 18.17.4.1).
  const serial = isDate && from1904 ? value + 1462 : value;
  try {
    return format(pattern, serial, { throws: true }).trim() || String(value);
  } catch {
    return format(general.pattern, value);
  }
}
