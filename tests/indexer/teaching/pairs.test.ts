import { describe, expect, test } from 'vitest';
import { type Reading, read } from '../../../indexer/index.ts';
import { readDocument } from '../../../indexer/intake/index.ts';

/** A document of a part a line, with what stands above its table. */
function document(descriptions: readonly string[], front: readonly string[] = [], header = 'Description') {
  const rows = descriptions.map((description, at) => `${at + 1};X-${101 + at};${description};1`);
  const text = [...front.map(line => `${line};;;`), `Ref;Part no;${header};Qty`, ...rows].join('\n');
  return readDocument(Buffer.from(text), 'list');
}

/** What a document gives for its line of these words. */
function inDocument(
  line: string,
  others: readonly string[],
  front?: readonly string[],
  header?: string,
): Reading {
  const { rows } = document([...others, line], front, header);
  return rows.find(row => row.description === line)!.reading!;
}

interface Pair {
  what: string;
  line: string;
  /** Lines of two documents, and the size or other facts that each gives the line. */
  one: { others: string[]; front?: string[]; header?: string; gives: Partial<Reading> };
  other: { others: string[]; front?: string[]; header?: string; gives: Partial<Reading> };
  /** What a note of the first reading says. */
  because: RegExp;
}

const inches = ['Screw 6-32 x 1/2', 'Washer .250 x .500 x .032', 'Pin 1/8 x 3/4', 'Screw 8-32 x 3/8'];
const metric = ['Screw M3 x 8', 'Washer 4.3 x 9 x 0.8 mm', 'Screw M4 x 10'];

const pairs: Pair[] = [
  {
    what: 'the unit, by fractions and threads against metric ones',
    line: 'Pin 0.5 x 2',
    one: { others: inches, gives: { size: 'pin 12.7x50.8' } },
    other: { others: metric, gives: { size: 'pin 0.5x2' } },
    because: /inches, the unit of this list/,
  },
  {
    what: 'the unit, by what the list says of it',
    line: 'Pin 0.5 x 2',
    one: { others: ['Knob'], front: ['All dimensions in inches'], gives: { size: 'pin 12.7x50.8' } },
    other: { others: ['Knob'], front: ['All dimensions in mm'], gives: { size: 'pin 0.5x2' } },
    because: /inches, the unit of this list/,
  },
  {
    what: 'the decimal mark: of thousands the other one',
    line: 'Shaft 8 x 1.200',
    one: {
      others: ['Washer 4,3x9x0,8', 'Spring 0,5 x 6,5 x 12', 'O-ring 10,5x1,5'],
      gives: { size: 'shaft 8x1200' },
    },
    other: {
      others: ['Washer 4.3x9x0.8', 'Spring 0.5 x 6.5 x 12', 'O-ring 10.5x1.5'],
      gives: { size: 'shaft 1.2x8' },
    },
    because: /more than a thousand/,
  },
  {
    what: 'the order of a ring’s sizes, by published bearings (ISO 15: 685, 688, 608)',
    line: 'Bearing 14x6x7',
    one: {
      others: ['Bearing 11x5x4', 'Bearing 13x4x5', 'Bearing 16x8x5'],
      gives: { size: 'bearing 6x14x7', review: false },
    },
    other: {
      others: ['Bearing 11x4x5', 'Bearing 16x5x8', 'Bearing 22x7x8'],
      gives: { size: 'bearing 7x14x6' },
    },
    because: /outside × inside × across, the order in which this list prints its sizes/,
  },
  {
    what: 'the order of a ring’s sizes, thickness first',
    line: 'Washer 4 x 5 x 6',
    one: {
      others: ['Washer 0.5 x 4 x 8', 'Washer 1 x 6 x 12', 'Shim 0.1 x 8 x 11'],
      gives: { size: 'washer 5x6x4' },
    },
    other: {
      others: ['Washer 4 x 8 x 0.5', 'Washer 6 x 12 x 1', 'Shim 8 x 11 x 0.1'],
      gives: { size: 'washer 4x5x6' },
    },
    because: /across × inside × outside/,
  },
  {
    what: 'the order of a rod’s sizes',
    line: 'Dowel pin 5 x 4',
    one: {
      others: ['Dowel pin 3 x 16', 'Dowel pin 4 x 20', 'Dowel pin 2 x 10'],
      gives: { size: 'pin 5x4' },
    },
    other: {
      others: ['Dowel pin 16 x 3', 'Dowel pin 20 x 4', 'Dowel pin 10 x 2'],
      gives: { size: 'pin 4x5' },
    },
    because: /dia × length, the order in which this list prints its sizes/,
  },
  {
    what: 'an abbreviation defined in front of the list',
    line: 'SCREW RH M4x10',
    one: {
      others: ['Knob'],
      front: ['RH = round head, CSK = countersunk'],
      gives: { attrs: { head: 'round' } },
    },
    other: { others: ['Knob'], gives: { attrs: { hand: 'right' } } },
    because: /“RH” is “round head”, as this list says/,
  },
  {
    what: 'the language, by all other words: an Italian perno is a pin, a Spanish one a bolt',
    line: 'Perno 5 x 16',
    one: {
      others: ['Cuscinetto', 'Molla', 'Coperchio della manopola', 'Rondella'],
      header: 'Descrizione',
      gives: { category: 'pin' },
    },
    other: {
      others: ['Rodamiento', 'Muelle', 'Tapa del carrete', 'Arandela'],
      header: 'Descripción',
      gives: { category: 'screw' },
    },
    because: /^/,
  },
];

