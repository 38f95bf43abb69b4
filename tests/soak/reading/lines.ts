import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { demoLists } from '../../../api/demo/lists/index.ts';

const labelled = join(import.meta.dirname, '../../eval/lines');

/** Lines as lists print them: those of the demo bench, and the labelled ones. */
export const printedLines: readonly string[] = [
  ...demoLists.flatMap(list => list.text.split('\n').filter(line => line.trim() !== '')),
  ...readdirSync(labelled)
    .filter(name => name.endsWith('.jsonl'))
    .sort()
    .flatMap(name =>
      readFileSync(join(labelled, name), 'utf8')
        .split('\n')
        .filter(Boolean)
        .map(line => (JSON.parse(line) as { text: string }).text),
    ),
];

/** Pieces that lines are made of, and that readers stumble over. */
const pieces = [
  ...[
    'bearing',
    'Kugellager',
    'vis',
    'screw',
    'washer',
    'O-ring',
    'シム',
    'for',
    'ID',
    'l',
    'x',
    'ISO',
    'AS568',
  ],
  ...[
    'M3',
    'M3x8',
    '5x11x4',
    '608ZZ',
    'DIN 912',
    '1/4-20',
    '½',
    '2x',
    '(4)',
    '-012',
    '0,5',
    '.035',
    'HK0810',
  ],
  ...[
    'Ø',
    '″',
    '|',
    '\t',
    '\n',
    '×',
    '…',
    '😀',
    '~',
    '#',
    '1e9',
    '00-3108-2',
    'BEARlNG',
    '5CREW',
    '〃',
    '1.200',
  ],
  ...['e\u0301', 'ﾞ', '\u00ad', '\ud800', '\u0000', '\u202e', '１２', '㎜', 'ﬁ', 'ß', 'İ', '\u00a0'],
];

/** Pieces in any order, glued or apart. */
const composed = fc
  .array(fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...pieces) }, fc.string({ maxLength: 4 })), {
    maxLength: 9,
  })
  .chain(parts => fc.constantFrom(' ', '', '  ', '    ').map(gap => parts.join(gap)));

/** What happens to a line in a scanner, a keyboard or a spreadsheet. */
const mutation = fc.record({
  kind: fc.constantFrom('drop', 'insert', 'swap', 'double', 'cut', 'upper', 'lower', 'join'),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  piece: fc.constantFrom(...pieces, ...'0123456789.,-/"\'()|;:='),
  other: fc.constantFrom(...printedLines),
});

type Mutation = typeof mutation extends fc.Arbitrary<infer T> ? T : never;

function mutate(line: string, { kind, at, piece, other }: Mutation): string {
  const place = Math.floor(at * line.length);
  const [before, after] = [line.slice(0, place), line.slice(place)];
  switch (kind) {
    case 'drop':
      return before + after.slice(1);
    case 'insert':
      return before + piece + after;
    case 'swap':
      return before + (after[1] ?? '') + (after[0] ?? '') + after.slice(2);
    case 'double':
      return before + after.slice(0, 3) + after;
    case 'cut':
      return before;
    case 'upper':
      return before + after.toUpperCase();
    case 'lower':
      return before + after.toLowerCase();
    default:
      return `${before} ${other}`;
  }
}

const mutated = fc
  .tuple(fc.constantFrom(...printedLines), fc.array(mutation, { minLength: 1, maxLength: 4 }))
  .map(([line, mutations]) => mutations.reduce(mutate, line));

/** Lines that nobody printed: characters at random, pieces of lines in any order, and printed lines with something gone wrong. */
export const anyLine: fc.Arbitrary<string> = fc.oneof(
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
  { weight: 3, arbitrary: composed },
  { weight: 6, arbitrary: mutated },
);
