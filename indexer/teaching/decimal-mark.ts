import type { Evidenced } from '../read.ts';
import type { DecimalMark } from '../reading/reading.ts';
import { type Lesson, Votes } from './lesson.ts';

const [leastVotes, margin] = [3, 4];

/** The mark before a document's decimals: of 1.200 and 1,200 it tells whether they are little more than one, or than a thousand. */
export class DecimalLesson implements Lesson<DecimalMark> {
  readonly #votes = new Votes<DecimalMark>();

  hear({ line }: Evidenced): void {
    if (!line) return;
    const marks = new Set<DecimalMark>();
    for (const { first } of line.measures) {
      const mark = markOf(line.tokens[first]!.text);
      if (mark) marks.add(mark);
    }
    for (const mark of marks) this.#votes.add(mark);
  }

  settle(): DecimalMark | null {
    return this.#votes.settle(leastVotes, margin);
  }
}

/** The decimal mark of a printed number, where it can be no mark of thousands; null where it has none or may be one. */
function markOf(number: string): DecimalMark | null {
  const at = number.search(/[.,]/);
  if (at < 0) return null;
  const thousands = number.length - at - 1 === 3 && at > 0 && number[0] !== '0';
  return thousands ? null : (number[at] as DecimalMark);
}
