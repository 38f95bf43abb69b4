import recognizers from '@microsoft/recognizers-text-suite';
import { demoLists } from '../../api/demo/lists/index.ts';
import { builtReader } from '../support/built-reader.ts';
import { hostileLine, hostilePieces } from '../support/hostile-lines.ts';
import { inTurns, type Measured, timesTheTime } from './measured.ts';
import { tokenise } from './plain-tokens.ts';

/**
 * What a general recogniser finds of the same facts: the numbers, the counts of a row and the sizes with their units. The lists
 * are in English, which is the language it is told; its models are made once and kept by it.
 */
function recognise(line: string): number {
  const { recognizeNumber, recognizeOrdinal, recognizeDimension, Culture } = recognizers;
  const { English } = Culture;
  return (
    recognizeNumber(line, English).length +
    recognizeOrdinal(line, English).length +
    recognizeDimension(line, English).length
  );
}

/** Lines read a second, beside plain tokenising and beside a general recogniser, over the demo bench's lines. */
export async function benchReading(): Promise<Measured[]> {
  const read = await builtReader();
  const lines = demoLists.flatMap(list => list.text.split('\n').filter(line => line.trim() !== ''));
  const over = (use: (line: string) => unknown, some: string[]) => () => {
    for (const line of some) use(line);
    return some.length;
  };
  const few = lines.filter((_, index) => index % 10 === 0);
  const rates = inTurns(
    {
      reading: over(line => read(line), lines),
      tokens: over(tokenise, lines),
      recogniser: over(recognise, few),
    },
    3,
  );
  const { reading = 0, tokens: plain = 0, recogniser = 0 } = rates;
  return [
    {
      what: 'lines read',
      perSecond: reading,
      unit: 'lines',
      note: timesTheTime(reading, plain, 'plain tokenising'),
    },
    {
      what: 'lines cut into plain tokens with their places',
      perSecond: plain,
      unit: 'lines',
      note: 'by one regular expression, nothing folded and nothing looked up',
    },
    {
      what: 'lines given to @microsoft/recognizers-text-suite',
      perSecond: recogniser,
      unit: 'lines',
      note: `reading is ${(reading / recogniser).toFixed(0)} times as fast`,
    },
    ...hostileLines(read),
  ];
}

/** Nanoseconds a character at 10 kB, 100 kB and 1 MB, for the hostile line that is slowest at 1 MB. */
function hostileLines(read: (line: string) => unknown): Measured[] {
  const perCharacter = (piece: string, length: number) => {
    const line = hostileLine(piece, length);
    let best = Number.POSITIVE_INFINITY;
    for (let turn = 0; turn < 5; turn++) {
      const start = performance.now();
      read(line);
      best = Math.min(best, performance.now() - start);
    }
    return (best * 1e6) / length;
  };
  const lengths = [10_000, 100_000, 1_000_000];
  const slowest = lengths.map(length => Math.max(...hostilePieces.map(piece => perCharacter(piece, length))));
  return [
    {
      what: 'hostile lines of 1 MB read, the slowest of them',
      perSecond: 1e9 / (slowest[2]! * 1_000_000),
      unit: 'lines',
      note: `${slowest.map(ns => ns.toFixed(1)).join(', ')} ns a character at 10 kB, 100 kB, 1 MB`,
    },
  ];
}
