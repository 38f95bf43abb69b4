import fc from 'fast-check';
import { builtReader } from '../../support/built-reader.ts';
import { checkLine } from './check-line.ts';
import { anyLine, printedLines } from './lines.ts';

const randomLines = 1_000_000;
/** How often the memory is told, and how much it may grow after the first tenth, when caches are full. */
const [steps, mayGrow] = [20, 1.2];

/**
 * A million lines that nobody printed, each with a sound reading, or it throws with the line; then printed lines over and
 * over, every one made another by a number, while the resident memory is told. Answers whether it grew.
 */
export async function soakReading(
  lines: number,
  say: (line: string) => void,
): Promise<{ residents: number[]; grown: boolean }> {
  const tenth = Math.min(randomLines, lines) / 10;
  for (let part = 1; part <= 10; part++) {
    fc.assert(fc.property(anyLine, checkLine), { numRuns: tenth });
    say(`${(part * tenth).toLocaleString('en')} random and mutated lines read soundly`);
  }
  const read = await builtReader();
  const residents: number[] = [];
  const started = performance.now();
  for (let at = 1; at <= lines; at++) {
    // A number of its own, so that a reader that remembered lines would show it.
    read(`${printedLines[at % printedLines.length]} ${at}`);
    if (at % Math.ceil(lines / steps) !== 0 && at !== lines) continue;
    const resident = process.memoryUsage().rss;
    residents.push(resident);
    const rate = at / ((performance.now() - started) / 1000);
    say(
      `${at.toLocaleString('en').padStart(12)} lines, ${Math.round(resident / 1e6)} MB resident, ${Math.round(rate).toLocaleString('en')} lines/s`,
    );
  }
  const settled = Math.max(...residents.slice(0, Math.ceil(steps / 10)));
  return { residents, grown: residents.at(-1)! > settled * mayGrow };
}
