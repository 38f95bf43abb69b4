import type { DocumentRows, Row } from '../../indexer/intake/rows.ts';
import { read } from '../../indexer/read.ts';
import type { Reading } from '../../indexer/reading/reading.ts';
import { Chance } from '../documents/random.ts';

/** One machine's list, as it is taken in. */
export interface LargeList {
  maker: string;
  model: string;
  read: DocumentRows;
}

const makers = 40;
const linesOfAModel = 250;
/** How many lines name a part for each part there is: makers use a part in many models. */
const usesOfAPart = 2.5;

const names =
  'housing cover plate lever shaft gear pinion spool rotor handle knob bracket spring collar sleeve clutch brake drum pawl ratchet guide roller arm link cam wheel frame bail crank rod yoke hub cap lid seat carrier retainer stopper bushing cable hook drawbar pedal'.split(
    ' ',
  );
const kinds =
  'main drive side upper lower left right front rear inner outer release return idle worm bevel feed tension line thread level wind anti reverse needle presser transmission adjusting locking support lifting tilting sliding moulded stamped forged hardened polished'.split(
    ' ',
  );
const german =
  'gehäuse deckel platte hebel welle zahnrad ritzel spule kurbel knopf halter feder bremse trommel sperrklinke führung rolle exzenter rahmen nabe'.split(
    ' ',
  );
const syllables =
  'bran cor hest pell ond wyk tarn skel dun mar hol ull pen gar lin fen row thorn cald ash'.split(' ');

const of =
  <T>(items: readonly T[]) =>
  (chance: Chance) =>
    items[Math.floor(items.length * chance.next() ** 2)]!;

const bearing = of([
  '5x11x4',
  '4x8x3',
  '3x8x4',
  '7x14x5',
  '8x22x7',
  '6x15x5',
  '10x26x8',
  '4x11x4',
  '3x10x4',
  '5x13x4',
  '8x16x5',
  '12x28x8',
  '6x19x6',
  '15x32x9',
  '5x11x5',
  '8x14x4',
  '17x35x10',
  '20x42x12',
  '6x13x5',
  '7x19x6',
]);
const thread = of(['M3', 'M4', 'M2.5', 'M5', 'M2', 'M6', 'M8', 'M1.6', '6-32', '10-24', 'M3.5', 'M10']);
const length = of([8, 6, 10, 12, 5, 16, 4, 20, 14, 25, 30, 3, 18, 35, 40]);
const head = of(['PAN HEAD', 'COUNTERSUNK', 'SOCKET HEAD CAP', 'HEX HEAD', 'CHEESE HEAD', 'BUTTON HEAD']);
const tenth = (chance: Chance, from: number, to: number) => chance.whole(from * 10, to * 10) / 10;

/** What each kind of line says, and how many in a hundred are of it. */
const described: readonly [times: number, describe: (chance: Chance) => string][] = [
  [8, chance => `BALL BEARING ${bearing(chance)}${chance.in100(60) ? ' ZZ' : ''}`],
  [16, chance => `${head(chance)} SCREW ${thread(chance)}x${length(chance)}`],
  [4, chance => `NUT ${thread(chance)}`],
  [
    9,
    chance => {
      const hole = tenth(chance, 2, 12);
      return `WASHER ${hole}x${hole + chance.whole(3, 9)}x0.${chance.whole(1, 9)}`;
    },
  ],
  [3, chance => `CIRCLIP ${chance.whole(3, 30)}`],
  [3, chance => `O-RING ${chance.whole(3, 40)}x${tenth(chance, 1, 3)}`],
  [3, chance => `DOWEL PIN ${chance.whole(1, 8)}x${length(chance)}`],
  [8, chance => `${chance.pick(german)} ${chance.pick(german)} ${chance.whole(1, 60)}`.toUpperCase()],
  [
    46,
    chance =>
      `${chance.pick(names)}, ${chance.pick(kinds)} ${chance.pick(kinds)} no. ${chance.whole(1, 40)}`.toUpperCase(),
  ],
];

function describe(chance: Chance): string {
  let left = chance.next() * 100;
  for (const [times, describes] of described) {
    left -= times;
    if (left < 0) return describes(chance);
  }
  return describe(chance);
}

const word = (chance: Chance) => {
  const text = `${chance.pick(syllables)}${chance.pick(syllables)}`;
  return text.charAt(0).toUpperCase() + text.slice(1);
};

/**
 * Lists that make `lines` lines together, the same at every run: 40 invented makers, models of 250 lines, a maker's part
 * in two or three of them, common sizes on many lines and odd ones on few.
 */
export function* largeCatalogue(lines: number): Generator<LargeList> {
  const readings = new Map<string, Reading>();
  const models = Math.ceil(lines / linesOfAModel);
  const partsOfAMaker = Math.ceil(lines / makers / usesOfAPart);
  for (let model = 0; model < models; model++) {
    const maker = model % makers;
    const named = new Chance(model + 1);
    yield {
      maker: `${word(new Chance(90_000 + maker))} ${maker + 1}`,
      // Of a maker's models no two have one name: each of them has a number of its own.
      model: `${word(named)} ${10 + Math.floor(model / makers)}${named.pick(['', 'A', 'B', 'S'])}`,
      read: document(
        Array.from({ length: Math.min(linesOfAModel, lines - model * linesOfAModel) }, (_, at) =>
          rowOf(maker, named.whole(0, partsOfAMaker - 1), at, readings),
        ),
      ),
    };
  }
}

/** The line of a maker's part: the same words whenever it is named. */
function rowOf(maker: number, part: number, at: number, readings: Map<string, Reading>): Row {
  const description = describe(new Chance(maker * 1_000_003 + part));
  const reading = readings.get(description) ?? read(description);
  readings.set(description, reading);
  return {
    page: 1,
    ref: String(at + 1),
    partNumber: `${String.fromCharCode(65 + (maker % 26))}${maker + 10}-${String(part).padStart(6, '0')}`,
    description,
    qty: 1 + (part % 4),
    qtyText: String(1 + (part % 4)),
    remarks: '',
    place: `row ${at + 1}`,
    parent: null,
    variants: [],
    outcome: 'taken',
    reading,
  };
}

const document = (rows: Row[]): DocumentRows => ({
  document: { name: 'list.csv', pages: 1, language: 'en', unit: 'mm' },
  tables: [],
  rows,
  relations: [],
  balloons: [],
  faults: [],
});
