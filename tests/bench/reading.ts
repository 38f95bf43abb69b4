import recognizers from '@microsoft/recognizers-text-suite';
import { demoLists } from '../../api/demo/lists/index.ts';
import { read } from '../../indexer/index.ts';
import { inTurns, type Measured, timesTheTime } from './measured.ts';

/** Plain tokenising: words, numbers and single marks, nothing understood. The floor under any reader. */
const tokens = (line: string): number => line.match(/\p{L}+|\d+(?:[.,/]\d+)*|\S/gu)?.length ?? 0;

/** A general recogniser of numbers, dimensions and units, as a person without this project would use. */
function recognise(line: string): number {
  const { recognizeNumber, recognizeDimension, Culture } = recognizers;
  return recognizeNumber(line, Culture.English).length + recognizeDimension(line, Culture.English).length;
}

/** Lines read a second, beside plain tokenising and beside a general recogniser, over the demo bench's lines. */
export async function benchReading(): Promise<Measured[]> {
  const lines = demoLists.flatMap(list => list.text.split('\n').filter(line => line.trim() !== ''));
  const over = (use: (line: string) => unknown, some: string[]) => () => {
    for (const line of some) use(line);
    return some.length;
  };
  const few = lines.filter((_, index) => index % 10 === 0);
  const rates = inTurns(
    {
      reading: over(line => read(line), lines),
      tokens: over(tokens, lines),
      recogniser: over(recognise, few),
    },
    2,
  );
  const { reading = 0, tokens: plain = 0, recogniser = 0 } = rates;
  return [
    {
      what: 'lines read',
      perSecond: reading,
      unit: 'lines',
      note: timesTheTime(reading, plain, 'plain tokenising'),
    },
    { what: 'lines cut into plain tokens', perSecond: plain, unit: 'lines' },
    {
      what: 'lines given to @microsoft/recognizers-text-suite',
      perSecond: recogniser,
      unit: 'lines',
      note: `reading is ${(reading / recogniser).toFixed(0)} times as fast`,
    },
  ];
}
