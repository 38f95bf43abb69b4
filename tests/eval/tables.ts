import { readRows } from '../../indexer/intake/document.ts';
import { formats, kinds, makeDocument } from '../documents/make-lists.ts';
import { type Score, score, sum } from '../documents/score.ts';
import { unread } from '../indexer/intake/unread.ts';
import { percent } from './percent.ts';

const told = ({ lines, found, extra, inversions, qty, description, relations, variants }: Score) =>
  `found ${percent(found, lines)}, extra ${percent(extra, lines)}, out of order ${inversions}, quantity ${percent(qty, lines)}, description ${percent(description, lines)}, relations ${percent(...relations)}, counts for models ${percent(...variants)}`;

/**
 * How well tables of every layout are read in every format, so many lists of each, each with its truth. Prints those
 * with a fault, then the sums, by format and in all.
 */
export function evaluateTables(lists: number, first = 1000): void {
  const all: Score[] = [];
  for (const format of formats) {
    const scores: Score[] = [];
    for (const kind of kinds.filter(one => !one.not?.includes(format)))
      for (let seed = first; seed < first + lists; seed += 1) {
        const { list, bytes } = makeDocument(kind, format, seed);
        const one = score(list.lines, readRows(bytes, 'list', unread));
        scores.push(one);
        if (one.wrong.length > 0)
          console.log(
            `${kind.name}, ${format} (${seed}, ${list.language}): ${one.wrong.slice(0, 3).join('\n  ')}`,
          );
      }
    console.log(`${format}: ${scores.length} documents; ${told(sum(scores))}`);
    all.push(...scores);
  }
  const whole = sum(all);
  console.log(`\n${all.length} documents, ${whole.lines} lines: ${told(whole)}`);
}
