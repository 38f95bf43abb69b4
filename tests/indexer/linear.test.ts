import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { read } from '../../indexer/index.ts';
import { StepCounter } from '../support/count-steps.ts';
import { hostileLine, hostilePieces } from '../support/hostile-lines.ts';

let counter: StepCounter;
beforeAll(() => {
  counter = new StepCounter();
});
afterAll(() => counter.close());

/** The steps of reading a piece over and over, once what is kept from line to line is there. */
function stepsOf(piece: string, length: number): number {
  const line = hostileLine(piece, length);
  read(line);
  return counter.count(() => read(line));
}

describe('no line takes more steps than its length', () => {
  test('steps are counted: twice the line is about twice the steps', () => {
    expect(stepsOf('5x', 200)).toBeGreaterThan(500);
    expect(stepsOf('5x', 2000)).toBeGreaterThan(stepsOf('5x', 200) * 5);
  });

  // Work that grows with the square of the length would come to four times the steps.
  test.each(hostilePieces.map(piece => [piece]))('%j without end', piece => {
    expect(stepsOf(piece, 3_500) / stepsOf(piece, 1_750)).toBeLessThan(3);
  });

  test.each(hostilePieces.map(piece => [piece]))(
    '%j up to a megabyte: its beginning is read, and said so',
    piece => {
      const short = stepsOf(piece, 10_000);
      for (const length of [100_000, 1_000_000])
        expect(stepsOf(piece, length), `${length}`).toBeLessThan(short * 2 + 5_000);
      const { notes, review, category } = read(hostileLine(piece, 10_000));
      expect(notes.join()).toContain('only the first 4000 characters');
      expect(review || category === 'not-a-part').toBe(true);
    },
  );
});