describe('the same line reads differently in two documents, and says why', () => {
  test.each(pairs)('$what', ({ line, one, other, because }) => {
    const first = inDocument(line, one.others, one.front, one.header);
    const second = inDocument(line, other.others, other.front, other.header);
    expect(first).toMatchObject(one.gives);
    expect(second).toMatchObject(other.gives);
    expect(first.size !== second.size || JSON.stringify(first.attrs) !== JSON.stringify(second.attrs)).toBe(
      true,
    );
    expect([...first.notes, ''].join('\n')).toMatch(because);
  });
});

describe('what one document can’t know is left', () => {
  test('a published metric size stays metric in a list of inches (ISO 15: MR115)', () => {
    expect(inDocument('Bearing 5x11x4', inches).size).toBe('bearing 5x11x4');
  });
  test('as many lines for the one as for the other settle nothing', () => {
    const both = ['Dowel pin 3 x 16', 'Dowel pin 16 x 3', 'Dowel pin 4 x 20', 'Dowel pin 20 x 4'];
    expect(inDocument('Dowel pin 5 x 4', both)).toEqual(
      read('Dowel pin 5 x 4', { lang: 'en', context: columns }),
    );
  });
  test('a sure size does not follow the habit of the list', () => {
    const outsideFirst = ['Bearing 11x5x4', 'Bearing 13x4x5', 'Bearing 16x8x5'];
    expect(inDocument('Bearing 8x22x7', outsideFirst).size).toBe('bearing 8x22x7');
  });
  test('words and an equals sign in a part’s own line define nothing', () => {
    const reading = inDocument('SCREW RH M4x10', ['Gear Z = teeth', 'Kit RH = round head']);
    expect(reading.attrs['hand']).toBe('right');
  });
});

const columns = 'Ref | Part no | Description | Qty';

test.each([
  'RH = round head',
  'Note: RH = round head',
  'Abbreviations: CSK = countersunk, RH: round head',
  'RH – round head',
  'RH means round head',
])('%s defines RH', front => {
  const { rows } = document(['SCREW RH M4x10'], [front]);
  expect(rows.at(-1)!.reading!.attrs).toEqual({ head: 'round' });
});

test.each(['Model RH-40', 'Fig. 3 = drag assembly', 'RH', 'Issue A: 2019'])('%s defines no RH', front => {
  const { rows } = document(['SCREW RH M4x10'], [front]);
  expect(rows.at(-1)!.reading!.attrs).toEqual({ hand: 'right' });
});

describe('headings, indents and ditto marks name what stands under them', () => {
  const under = (heading: string) => {
    const { rows } = readDocument(
      Buffer.from(`Ref;Part no;Description;Qty\n${heading};;;\n1;A-1;5x11x4;2\n`),
      'list',
    );
    return rows.at(-1)!.reading!;
  };
  test('bare sizes are what the heading says', () => {
    expect(under('Bearings:').size).toBe('bearing 5x11x4');
    expect(under('Unterlegscheiben:').size).toBe('washer 5x11x4');
    expect(under('Bearings:').notes).toContain('named by the heading “Bearings:”');
    expect(under('Group 3').category).toBe('unsure');
  });
  test('bare sizes set in under a part are of its kind', () => {
    const { rows } = readDocument(
      Buffer.from(
        'Ref;Part no;Description;Qty\n1;A-1;Ball bearings;\n2;A-2;. 5x11x4;2\n3;A-3;. 6x13x5;2\n4;A-4;Knob;1\n',
      ),
      'list',
    );
    expect(rows[2]!.reading!.size).toBe('bearing 5x11x4');
    expect(rows[2]!.reading!.notes.join()).toContain('“Ball bearings”, to which it belongs');
    expect(rows[2]!.parent).toBe('1');
  });

  const marks = [
    'do.',
    'ditto',
    'Dto.',
    '〃',
    '"',
    'idem',
    'wie oben,',
    'come sopra,',
    'comme ci-dessus,',
    'als boven,',
    '同上',
    'same as above,',
  ];
  test.each(marks)('%s stands for the words above', mark => {
    const text = `Screw, pan head, stainless, M3x8   2\n${mark} M3x10   4\nKnob   1\n${mark}   1\n`;
    const { rows } = readDocument(Buffer.from(text), 'list');
    const [screw, second, , knob] = rows.filter(row => row.outcome === 'taken').map(row => row.reading!);
    expect(screw!.item).toBe('screw M3x0.5x8 pan stainless');
    expect(second!.item).toBe('screw M3x0.5x10 pan stainless');
    expect(second!.notes.join()).toMatch(/line above/);
    expect(knob!.category).toBe('plain');
  });
  test('what a line under a ditto mark does not state it has from above, and a person looks', () => {
    const { rows } = document(['Washer 4 x 8 x 0.5', 'do. 0.8 thick', 'do. brass']);
    const [, thick, brass] = rows.slice(1).map(row => row.reading!);
    expect(thick).toMatchObject({ size: 'washer 4x8x0.8', review: true });
    expect(brass).toMatchObject({ item: 'washer 4x8x0.8 brass', review: true });
  });
  test('a word that begins so, and a first line, are no ditto', () => {
    const { rows } = document(['ditto M3x8', 'Dowel pin 3x16', 'Domed nut M4']);
    expect(rows.slice(1).map(row => row.reading!.category)).not.toContain('not-a-part');
    expect(rows[3]!.reading!.category).toBe('nut');
  });
});
