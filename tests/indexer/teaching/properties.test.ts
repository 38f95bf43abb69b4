import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoLists } from '../../../api/demo/lists/index.ts';
import { read } from '../../../indexer/index.ts';
import { type ListedLine, teach } from '../../../indexer/teaching/index.ts';

const listed = (text: string): ListedLine => ({ text, under: '', parent: '' });

/** Reads lines together, as those of one document. */
function readTogether(texts: readonly string[]) {
  const lines = texts.map(listed);
  const taught = teach({ lines: () => lines, headers: [], front: [] });
  const reader = taught.reader();
  return { ...taught, readings: lines.map(line => reader.read(line)) };
}

const printed = demoLists.flatMap(list => list.text.split('\n').filter(line => line.trim() !== ''));
/** Lines that vote on unit, decimal mark and orders, and lines that such votes can change. */
const telling = [
  'Bearing 11x5x4',
  'Bearing 5x11x4',
  'Bearing 14x6x7',
  'Washer 0,5 x 4 x 8',
  'Washer 4.3x9x0.8',
  'Dowel pin 16 x 3',
  'Dowel pin 3 x 16',
  'Dowel pin 5 x 4',
  'Screw 6-32 x 1/2',
  'Screw M3x8',
  'Pin 0.5 x 2',
  'Shaft 8 x 1.200',
  'Tube 1/4 x 12',
];
const lines = fc.array(fc.constantFrom(...telling, ...printed), { maxLength: 24 });

describe('what a document teaches', () => {
  test('does not hang on the order of its rows', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(
        lines.chain(texts =>
          fc.tuple(fc.constant(texts), fc.shuffledSubarray(texts, { minLength: texts.length })),
        ),
        ([texts, shuffled]) => {
          const [one, other] = [readTogether(texts), readTogether(shuffled)];
          expect(other.unit).toBe(one.unit);
          expect(other.language).toBe(one.language);
          const readings = new Map(texts.map((text, at) => [text, one.readings[at]]));
          shuffled.forEach((text, at) => {
            expect(other.readings[at]).toEqual(readings.get(text));
          });
        },
      ),
      { numRuns: 200 },
    );
  });

  test('is nothing without votes: each line then reads as it does alone', { timeout: 60_000 }, () => {
    const silent = ['Knob', 'Handle', 'Ball 3', 'Pin 5 x 4', 'Bearing 14x6x7', 'Gear', 'Washer 4', 'Spring'];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...silent), { maxLength: 3 }), texts => {
        const { readings, language, unit } = readTogether(texts);
        texts.forEach((text, at) => {
          expect(readings[at]).toEqual(read(text, { lang: language ?? undefined }));
        });
        expect(unit === null || unit === 'mm').toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  test('is the same when the document is read again', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(lines, texts => {
        const taught = teach({ lines: () => texts.map(listed), headers: [], front: [] });
        const [one, again] = [taught.reader(), taught.reader()];
        for (const text of texts) expect(one.read(listed(text))).toEqual(again.read(listed(text)));
      }),
      { numRuns: 50 },
    );
  });
});
