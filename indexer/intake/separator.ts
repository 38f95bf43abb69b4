import { paperHeader } from './column-order.ts';
import { headerOf } from './header.ts';
import { escapeLoneQuotes } from './lone-quotes.ts';

const separators = [';', '\t', '|', ','] as const;
const sampleLength = 65_536;
const sampleLines = 200;

/**
 * The separator of a file of separated values; null where the text is not such a file: its lines do not agree on a
 * number of cells, or its cells hold columns parted by blanks.
 */
export function findSeparator(text: string): string | null {
  const sample = text.slice(0, sampleLength);
  let best: { separator: string; share: number } | null = null;
  for (const separator of separators) {
    const lines = escapeLoneQuotes(sample, separator)
      .replace(/"(?:[^"]|"")*"/g, cell => 'q'.repeat(Math.min(cell.length, 12)))
      .split(/\r\n|\n|\r/)
      .filter(line => line.trim());
    if (text.length > sampleLength && lines.length > 1) lines.pop();
    const share = agreement(lines.slice(0, sampleLines), separator);
    if (share > 0.5 && share > (best?.share ?? 0) + 0.1) best = { separator, share };
  }
  return best?.separator ?? null;
}

/** The share of lines that agree with most others on how many cells they have, at least two. */
function agreement(lines: readonly string[], separator: string): number {
  const cut = lines.map(line => line.split(separator));
  const rows = cut.filter(cells => cells.length > 1);
  if (rows.length < 2) return 0;
  const counts = new Map<number, number>();
  for (const cells of rows) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  const most = Math.max(...counts.values());
  const wide = rows.filter(cells => cells.filter(cell => /\S(?: {2,}|\t)\S/.test(cell)).length > 0);
  if (wide.length > rows.length * 0.5) return 0;
  const header = cut.slice(0, 20).some(cells => cells.length > 1 && headerOf(cells));
  // Commas part words too: without a header they must part closely and often.
  if (separator === ',' && !header) {
    const spaced = rows.filter(cells => cells.slice(1).some(cell => cell.startsWith(' ')));
    if (spaced.length > rows.length * 0.3 || (rows[0]?.length ?? 0) < 3) return 0;
    const paper = lines.slice(0, 20).some(line => !line.includes(',') && paperHeader(line));
    const worded = rows.filter(([first, next]) => /\p{L}{3}.*\d$/u.test(first!) && /^\d/.test(next!)).length;
    if (paper || worded > rows.length * 0.5) return 0;
  }
  // A line may leave out its empty last cells, or hold a separator of its own: near the usual count still agrees.
  const agreeing = header ? rows.length : most;
  return agreeing / lines.length;
}
