import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Reading, read } from '../../indexer/index.ts';
import { checkLine } from '../soak/reading/check-line.ts';
import { anyLine, printedLines } from '../soak/reading/lines.ts';

/** The short form of `npm run soak -- reading`. */
test('20,000 random and mutated lines give sound readings whose sizes are read back', {
  timeout: 120_000,
}, () => {
  fc.assert(fc.property(anyLine, checkLine), { numRuns: 20_000 });
});

describe('case and spacing change hardly any printed line', () => {
  const meaning = ({ category, dims, attrs, qty }: Reading) => JSON.stringify({ category, dims, attrs, qty });
  /** The same line as another keyboard or program writes it. */
  const ways: Record<string, (line: string) => string> = {
    'in capitals': line => line.toUpperCase(),
    'in small letters': line => line.toLowerCase(),
    'with two blanks for one': line => line.replace(/(?<=\S) (?=\S)/g, '  '),
    'with blanks that do not break': line => line.replaceAll(' ', '\u00a0'),
    'with blanks at its ends': line => `  ${line}  `,
    'in wide figures': line =>
      line.replace(/\d/g, figure => String.fromCharCode(figure.charCodeAt(0) + 0xfee0)),
  };
  // D is the outside and d the bore, m6 a tolerance and M6 a thread, L a side: so a few lines do mean something else.
  test.each(Object.entries(ways))('%s', (_, way) => {
    const changed = printedLines.filter(line => meaning(read(way(line))) !== meaning(read(line)));
    expect(changed.length / printedLines.length, changed.slice(0, 5).join('\n')).toBeLessThan(0.01);
  });
});
